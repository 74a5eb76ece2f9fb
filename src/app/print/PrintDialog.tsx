import { useMemo, useState, type ReactElement } from 'react';
import { ROOMS, type Analysis } from '../../engine/index.ts';
import type { Playbook } from '../../document/index.ts';
import { ROOM_WORDS } from '../../report/index.ts';
import { buildScene, PAPER_THEME, toSvg, WHOLE_PICTURE } from '../../scene/index.ts';
import { looksShown, type AppState } from '../../store/index.ts';
import { download, fileStem } from '../files/download.ts';
import { Radios, Select, type Option } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { dateText } from '../session/clock.ts';
import { useSession, useSettledState } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import { loadFonts, printPdf } from './printPdf.ts';
import { analysesToPrint, callName, printInput, type PrintChoice } from './printInput.ts';

const ROOM_OPTIONS = [
  { value: 'all', label: 'Everyone' },
  ...ROOMS.map((room) => ({ value: room, label: ROOM_WORDS[room] })),
] as const;

const PAPER_OPTIONS = [
  { value: 'letter', label: 'Letter' },
  { value: 'a4', label: 'A4' },
] as const;

/** What goes on paper: for whom, on which paper, against which looks. */
export function PrintDialog({ onClose }: { readonly onClose: () => void }): ReactElement {
  const { analyst } = useSession();
  const state = useSettledState();
  const [choice, setChoice] = useState<PrintChoice>({ room: null, paper: 'letter', looks: 'this' });
  const analyses = useMemo(() => analysesToPrint(state, analyst, choice), [state, analyst, choice]);
  const job = usePrintJob(state, analyses, choice);
  const change = (patch: Partial<PrintChoice>): void => setChoice({ ...choice, ...patch });
  return (
    <Dialog title={`Print ${callName(state)}`} onClose={onClose} wide>
      <div className="print-dialog">
        <div className="print-choices">
          <Presets playbook={state.playbook} onChoose={change} />
          <Radios
            legend="For"
            value={choice.room ?? 'all'}
            options={ROOM_OPTIONS}
            onChoose={(room) => change({ room: room === 'all' ? null : room })}
          />
          <Radios legend="Paper" value={choice.paper} options={PAPER_OPTIONS} onChoose={(paper) => change({ paper })} />
          <Radios
            legend="Against"
            value={choice.looks}
            options={lookOptions(state)}
            onChoose={(looks) => change({ looks })}
          />
        </div>
        <Preview analyses={analyses} choice={choice} turned={state.view.turned} />
      </div>
      <p role="status" className="print-status">
        {job.message}
      </p>
      <div className="button-row">
        <button type="button" className="is-main" disabled={job.busy || analyses.length === 0} onClick={job.print}>
          Make the PDF
        </button>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
    </Dialog>
  );
}

function lookOptions(state: AppState): readonly Option<PrintChoice['looks']>[] {
  const opponent = state.playbook.opponents.find(({ id }) => id === state.view.opponent);
  const count = looksShown(state).length;
  const all = opponent === undefined ? `All ${count} looks` : `The ${count} looks of ${opponent.name}`;
  return [
    { value: 'this', label: 'This look' },
    { value: 'shown', label: all },
  ];
}

interface PresetsProps {
  readonly playbook: Playbook;
  readonly onChoose: (patch: Partial<PrintChoice>) => void;
}

/** The staff's own presets; choosing one fills in the rest. */
function Presets({ playbook, onChoose }: PresetsProps): ReactElement | null {
  const [chosen, setChosen] = useState<string | null>(null);
  if (playbook.sheets.length === 0) return null;
  return (
    <Select
      label="Sheet"
      value={chosen}
      options={playbook.sheets.map(({ id, name }) => ({ value: id, label: name }))}
      none="As chosen below"
      onChoose={(id) => {
        setChosen(id);
        const sheet = playbook.sheets.find((each) => each.id === id);
        if (sheet !== undefined) onChoose({ room: sheet.room === 'all' ? null : sheet.room, paper: sheet.paper });
      }}
    />
  );
}

interface PreviewProps {
  readonly analyses: readonly Analysis[];
  readonly choice: PrintChoice;
  readonly turned: boolean;
}

/** The first diagram as it will be printed, and what else will be. */
function Preview({ analyses, choice, turned }: PreviewProps): ReactElement {
  const [first] = analyses;
  const address = useMemo(() => {
    if (first === undefined) return null;
    const scene = buildScene(first, { ...WHOLE_PICTURE, room: choice.room });
    const svg = toSvg(scene, PAPER_THEME, { flip: turned, width: 520 });
    return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  }, [first, choice.room, turned]);
  const whose = choice.room === null ? 'everyone' : `the ${ROOM_WORDS[choice.room].toLowerCase()} room`;
  return (
    <div className="print-preview">
      {address !== null && <img src={address} alt="" />}
      <p>
        One sheet a look, for {whose}: the diagram, who has each gap, the jobs and the findings. Black on white, so that
        it survives a copier.
      </p>
      {/* A long list can be scrolled by keyboard only if it can be reached. */}
      <ol className="print-list" tabIndex={0} aria-label="Sheets that will be printed">
        {analyses.map(({ setup }) => (
          <li key={setup.look.id}>
            {setup.look.name}, {BALL_WORDS[setup.spot]}
          </li>
        ))}
      </ol>
    </div>
  );
}

interface PrintJob {
  readonly busy: boolean;
  readonly message: string;
  readonly print: () => void;
}

function usePrintJob(state: AppState, analyses: readonly Analysis[], choice: PrintChoice): PrintJob {
  const { now } = useSession();
  const [busy, setBusy] = useState(false);
  const [message, setMessage] = useState('');
  const make = async (): Promise<string> => {
    const at = now();
    const bytes = await printPdf(printInput(state, analyses, choice, await loadFonts(), at));
    const name = `${fileStem(callName(state), choice.room ?? 'everyone', dateText(at))}.pdf`;
    download(name, bytes, 'application/pdf');
    return `Made ${name}`;
  };
  const print = (): void => {
    setBusy(true);
    setMessage('Making the PDF…');
    void make()
      .catch((error: unknown) => `The PDF was not made: ${error instanceof Error ? error.message : String(error)}`)
      .then((said) => {
        setMessage(said);
        setBusy(false);
      });
  };
  return { busy, message, print };
}
