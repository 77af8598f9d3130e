import type { ReactNode } from 'react';
import type { GivenSet, GivenValue, MapHere } from '../../messages.ts';
import { GivenRow } from '../new-case/given-row.tsx';

interface Props {
  readonly map: MapHere;
  readonly held: GivenSet;
  readonly onHeld: (held: GivenSet) => void;
}

/** What everything that is no axis is held at, or that it is missing. */
export function HeldValues({ map: { plane, form }, held, onHeld }: Props): ReactNode {
  const fields = [...form.patient, ...[...form.needs, ...form.helps].flatMap((group) => group.fields)].filter(
    ({ name }) => name !== plane.x.name && name !== plane.y.name,
  );
  const hold = (name: string, value: GivenValue | null): void => {
    const others = Object.entries(held).filter(([each]) => each !== name);
    onHeld(Object.fromEntries(value ? [...others, [name, value]] : others));
  };
  return (
    <details className="held">
      <summary>Everything else is held</summary>
      <p className="hint">
        Ordinary values at first, of what is needed; what only helps is missing. Change what you like, or
        leave it missing.
      </p>
      <div className="given-rows">
        {fields.map((field) => (
          <GivenRow
            key={field.name}
            field={field}
            value={held[field.name]}
            onGive={(value) => hold(field.name, value)}
          />
        ))}
      </div>
    </details>
  );
}
