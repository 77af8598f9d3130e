import type { ReactNode } from 'react';
import { problemInWords } from '../desk/marks.ts';
import type { Mend, ProblemHere } from '../messages.ts';
import { fileOf, type Part } from '../parts.ts';

interface Props {
  readonly problems: readonly ProblemHere[];
  readonly kind: 'protocol' | 'ward';
  /** Whether they are of the texts as they stand. */
  readonly isFresh: boolean;
  readonly canMend: (part: Part) => boolean;
  readonly onGo: (problem: ProblemHere) => void;
  readonly onMend: (mend: Mend) => void;
}

/** So many are listed at once; the rest is counted. */
const most = 60;

/** What is wrong in both texts, line by line, with the way there and what mends it. */
export function ProblemList({ problems, kind, isFresh, canMend, onGo, onMend }: Props): ReactNode {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  return (
    <section
      id="problems"
      tabIndex={-1}
      className="panel problems"
      aria-label="Problems"
      data-fresh={isFresh}
    >
      <h2 className="panel-heading">
        Problems
        <span className="count">{countInWords(problems.length, errors)}</span>
      </h2>
      {problems.length === 0 ? (
        <p className="hint">Nothing is wrong with these texts, as far as the kit can tell.</p>
      ) : (
        <ol className="problem-list">
          {problems.slice(0, most).map((problem) => (
            <li key={keyOf(problem)} className={`problem problem-${problem.severity}`}>
              <button type="button" className="problem-go" onClick={() => onGo(problem)}>
                <span className="problem-place">{`${fileOf(problem.part, kind)}, line ${problem.line}`}</span>
                <span className="problem-kind">{problem.severity === 'error' ? 'Problem' : 'Warning'}</span>
                <span className="problem-says">{problemInWords(problem)}</span>
              </button>
              {canMend(problem.part) &&
                problem.mends.map((mend) => (
                  <button key={mend.title} type="button" className="button mend" onClick={() => onMend(mend)}>
                    {mend.title}
                  </button>
                ))}
            </li>
          ))}
        </ol>
      )}
      {problems.length > most && <p className="hint">{`And ${problems.length - most} more.`}</p>}
    </section>
  );
}

const keyOf = ({ part, line, column, says }: ProblemHere): string => `${part} ${line}:${column} ${says}`;

function countInWords(all: number, errors: number): string {
  if (all === 0) return 'none';
  const warnings = all - errors;
  const words = [
    ...(errors > 0 ? [`${errors} to mend`] : []),
    ...(warnings > 0 ? [`${warnings} to look at`] : []),
  ];
  return words.join(', ');
}
