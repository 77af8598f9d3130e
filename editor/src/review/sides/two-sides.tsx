import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import type { SideHere } from '../messages.ts';

interface Props {
  readonly before: SideHere | null;
  readonly after: SideHere;
}

/** What stands on either side, each with its edition and enough of its digest to tell it from any other. */
export function TwoSides({ before, after }: Props): ReactNode {
  return (
    <section className="two-sides" aria-label="What is compared">
      {before && <OneSide label="Before" side={before} />}
      <OneSide label={before ? 'After' : 'Reviewed'} side={after} />
    </section>
  );
}

function OneSide({ label, side }: { readonly label: string; readonly side: SideHere }): ReactNode {
  if (side.kind === 'problems')
    return (
      <div className="one-side one-side-wrong" role="alert">
        <h2>{`${label}: this side cannot be read`}</h2>
        <p>Nothing is said of it until it is mended.</p>
        <ul className="plain">
          {keyed(side.problems).map(({ key, line }) => (
            <li key={key}>{line}</li>
          ))}
        </ul>
      </div>
    );
  const { title, edition, digest, isSealed } = side;
  return (
    <div className="one-side">
      <h2>{`${label}: ${title}`}</h2>
      <p>
        {isSealed ? `Edition ${edition}, sealed` : `Draft of edition ${edition}, not sealed`}
        {'; digest '}
        <code title={digest}>{digest.replace('sha256:', '').slice(0, 12)}</code>
      </p>
    </div>
  );
}
