import type { ReactNode } from 'react';
import type { SheetLevel } from '../../../src/index.ts';

/** How many shades there are, palest first. */
const shades = 5;

/** The shade of a level, whatever the length of its ladder: 0 the palest, 4 the darkest. */
export const shadeOf = (level: number, levels: number): number =>
  levels < 2 ? 0 : Math.round((level / (levels - 1)) * (shades - 1));

/** The hospital's ladder, highest rung on top: what is reached, and how far it could go, each also in words. */
export function Ladder({ level }: { readonly level: SheetLevel }): ReactNode {
  const { ladder, reached, could, kind } = level;
  if (kind === 'not_for_patient') return null;
  const rungs = ladder.map((title, index) => ({ title, index, ...stateOf(index, reached, could) }));
  return (
    <ol className="ladder" reversed aria-label="The ladder, highest level first">
      {rungs.toReversed().map(({ title, index, state, words }) => (
        <li key={index} className={`rung rung-${state}`} data-shade={shadeOf(index, ladder.length)}>
          <span className="rung-bar" aria-hidden="true" />
          <span className="rung-title">{title}</span>
          {words !== '' && (
            <span className="rung-words">{kind === 'settled' && state === 'here' ? 'here' : words}</span>
          )}
        </li>
      ))}
    </ol>
  );
}

function stateOf(
  index: number,
  reached: number | null,
  could: number | null,
): { state: string; words: string } {
  if (index === reached) return { state: 'here', words: 'at least here' };
  if (reached !== null && index < reached) return { state: 'below', words: '' };
  if (could !== null && index <= could)
    return { state: 'open', words: index === could ? 'could be here' : '' };
  return { state: 'above', words: '' };
}
