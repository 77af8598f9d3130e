import type { ReactNode } from 'react';
import type { Drill, DrillAnswer } from '../../../src/index.ts';
import { Chart } from '../common/chart.tsx';
import { LevelCard } from '../common/level-card.tsx';
import { Lines, Why } from '../common/why.tsx';
import { AskBeside, OutputBeside } from './beside.tsx';
import { Changes } from './changes.tsx';
import { CaseMapLater } from './map-later.tsx';
import type { LearnerSays } from './round.ts';
import { VerdictCard } from './verdict-card.tsx';

interface Props {
  readonly says: LearnerSays;
  readonly answer: DrillAnswer;
  readonly drill: Drill;
  readonly isLast: boolean;
  readonly onNext: () => void;
}

/** What the rules say of the case, and why; the common mistake; what would change it. */
export function AnswerShown({ says, answer, isLast, onNext }: Props): ReactNode {
  const { sheet, courses, commonMistake, source } = answer;
  const next = (
    <button type="button" className="button button-strong next-case" onClick={onNext}>
      {isLast ? 'Finish' : 'Next case'}
    </button>
  );
  const early = says.seen < says.given ? `${says.seen} of ${says.given} observations` : null;
  return (
    <div className="answer">
      <VerdictCard says={says} answer={answer} early={early} />
      {next}
      {commonMistake !== null && (
        <section className="panel mistake" aria-label="The common mistake">
          <h3 className="panel-heading">The common mistake</h3>
          <p>{commonMistake}</p>
        </section>
      )}
      <Remarks answer={answer} />
      <LevelCard level={sheet.level} id="case-outcome" />
      <OutputBeside says={says} answer={answer} />
      <Why sheet={sheet} />
      <Changes answer={answer} />
      <section className="panel" aria-label="On the map">
        <h3 className="panel-heading">On the map</h3>
        <CaseMapLater name={answer.name} />
      </section>
      <Gaps answer={answer} />
      {(courses.length > 0 || sheet.level.inForce.length > 0) && (
        <section className="panel courses" aria-label="Over the sets">
          <h3 className="panel-heading">Over the sets</h3>
          <Lines lines={sheet.level.inForce} className="plain step-down" />
          <div className="charts">
            {courses.map((course) => (
              <Chart key={course.observation} course={course} />
            ))}
          </div>
        </section>
      )}
      <AskBeside says={says} answer={answer} />
      <footer className="edition">
        {source !== null && <p>{`Where the council’s expectation comes from: ${source}`}</p>}
        <p>{`${sheet.title} (${sheet.edition})`}</p>
        <p className="caution">{sheet.caution}</p>
      </footer>
      {next}
    </div>
  );
}

/** What is not used, and what is used and questioned. */
function Remarks({ answer: { sheet } }: Pick<Props, 'answer'>): ReactNode {
  const parts = [
    ['Not used', sheet.refused],
    ['Used, but is it right?', sheet.questioned],
  ] as const;
  return parts.map(
    ([heading, remarks]) =>
      remarks.length > 0 && (
        <section key={heading} className="before" aria-label={heading}>
          <h3>{heading}</h3>
          <Lines lines={[...new Set(remarks.map(({ says }) => says))]} className="plain" />
        </section>
      ),
  );
}

/** What is missing, in the order in which to ask and take it. */
function Gaps({ answer: { sheet } }: Pick<Props, 'answer'>): ReactNode {
  const { lists } = sheet.gaps;
  if (lists.length === 0) return null;
  return (
    <section className="panel" aria-label="What is missing">
      <h3 className="panel-heading">What is missing here</h3>
      {lists.map(({ kind, heading, gaps }) => (
        <div key={kind} className="titled">
          <h4>{heading}</h4>
          <Lines lines={gaps.map(({ title }) => title)} className="plain" />
        </div>
      ))}
    </section>
  );
}
