import type { ReactNode } from 'react';
import type { Review } from './use-review.ts';

/** In the place of what changes: that it is worked out, or why it cannot be. */
export function NotCompared({
  review: { changes, before },
}: {
  readonly review: Extract<Review, { kind: 'open' }>;
}): ReactNode {
  if (changes === 'comparing')
    return (
      <p className="waiting" role="status">
        Comparing both sides, set by set. This can take a minute for a whole ward…
      </p>
    );
  return (
    <section className="panel empty">
      <h2>{before ? 'These sides cannot be compared' : 'There is nothing to compare with yet'}</h2>
      <p>
        {before
          ? 'One of them cannot be read: what is wrong with it stands above.'
          : 'No edition of it has been sealed. Once one is, each later draft is compared with it here.'}
      </p>
    </section>
  );
}
