import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { CasesToCopy } from '../common/cases-to-copy.tsx';
import type { LooseEnd } from './loose-here.ts';

interface Props {
  readonly ends: readonly LooseEnd[];
  readonly chosen: string | null;
  readonly onChoose: (end: LooseEnd) => void;
}

/** All loose ends under what they are counted among; those that somebody has to answer first. */
export function EndList({ ends, chosen, onChoose }: Props): ReactNode {
  const headings = [...new Set(ends.map(({ heading }) => heading))];
  return (
    <>
      {headings.map((heading) => (
        <section key={heading} className="end-group">
          <h3>{heading}</h3>
          <ul className="ends">
            {inOrder(ends.filter((each) => each.heading === heading)).map((end) => (
              <End key={end.key} end={end} isChosen={end.key === chosen} onChoose={onChoose} />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

const inOrder = (ends: readonly LooseEnd[]): readonly LooseEnd[] =>
  ends.toSorted((left, right) => Number(right.isOpen) - Number(left.isOpen) || left.line - right.line);

interface EndProps {
  readonly end: LooseEnd;
  readonly isChosen: boolean;
  readonly onChoose: (end: LooseEnd) => void;
}

function End({ end, isChosen, onChoose }: EndProps): ReactNode {
  const { says, line, shown, accepted, isOpen, yaml } = end;
  return (
    <li className="end" data-chosen={isChosen}>
      <button type="button" className="line-button" aria-pressed={isChosen} onClick={() => onChoose(end)}>
        {`Line ${line}`}
      </button>
      <div>
        <p>
          {isOpen && <strong>To be answered: </strong>}
          {end.kind === 'open' && <strong>Nobody knows: </strong>}
          {says}
        </p>
        {keyed(shown).map(({ key, line: words }, index) => (
          <p
            key={key}
            className="hint"
          >{`${end.kind === 'finding' ? (index === 0 ? 'With ' : 'and ') : ''}${words}`}</p>
        ))}
        {accepted !== null && <p>{`Accepted: ${accepted}`}</p>}
        {isChosen && isOpen && yaml !== null && (
          <CasesToCopy
            yaml={yaml}
            says={
              end.kind === 'finding'
                ? 'As cases that say what is answered now'
                : 'A case that would notice it'
            }
          />
        )}
      </div>
    </li>
  );
}
