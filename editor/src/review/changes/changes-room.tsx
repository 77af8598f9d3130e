import { useState, type ReactNode } from 'react';
import { NotCompared } from '../sides/not-compared.tsx';
import type { Review } from '../sides/use-review.ts';
import { WitnessSide } from '../witness/witness-side.tsx';
import { ChangesPart } from './changes-part.tsx';

interface Props {
  readonly review: Extract<Review, { kind: 'open' }>;
  /** The example that is shown. */
  readonly at: number;
  readonly onWalk: (at: number) => void;
}

/** What changes on the left, and an example of it on the right. */
export function ChangesRoom({ review, at, onWalk }: Props): ReactNode {
  const { helper, changes } = review;
  const [asked, setAsked] = useState(0);
  if (changes === null || changes === 'comparing') return <NotCompared review={review} />;
  const { witnesses } = changes;
  const walk = { of: witnesses.length, at: Math.min(at, witnesses.length - 1), onWalk };
  const fromList = {
    ...walk,
    onWalk: (chosen: number): void => {
      onWalk(chosen);
      setAsked((count) => count + 1);
    },
  };
  return (
    <div className="changes-room" data-examples={witnesses.length > 0}>
      <div className="change-list">
        <ChangesPart changes={changes} walk={fromList} />
      </div>
      {witnesses.length > 0 && (
        <WitnessSide helper={helper} witnesses={witnesses} walk={walk} asked={asked} />
      )}
    </div>
  );
}
