import type { ReactNode } from 'react';
import type { Gap, Sheet } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';
import { sentence } from '../common/sentence.ts';
import { goTo } from './move-on.ts';

/** What to ask, what to take first, what is open, and what it could change. Each leads to its field. */
export function OpenPoints({
  gaps,
  isBlank,
}: Pick<Sheet, 'gaps'> & { readonly isBlank: boolean }): ReactNode {
  const lists = [
    ['Ask first', gaps.ask, false],
    ['Take first', gaps.take, true],
    ['Missing too', gaps.missing, false],
    ['Try again', gaps.again, false],
    ['Known only roughly', gaps.rough, false],
    ['Would tell more', gaps.more, false],
  ] as const;
  const shown = lists.filter(([, all]) => all.length > 0);
  if (shown.length === 0 && gaps.noValue.length === 0) return null;
  return (
    <section className="panel open-points" aria-label="What is open">
      <h3 className="panel-heading">What is open, and what it could change</h3>
      {isBlank && (
        <p className="hint">
          Nothing has been entered yet. Start anywhere: the outcome follows each value as soon as its field is
          left, and says what to take next.
        </p>
      )}
      {shown.map(([heading, all, isOrdered]) => (
        <GapList
          key={heading}
          heading={heading}
          gaps={isBlank ? all.map((gap) => ({ ...gap, lines: [] })) : all}
          isOrdered={isOrdered}
        />
      ))}
      {gaps.noValue.length > 0 && (
        <ul className="plain">
          {keyed(gaps.noValue).map(({ key, line }) => (
            <li key={key}>{sentence(line)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface ListProps {
  readonly heading: string;
  readonly gaps: readonly Gap[];
  readonly isOrdered: boolean;
}

function GapList({ heading, gaps, isOrdered }: ListProps): ReactNode {
  const List = isOrdered ? 'ol' : 'ul';
  return (
    <div className="gap-list">
      <h4>{heading}</h4>
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
    </div>
  );
}
