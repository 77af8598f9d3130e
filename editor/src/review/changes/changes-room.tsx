import { useState, type ReactNode } from 'react';
import type { Review } from '../sides/use-review.ts';
import { WitnessSide } from '../witness/witness-side.tsx';
import { ChangesPart } from './changes-part.tsx';

interface Props {
  readonly review: Extract<Review, { kind: 'open' }>;
}

/** What changes on the left, and an example of it on the right. */
export function ChangesRoom({ review }: Props): ReactNode {
  const { helper, changes, before } = review;
  const [at, setAt] = useState(0);
  const [asked, setAsked] = useState(0);
  if (changes === null) return <NothingToCompare hasBefore={before !== null} />;
  if (changes === 'comparing')
    return (
      <p className="waiting" role="status">
        Comparing both sides, set by set. This can take a minute for a whole ward…
      </p>
    );
  const { witnesses } = changes;
  const shown = Math.min(at, witnesses.length - 1);
  const walk = { of: witnesses.length, at: shown, onWalk: setAt };
  const fromList = {
    ...walk,
    onWalk: (chosen: number): void => {
      setAt(chosen);
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

function NothingToCompare({ hasBefore }: { readonly hasBefore: boolean }): ReactNode {
  return (
    <section className="panel empty">
      <h2>{hasBefore ? 'These sides cannot be compared' : 'There is nothing to compare with yet'}</h2>
      <p>
        {hasBefore
          ? 'One of them cannot be read: what is wrong with it stands above.'
          : 'No edition of it has been sealed. Once one is, each later draft is compared with it here.'}
      </p>
    </section>
  );
}
