import type { ReactNode } from 'react';
import type { Gap, SheetGaps } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';
import { sentence } from '../common/sentence.ts';
import { goTo } from './move-on.ts';

interface Props {
  readonly gaps: SheetGaps;
  readonly isBlank: boolean;
}

/** What to ask, what to take first, what is open, and what it could change. Each leads to its field. */
export function OpenPoints({ gaps: { heading, lists, noValueHeading, noValue }, isBlank }: Props): ReactNode {
  if (lists.length + noValue.length === 0) return null;
  return (
    <section className="panel open-points" aria-label="What is open">
      <h3 className="panel-heading">{heading}</h3>
      {isBlank && (
        <p className="hint">
          Nothing has been entered yet. Start anywhere: the outcome follows each value as soon as its field is
          left, and says what to take next.
        </p>
      )}
      {lists.map(({ kind, heading: over, gaps }) => (
        <div key={kind} className="gap-list">
          <h4>{over}</h4>
          <Gaps
            gaps={isBlank ? gaps.map((gap) => ({ ...gap, lines: [] })) : gaps}
            isOrdered={kind === 'take'}
          />
        </div>
      ))}
      {noValue.length > 0 && (
        <div className="gap-list">
          <h4>{noValueHeading}</h4>
          <ul className="plain">
            {keyed(noValue).map(({ key, line }) => (
              <li key={key}>{sentence(line)}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

function Gaps({
  gaps,
  isOrdered,
}: {
  readonly gaps: readonly Gap[];
  readonly isOrdered: boolean;
}): ReactNode {
  const List = isOrdered ? 'ol' : 'ul';
  return (
    <List className="gaps">
      {gaps.map(({ observation, title, lines }) => (
        <li key={observation} className={lines.length > 0 ? 'gap-with-lines' : undefined}>
          <button type="button" className="gap" onClick={() => goTo(observation)}>
            {sentence(title)}
          </button>
          {lines.length > 0 && (
            <ul className="gap-lines">
              {keyed(lines).map(({ key, line }) => (
                <li key={key}>{sentence(line)}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </List>
  );
}
