import { useEffect, type ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { Fault } from '../common/fault-boundary.tsx';
import { keyed } from '../common/keyed.ts';
import { ProtocolChoice } from '../common/protocol-choice.tsx';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';
import { HandoutPage } from './handout.tsx';
import { fetchMaps } from './map-later.tsx';
import { Practise } from './practise.tsx';
import { ResultsPart } from './results.tsx';
import { useLessons, type Opening } from './use-lessons.ts';
import { useResults } from './use-results.ts';
import './teach.css';
import './answer.css';
import './handout.css';

/** The room of the educator and the learner: drill on cases, see the results, print a handout. */
export function Teach(props: RoomProps): ReactNode {
  const opening = useLessons(props.protocol, props.protocols);
  useEffect(fetchMaps, []);
  return (
    <>
      <TeachHead {...props} />
      <main className="teach">
        <Inside key={props.protocol.id} {...props} opening={opening} />
      </main>
    </>
  );
}

function TeachHead({ protocol, protocols, onGo }: RoomProps): ReactNode {
  return (
    <header className="head">
      <RoomHeading
        room="teach"
        protocol={protocol.id}
        purpose="Practise on a protocol’s cases, set by set, or print them to teach with."
      />
      <div className="head-fields">
        <ProtocolChoice
          label="Teach from"
          chosen={protocol.id}
          protocols={protocols}
          onChoose={(id) => onGo({ protocol: id, case: null, axes: null })}
        />
      </div>
      <p className="nothing-kept">
        Every patient here is invented. Your answers stay in this browser until you wipe them.
      </p>
    </header>
  );
}

function Inside({ opening, ...props }: RoomProps & { readonly opening: Opening }): ReactNode {
  const { results, keep, wipe } = useResults();
  if (opening.kind === 'failed') return <Fault />;
  if (opening.kind === 'opening') return <p className="waiting">Reading the cases…</p>;
  if (opening.kind === 'problems')
    return <Unusable title={props.protocol.title} problems={opening.problems} />;
  return (
    <Tabs className="teach-tabs">
      <TabList className="tab-list" aria-label="What to do here">
        <Tab id="practise" className="tab">
          Practise
        </Tab>
        <Tab id="results" className="tab">
          Results
        </Tab>
        <Tab id="handout" className="tab">
          Handout
        </Tab>
      </TabList>
      <TabPanel id="practise" shouldForceMount className="tab-panel">
        <Practise {...props} lessons={opening.lessons} onAnswered={keep} />
      </TabPanel>
      <TabPanel id="results" className="tab-panel">
        <ResultsPart results={results} onWipe={wipe} />
      </TabPanel>
      <TabPanel id="handout" className="tab-panel">
        <HandoutPage handout={opening.handout} />
      </TabPanel>
    </Tabs>
  );
}

interface UnusableProps {
  readonly title: string;
  readonly problems: readonly string[];
}

function Unusable({ title, problems }: UnusableProps): ReactNode {
  return (
    <section className="panel empty">
      <h2>{`“${title}” cannot be taught from yet`}</h2>
      <p>
        It has problems, and a protocol with problems says nothing that anybody should learn. Mend it in the
        Write room, or choose another one above.
      </p>
      <ul className="plain">
        {keyed(problems).map(({ key, line }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
