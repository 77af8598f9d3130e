import type { ReactNode } from 'react';
import type { Sheet } from '../../../src/index.ts';
import type { PageReading } from './messages.ts';
import { sentence } from '../common/sentence.ts';
import { Chart } from '../common/chart.tsx';
import type { HeldBack } from './entries.ts';
import { LevelCard } from '../common/level-card.tsx';
import { OpenPoints } from './open-points.tsx';
import { Raises } from './raises.tsx';
import { Lines, Why } from '../common/why.tsx';

interface Props {
  readonly reading: PageReading;
  readonly held: readonly HeldBack[];
  /** Whether a value is being typed that the outcome does not know of yet. */
  readonly isTyping: boolean;
  readonly isBlank: boolean;
}

/** What the protocol says: refused and questioned values before everything, then the level, then why. */
export function Outcome({ reading, held, isTyping, isBlank }: Props): ReactNode {
  const { sheet, courses } = reading;
  const refused = [...held, ...sheet.refused];
  return (
    <>
      {isTyping && (
        <p className="typing">A value is being written. This is the outcome of the values before it.</p>
      )}
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
      <LevelCard level={sheet.level} />
      <OpenPoints gaps={sheet.gaps} isBlank={isBlank} />
      <Raises sheet={sheet} />
      {(courses.length > 0 || sheet.stepDown !== null) && (
        <section className="panel courses" aria-label="Since the earlier sets">
          <h3 className="panel-heading">Since the earlier sets</h3>
          {sheet.stepDown !== null && <p className="step-down">{sheet.stepDown}</p>}
          <div className="charts">
            {courses.map((course) => (
              <Chart key={course.observation} course={course} />
            ))}
          </div>
        </section>
      )}
      <Why sheet={sheet} />
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
        {measures.map(({ title, value }) => (
          <div key={`${title} ${value}`}>
            <dt>{sentence(title)}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
