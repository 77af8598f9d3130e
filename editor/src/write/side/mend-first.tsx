import type { ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import type { Checked } from '../messages.ts';
import type { Part } from '../parts.ts';

interface Props {
  readonly checked: Checked;
  readonly onShow: (part: Part, line: number) => void;
}

/** In place of everything that would be evaluated: a protocol with problems says nothing, and what it said before is not shown as if it did. */
export function MendFirst({ checked, onShow }: Props): ReactNode {
  const first = checked.problems.find(({ part, severity }) => part === 'protocol' && severity === 'error');
  return (
    <section className="panel mend-first">
      <h2 className="panel-heading">Mend the problems first</h2>
      <p>
        While the protocol has problems it says nothing about any patient, so no case is run and no map is
        drawn. It can be saved as a draft; nobody can read with it.
      </p>
      {keyed(checked.ladder).map(({ key, line }) => (
        <p key={key}>{line}</p>
      ))}
      {first && (
        <button type="button" className="button" onClick={() => onShow(first.part, first.line)}>
          {`Go to the first one, line ${first.line}`}
        </button>
      )}
    </section>
  );
}
