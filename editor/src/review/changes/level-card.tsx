import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { sentence } from '../../common/sentence.ts';
import type { LevelChange } from './changes-here.ts';
import { ExampleButton, type Walk } from './example-button.tsx';
import { Lines } from './lines.tsx';
import { WhichSets } from './which-sets.tsx';
import { RungShift } from './rung-shift.tsx';

export const directions = {
  higher: 'Higher',
  lower: 'Lower',
  otherwise: 'Otherwise',
} as const;

interface Props {
  readonly change: LevelChange;
  readonly walk: Walk;
}

/** Sets that get another level: from which to which, which sets, because of what, and what happens on the day. */
export function LevelCard({ change, walk }: Props): ReactNode {
  const { before, after, direction, ground, sets, because, course } = change;
  return (
    <article className="panel change" data-direction={direction}>
      <header className="change-head">
        <RungShift rungs={change.rungs} />
        <div>
          <p className="change-direction">{directions[direction]}</p>
          <h3>{`“${before}” becomes “${after}”`}</h3>
        </div>
      </header>
      <WhichSets sets={sets} ground={ground} />
      <Lines heading="Because of" lines={because} />
      {course.length > 0 && (
        <details className="course">
          <summary>What happens on the day of the change</summary>
          <ul className="plain">
            {keyed(course).map(({ key, line }) => (
              <li key={key}>{sentence(line)}</li>
            ))}
          </ul>
        </details>
      )}
      <ExampleButton at={change.witness} walk={walk} />
    </article>
  );
}
