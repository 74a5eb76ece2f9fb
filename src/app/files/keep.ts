import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { ok, refused, type Result } from '../../base/index.ts';

/** Why this browser does not keep the playbook, in words for the coach. */
export interface KeepProblem {
  readonly reason: string;
}

/** The one door to what this browser keeps. `Value` says what it holds of each thing: texts, opened again by the document. */
export interface Keeper {
  /** What was kept last; null when nothing ever was. */
  readonly load: () => Promise<Result<string | null, KeepProblem>>;
  /** Resolves only when the browser says that the transaction is complete, which is later than the request succeeding. */
  readonly keep: (text: string) => Promise<Result<null, KeepProblem>>;
}

interface Shelf extends DBSchema {
  playbook: { key: 'current'; value: string };
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
    load: () => attempt(async () => (await (await database()).get('playbook', 'current')) ?? null),
    keep: (text) =>
      attempt(async () => {
        const transaction = (await database()).transaction('playbook', 'readwrite', { durability: 'strict' });
        await Promise.all([transaction.store.put(text, 'current'), transaction.done]);
        return null;
      }),
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
