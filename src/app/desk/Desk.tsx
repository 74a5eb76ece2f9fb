import { useState, type ReactElement } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { SECTIONS, type Section } from '../../store/index.ts';
import { useApp } from '../session/session.ts';
import { EntryList } from './EntryList.tsx';
import { SectionEditor } from './SectionEditor.tsx';
import { NewEntry } from './NewEntry.tsx';
import { SECTION_WORDS } from './sections.ts';
import { useChosen } from './useChosen.ts';

/** Where the parts of the playbook are made and changed, beside the board that shows them. */
export function Desk({ onStart }: { readonly onStart: () => void }): ReactElement {
  const readOnly = useApp((state) => state.readOnly);
  const [section, setSection] = useState<Section>('pressures');
  return (
    <section className="panel desk" aria-labelledby="desk-title">
      <h2 id="desk-title" className="unseen">
        The playbook
      </h2>
      <Tabs
        selectedKey={section}
        onSelectionChange={(key) => {
          const chosen = SECTIONS.find((each) => each === key);
          if (chosen !== undefined) setSection(chosen);
        }}
      >
        <TabList aria-label="Parts of the playbook" className="desk-tabs">
          {SECTIONS.map((each) => (
            <Tab key={each} id={each}>
              {SECTION_WORDS[each].tab}
            </Tab>
          ))}
        </TabList>
        {SECTIONS.map((each) => (
          <TabPanel key={each} id={each} className="desk-panel">
            <SectionDesk section={each} />
          </TabPanel>
        ))}
      </Tabs>
      <p className="desk-foot">
        <button type="button" className="link-button" disabled={readOnly} onClick={onStart}>
          Start my own playbook…
        </button>
      </p>
    </section>
  );
}

/** The list of a section, and below it the editor of the chosen entry. */
function SectionDesk({ section }: { readonly section: Section }): ReactElement {
  const { entry, choose } = useChosen(section);
  const [making, setMaking] = useState(false);
  return (
    <>
      <EntryList section={section} chosen={entry} onChoose={choose} onNew={() => setMaking(true)} />
      {making && <NewEntry section={section} onMade={choose} onClose={() => setMaking(false)} />}
      {entry !== null && <SectionEditor entry={entry} />}
    </>
  );
}
