import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { ok, refused, type Result } from '../../base/index.ts';

/** Why this browser does not keep the playbook, in words for the coach. */
export interface KeepProblem {
  readonly reason: string;
}

/** What is kept: the playbook as the text of its file, and the steps that led to it and away from it. */
export interface Kept {
  readonly text: string;
  /** As `steps.ts` makes and reads them. */
  readonly steps: unknown;
}

/** The one door to what this browser keeps. */
export interface Keeper {
  /** What was kept last; null when nothing ever was. */
  readonly load: () => Promise<Result<string | null, KeepProblem>>;
  /** Resolves only when the browser says that the transaction is complete, which is later than the request succeeding. */
  readonly keep: (kept: Kept) => Promise<Result<null, KeepProblem>>;
  /** The steps kept with the playbook, whatever was written there; null when there are none. */
  readonly loadSteps: () => Promise<Result<unknown, KeepProblem>>;
}

interface Shelf extends DBSchema {
  /** Under `current` the text of the playbook, under `steps` its history. */
  playbook: { key: 'current' | 'steps'; value: unknown };
}

const DATABASE = 'gapwright';
const VERSION = 1;

/** A keeper over this browser's own database, written with strict durability. */
export function browserKeeper(): Keeper {
  let opened: Promise<IDBPDatabase<Shelf>> | null = null;
  const database = (): Promise<IDBPDatabase<Shelf>> => {
    opened ??= openShelf().catch((error: unknown) => {
      // The next try opens afresh instead of meeting the same refusal for ever.
      opened = null;
      throw error;
    });
    return opened;
  };

  return {
    load: () =>
      attempt(async () => {
        const text = await (await database()).get('playbook', 'current');
        return typeof text === 'string' ? text : null;
      }),
    keep: ({ text, steps }) =>
      attempt(async () => {
        const transaction = (await database()).transaction('playbook', 'readwrite', { durability: 'strict' });
        const { store } = transaction;
        await Promise.all([store.put(text, 'current'), store.put(steps, 'steps'), transaction.done]);
        return null;
      }),
    loadSteps: () => attempt(async () => (await (await database()).get('playbook', 'steps')) ?? null),
  };
}

function openShelf(): Promise<IDBPDatabase<Shelf>> {
  return openDB<Shelf>(DATABASE, VERSION, {
    upgrade: (database) => {
      database.createObjectStore('playbook');
    },
  });
}

async function attempt<Value>(step: () => Promise<Value>): Promise<Result<Value, KeepProblem>> {
  try {
    return ok(await step());
  } catch (error) {
    return refused({ reason: inWords(error) });
  }
}

function inWords(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  switch (error.name) {
    case 'QuotaExceededError':
      return 'the storage of this browser is full';
    case 'SecurityError':
    case 'InvalidStateError':
      return 'this browser does not let pages keep anything here (a private window, or storage is switched off)';
    case 'VersionError':
      return 'a newer version of this page has used the storage of this browser';
    default:
      return error.message === '' ? error.name : error.message;
  }
}
