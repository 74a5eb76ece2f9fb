import { openDocument, type Playbook, type Refusal } from '../../document/index.ts';
import { createAnalyst, createAppStore, type AppStore } from '../../store/index.ts';
import { browserKeeper, type Keeper, type Kept } from '../files/keep.ts';
import { browserIdle, createKeeping, type Keeping } from '../files/keeping.ts';
import { askForTurn } from '../files/lock.ts';
import { createSaver, type Saver } from '../files/saver.ts';
import { createMenuBook } from '../menu/menuBook.ts';
import { startGridWorkers } from '../menu/startWorkers.ts';
import { startSearcher } from '../suggest/searcher.ts';
import { createSuggester } from '../suggest/suggester.ts';
import { now } from './clock.ts';
import { createNotices } from './notices.ts';
import type { InFile, Session } from './session.ts';
import { BROWSER_LATER, createSettled } from './settled.ts';

/** What the start found. */
export interface Started {
  readonly session: Session;
  /** What this browser holds cannot be opened: it is left as it is, and shown. Null: it could, or there was nothing. */
  readonly damaged: { readonly text: string; readonly refusals: readonly Refusal[] } | null;
}

/** Opens what this browser keeps, else the demo; from then on every change is kept, if this tab may. */
export async function start(): Promise<Started> {
  const keeper = browserKeeper();
  const notices = createNotices();
  const saver = createSaver(keeper, now);
  // Filled in below; another tab cannot pass its turn on before this one has asked.
  const turn: { take: () => void } = { take: () => undefined };
  const tab = await askForTurn(() => turn.take());
  const found = await keeper.load();
  const kept = found.ok && found.value !== null ? openDocument(found.value) : null;

  const playbook = kept?.ok === true ? kept.value : await openDemo();
  const store = createAppStore(playbook, { readOnly: tab === 'reader' });
  const keeping = createKeeping(store, browserIdle);
  turn.take = () => void takeOver(store, keeper, saver, keeping).then((text) => notices.say(text));
  const reason = whyNotKept(tab, found, kept);
  if (reason === null) void keepFromNow(keeper, saver, keeping);
  else saver.turnOff(reason);
  followChanges(store, saver, keeping);

  const session: Session = {
    store,
    settled: createSettled(store, BROWSER_LATER),
    analyst: createAnalyst(),
    suggester: createSuggester(startSearcher),
    menu: createMenuBook(startGridWorkers),
    saver,
    notices,
    inFile: inFileFrom(kept === null ? playbook : null),
    firstVisit: kept === null && tab === 'writer',
    now,
  };
  const damaged =
    kept !== null && !kept.ok && found.ok && found.value !== null
      ? { text: found.value, refusals: kept.problem }
      : null;
  return { session, damaged };
}

function inFileFrom(first: Playbook | null): InFile {
  let held = first;
  return {
    is: (playbook) => playbook === held,
    mark: (playbook) => {
      held = playbook;
    },
  };
}

/** The playbook that comes with the app. It is fetched only where nothing else can be shown. */
async function openDemo(): Promise<Playbook> {
  const { default: address } = await import('../../../demo-data/playbook.json?url');
  const demo = openDocument(await (await fetch(address)).text());
  if (!demo.ok) throw new Error('The demo playbook that comes with the app does not open');
  return demo.value;
}

function whyNotKept(
  tab: Awaited<ReturnType<typeof askForTurn>>,
  found: Awaited<ReturnType<Keeper['load']>>,
  kept: ReturnType<typeof openDocument> | null,
): string | null {
  if (!found.ok) return found.problem.reason;
  if (tab === 'reader') return 'another tab has this playbook open';
  if (tab === 'unknown') return 'this browser cannot keep two tabs from overwriting each other';
  if (kept?.ok === false) return 'what is kept here cannot be opened, and is left untouched';
  return null;
}

/** Takes up the steps of the last visit and writes at once what is open, so that the first thing said of it is true. */
async function keepFromNow(keeper: Keeper, saver: Saver<Kept>, keeping: Keeping): Promise<void> {
  const steps = await keeper.loadSteps();
  const recalled = keeping.recall(steps.ok ? steps.value : null);
  saver.turnOn(keeping.kept);
  await recalled;
  saver.changed(keeping.kept);
}

function followChanges(store: AppStore, saver: Saver<Kept>, { kept }: Keeping): void {
  let asked = false;
  store.subscribe((state, before) => {
    if (state.playbook === before.playbook) return;
    // The step is in the history only after everybody has heard of the change.
    queueMicrotask(() => saver.changed(kept));
    // Asked once there is work to lose: the browser then does not clear it to make room. It may say no; files are the answer.
    if (!asked && 'storage' in navigator) void navigator.storage.persist().catch(() => false);
    asked = true;
  });
  window.addEventListener('beforeunload', (event) => {
    const { kind } = saver.status();
    if (kind === 'saving' || kind === 'failed') event.preventDefault();
  });
}

/** The tab that wrote is gone: this one goes on from what it kept. */
async function takeOver(store: AppStore, keeper: Keeper, saver: Saver<Kept>, keeping: Keeping): Promise<string> {
  const found = await keeper.load();
  const kept = found.ok && found.value !== null ? openDocument(found.value) : null;
  if (kept?.ok === false) return 'The other tab is closed, but what it kept cannot be opened here';
  // Nothing kept: the other tab never wrote, so what is shown here is all there is.
  store.startOver(kept?.value ?? store.get().playbook, false);
  void keepFromNow(keeper, saver, keeping);
  return 'The other tab is closed: you can go on here';
}
