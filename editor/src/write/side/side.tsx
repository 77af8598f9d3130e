import { useState, type ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { CasesPanel } from './cases/cases-panel.tsx';
import { RulesPanel } from './rules/rules-panel.tsx';
import type { SideProps } from './side-props.ts';
import { MapPanel } from './map/map-panel.tsx';
import { MendFirst } from './mend-first.tsx';
import { RequirementsLine } from './requirements/requirements-line.tsx';

/** Beside the texts: what the cases make of them, rule by rule, and the map. */
export function Side(props: SideProps): ReactNode {
  const [tab, setTab] = useState<string>(props.axes ? 'map' : 'cases');
  const { verdict } = props.open;
  const isUsable = verdict.checked?.usable === true;
  const panels = [
    ['cases', 'Cases', <CasesPanel key="cases" {...props} />],
    ['rules', 'Rules', <RulesPanel key="rules" {...props} />],
    ['map', 'Map', <MapPanel key="map" {...props} />],
  ] as const;
  return (
    <div className="side" id="side" tabIndex={-1}>
      <RequirementsLine open={props.open} />
      <Tabs selectedKey={tab} onSelectionChange={(key) => setTab(String(key))} className="side-tabs">
        <TabList aria-label="Beside the text" className="side-tab-list">
          {panels.map(([id, title]) => (
            <Tab key={id} id={id} className="side-tab">
              {title}
            </Tab>
          ))}
        </TabList>
        {panels.map(([id, , panel]) => (
          <TabPanel key={id} id={id} className="side-panel">
            {verdict.checked === null ? (
              <p className="panel">Reading the texts…</p>
            ) : isUsable ? (
              panel
            ) : (
              <MendFirst checked={verdict.checked} onShow={props.onShow} />
            )}
          </TabPanel>
        ))}
      </Tabs>
    </div>
  );
}
