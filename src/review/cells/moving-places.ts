import type { Compiled } from '../../outcome/compile.ts';

/** Where an observation stands among the inputs, and the look backs that read it. */
export function movingPlaces(name: string, { logic, protocol }: Compiled): Set<number> {
  const isOf = (measure: string): boolean => {
    const how = protocol.measures.get(measure)?.how;
    return how !== undefined && 'over' in how && how.observation === name;
  };
  return new Set(
    logic.inputs.flatMap(({ of, owner }, place) =>
      (of === 'observation' && owner === name) || (of === 'look_back' && isOf(owner)) ? [place] : [],
    ),
  );
}
