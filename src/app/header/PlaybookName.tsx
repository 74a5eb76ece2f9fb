import { useState, type ReactElement } from 'react';
import { NameDialog } from '../dialogs/NameDialog.tsx';
import { renamePlaybook } from '../../store/index.ts';
import { useApp, useCommit } from '../session/session.ts';
import { shownName } from '../parts/shownName.ts';

/** The playbook's name, and a way to change it. */
export function PlaybookName(): ReactElement {
  const team = useApp((state) => state.playbook.team);
  const readOnly = useApp((state) => state.readOnly);
  const [asking, setAsking] = useState(false);
  const commit = useCommit();
  return (
    <div className="playbook-name">
      <span className="team-name">{shownName(team.name)}</span>
      {team.season !== '' && <span className="season where-room">{team.season}</span>}
      <button type="button" className="link-button" disabled={readOnly} onClick={() => setAsking(true)}>
        Rename<span className="unseen"> the playbook</span>
      </button>
      {asking && (
        <NameDialog
          title="Rename the playbook"
          label="Name of the team"
          start={team.name}
          action="Rename"
          onName={(name) =>
            commit({
              label: 'renamed the playbook',
              look: null,
              gesture: null,
              change: (playbook) => renamePlaybook(playbook, { name }),
            })
          }
          onClose={() => setAsking(false)}
        />
      )}
    </div>
  );
}
