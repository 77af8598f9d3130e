import type { ReactNode } from 'react';
import type { Sheet } from '../../../src/index.ts';
import type { PageReading } from './messages.ts';
import { sentence } from '../common/sentence.ts';
import { Chart } from '../common/chart.tsx';
import type { HeldBack } from './entries.ts';
import { HowTaken } from './how-taken.tsx';
import { LevelCard } from '../common/level-card.tsx';
import { OpenPoints } from './open-points.tsx';
import { Raises } from './raises.tsx';
import { Lines, Why } from '../common/why.tsx';

interface Props {
  readonly reading: PageReading;
  readonly held: readonly HeldBack[];
  /** Said where there is a value that the outcome does not know of yet. */
  readonly older: string | null;
  readonly isBlank: boolean;
}

/** What the protocol says: refused and questioned values before everything, then the level, then why. */
export function Outcome({ reading, held, older, isBlank }: Props): ReactNode {
  const { sheet, courses } = reading;
  const refused = [...held, ...sheet.refused];
  return (
    <>
      {older !== null && <p className="typing">{older}</p>}
      {refused.length > 0 && (
        <section className="before refused" aria-label="Not used">
          <h3>Not used</h3>
          <Lines lines={once(refused)} className="plain" />
        </section>
      )}
      {sheet.questioned.length > 0 && (
        <section className="before questioned" aria-label="Used, but is it right?">
          <h3>Used, but is it right? Take it again</h3>
          <Lines lines={once(sheet.questioned)} className="plain" />
        </section>
      )}
      {sheet.plan !== null && (
        <section className="panel plan" aria-label="Plan">
          <h3 className="panel-heading">{sheet.plan.title}</h3>
          <p>{sheet.plan.says}</p>
        </section>
      )}
      <LevelCard level={sheet.level} />
      {sheet.faults !== null && <HowTaken faults={sheet.faults} />}
      <OpenPoints gaps={sheet.gaps} isBlank={isBlank} />
      <Raises sheet={sheet} />
      {(courses.length > 0 || sheet.level.inForce.length > 0) && (
        <section className="panel courses" aria-label="Since the earlier sets">
          <h3 className="panel-heading">Since the earlier sets</h3>
          <Lines lines={sheet.level.inForce} className="plain step-down" />
          <div className="charts">
            {courses.map((course) => (
              <Chart key={course.observation} course={course} />
            ))}
          </div>
        </section>
      )}
      <Why sheet={sheet} />
      <Reads sheet={sheet} />
      <Numbers sheet={sheet} />
      <footer className="edition">
        <p>{`${sheet.title} (${sheet.edition})`}</p>
        <p className="caution">{sheet.caution}</p>
      </footer>
    </>
  );
}

/** What concerns two observations is said once. */
const once = (remarks: readonly { readonly says: string }[]): string[] => [
  ...new Set(remarks.map(({ says }) => says)),
];

/** On a ward: what each of its protocols calls for by itself. */
function Reads({ sheet: { reads } }: { readonly sheet: Sheet }): ReactNode {
  if (reads.length === 0) return null;
  return (
    <section className="panel reads" aria-label="Read with">
      <h3 className="panel-heading">Read with</h3>
      <ul className="plain">
        {reads.map(({ says, otherwise }) => (
          <li key={says}>
            {says}
            {otherwise !== null && <p className="hint">{otherwise}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Numbers({ sheet }: { readonly sheet: Sheet }): ReactNode {
  const { measures, facts } = sheet;
  if (measures.length + facts.length === 0) return null;
  return (
    <details className="panel numbers">
      <summary>Worked out, assumed, converted</summary>
      {facts.map(({ heading, items }) => (
        <div key={heading} className="titled">
          <h4>{heading}</h4>
          <Lines lines={items} className="plain" />
        </div>
      ))}
      <dl className="measures">
        {measures.map(({ title, value, of }) => (
          <div key={`${of ?? ''} ${title} ${value}`}>
            <dt>
              {sentence(title)}
              {of !== null && <span className="rule-of">{of}</span>}
            </dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
