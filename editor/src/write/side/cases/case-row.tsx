import { memo, type ReactNode } from 'react';
import { keyed } from '../../../common/keyed.ts';
import type { CaseHere } from '../../messages.ts';

interface Props {
  readonly found: CaseHere;
  readonly isChosen: boolean;
  readonly onChoose: (name: string | null) => void;
}

/** One case in the list: whether it passes, and why. */
export const CaseRow = memo(
  function CaseRow({ found, isChosen, onChoose }: Props): ReactNode {
    const { name, passes, why } = found;
    return (
      <li className={`case case-${passes ? 'passes' : 'fails'}`}>
        <button
          type="button"
          className="case-go"
          aria-pressed={isChosen}
          onClick={() => onChoose(isChosen ? null : name)}
        >
          <span className="case-state">{passes ? 'Passes' : 'Fails'}</span>
          <span className="case-name">{name}</span>
          <span className="case-why">
            {keyed(why).map(({ key, line }) => (
              <span key={key}>{line}</span>
            ))}
          </span>
        </button>
      </li>
    );
  },
  (before, after) =>
    before.isChosen === after.isChosen &&
    before.onChoose === after.onChoose &&
    before.found.name === after.found.name &&
    before.found.passes === after.found.passes &&
    before.found.why.join('\n') === after.found.why.join('\n'),
);
