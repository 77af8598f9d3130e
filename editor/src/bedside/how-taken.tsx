import type { ReactNode } from 'react';
import type { SheetFaults } from '../../../src/index.ts';
import { Lines } from '../common/why.tsx';

/** Faults of technique: how to take it again without each, what they leave open, and whether that matters. */
export function HowTaken({
  faults: { heading, faults, openHeading, open, matters },
}: {
  readonly faults: SheetFaults;
}): ReactNode {
  return (
    <section className="panel how-taken" aria-label="How it was taken">
      <h3 className="panel-heading">{heading}</h3>
      {faults.map(({ title, says, do: actions }) => (
        <div key={title} className="titled">
          <h4>{title}</h4>
          <p>{says}</p>
          <Lines lines={actions} className="plain" />
        </div>
      ))}
      <div className="titled">
        <h4>{openHeading}</h4>
        <Lines lines={open} className="plain" />
        <p>{matters}</p>
      </div>
    </section>
  );
}
