import type { ReactNode } from 'react';

/** The examples of the comparison, and the one that is shown. */
export interface Walk {
  readonly of: number;
  readonly at: number;
  readonly onWalk: (at: number) => void;
}

interface Props {
  readonly at: number;
  readonly walk: Walk;
}

/** Shows the example of one change beside the list. */
export function ExampleButton({ at, walk }: Props): ReactNode {
  const isShown = walk.at === at;
  return (
    <button
      type="button"
      className="button example-button"
      aria-pressed={isShown}
      onClick={() => walk.onWalk(at)}
    >
      {`${isShown ? 'Shown: example' : 'Show example'} ${at + 1} of ${walk.of}`}
    </button>
  );
}
