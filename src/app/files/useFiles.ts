import { useCallback, useMemo, useState } from 'react';
import { saveDocument, type Playbook, type Refusal } from '../../document/index.ts';
import { problemText } from '../session/problemText.ts';
import { useSession } from '../session/session.ts';
import { download, fileStem } from './download.ts';
import { openFile } from './openFile.ts';

/** What is being asked or said about files. */
export type FileTalk =
  | { readonly kind: 'refused'; readonly name: string; readonly refusals: readonly Refusal[] }
  /** A playbook of one's own is being started. */
  | { readonly kind: 'start' }
  /** The open playbook has changes that are in no file. */
  | { readonly kind: 'ask'; readonly name: string; readonly playbook: Playbook };

/** Opening and saving playbook files. */
export interface Files {
  readonly talk: FileTalk | null;
  readonly choose: (file: File) => void;
  readonly openAnyway: () => void;
  readonly close: () => void;
  readonly save: () => void;
  /** Asks for what a playbook of one's own begins with. */
  readonly start: () => void;
  /** Puts the playbook that was started on the board; true when it is there. */
  readonly started: (playbook: Playbook) => boolean;
}

/** The one way files come in and go out. */
export function useFiles(): Files {
  const { store, notices, inFile } = useSession();
  const [talk, setTalk] = useState<FileTalk | null>(null);

  const put = useCallback(
    (name: string, playbook: Playbook) => {
      const opened = store.open(playbook, `opened ${name}`);
      setTalk(null);
      if (!opened.ok) {
        notices.say(problemText(opened.problem));
        return;
      }
      inFile.mark(playbook);
      notices.say(`Opened ${name}. Undo brings back what was open.`);
    },
    [store, notices, inFile],
  );

  const choose = useCallback(
    (file: File) => {
      void openFile(file).then((result) => {
        if (!result.ok) setTalk({ kind: 'refused', name: file.name, refusals: result.problem });
        else if (inFile.is(store.get().playbook)) put(file.name, result.value);
        else setTalk({ kind: 'ask', name: file.name, playbook: result.value });
      });
    },
    [store, inFile, put],
  );

  const save = useCallback(() => {
    const { playbook } = store.get();
    const name = `${fileStem(playbook.team.name)}.gapwright.json`;
    download(name, new TextEncoder().encode(saveDocument(playbook)), 'application/json');
    inFile.mark(playbook);
    notices.say(`Saved as ${name}`);
  }, [store, notices, inFile]);

  const openAnyway = useCallback(() => {
    if (talk?.kind === 'ask') put(talk.name, talk.playbook);
  }, [talk, put]);

  const close = useCallback(() => setTalk(null), []);
  const start = useCallback(() => setTalk({ kind: 'start' }), []);

  const started = useCallback(
    (playbook: Playbook): boolean => {
      const opened = store.open(playbook, `started the playbook of ${playbook.team.name}`);
      notices.say(opened.ok ? 'Started. Undo brings back what was open.' : problemText(opened.problem));
      return opened.ok;
    },
    [store, notices],
  );

  return useMemo(
    () => ({ talk, choose, openAnyway, close, save, start, started }),
    [talk, choose, openAnyway, close, save, start, started],
  );
}
