import type { Compiled } from '../../../src/index.ts';
import { moduleInputs, type ModuleObservation } from '../../../src/targets/typescript/module-inputs.ts';

/** One row of columns, and whether it is a complete set. */
export interface Row {
  readonly columns: Readonly<Record<string, readonly number[]>>;
  readonly complete: boolean;
}

const known = new WeakMap<Compiled, ReturnType<typeof moduleInputs>>();

function inputsFor(compiled: Compiled): ReturnType<typeof moduleInputs> {
  const inputs = known.get(compiled) ?? moduleInputs(compiled.logic, compiled.protocol);
  known.set(compiled, inputs);
  return inputs;
}

/** Bounds as a row of columns; null where a row cannot say it: a range, a changed limit, an earlier value of what was not obtained. */
export function columnsOf(compiled: Compiled, bounds: Float64Array): Row | null {
  const { protocol } = compiled;
  const inputs = inputsFor(compiled);
  const at = (owner: string, part: Parameters<typeof inputs.placeOf>[1], choice?: string): number =>
    bounds[inputs.placeOf(owner, part, choice)] ?? NaN;
  if ([...protocol.limits.values()].some(({ name, value }) => at(name, 'value') !== value)) return null;
  const columns: Record<string, readonly number[]> = {};
  let complete = true;
  for (const each of inputs.observations) {
    const value = valueOf(each, at);
    if (value === null) return null;
    if (value < each.low) complete = false;
    columns[each.entry.name] = [value];
  }
  for (const { name } of inputs.lookBacks) {
    const isOpen = at(name, 'open') === 1 || (at(name, 'count') || 1) !== 1;
    if (
      isOpen ||
      (at(name, 'maybe') === 1 && (at(name, 'sure') === 0 || at(name, 'low') !== at(name, 'high')))
    )
      return null;
    columns[name] = [at(name, 'maybe') === 1 ? at(name, 'low') : NaN];
    if (at(name, 'maybe') === 0) complete = false;
  }
  return { columns, complete };
}

type At = (
  owner: string,
  part: 'low' | 'high' | 'known' | 'unobtainable' | 'may' | 'sure',
  choice?: string,
) => number;

function valueOf(observation: ModuleObservation, at: At): number | null {
  const { entry, choices, low, high, assumed } = observation;
  const { name, kind } = entry;
  const nothing = low > -32_000 && high < 32_000 ? -32_768 : -2_147_483_648;
  const flags = choices.map((choice) => at(name, 'may', choice));
  const open =
    kind === 'number' ? at(name, 'low') !== at(name, 'high') : flags.filter((may) => may === 1).length > 1;
  if (at(name, 'known') === 1) {
    if (at(name, 'unobtainable') === 1) return null;
    if (kind === 'several')
      return choices.reduce((mask, choice, bit) => mask + at(name, 'sure', choice) * 2 ** bit, 0);
    if (open) return null;
    return kind === 'number' ? at(name, 'low') : flags.indexOf(1);
  }
  if (Number.isNaN(at(name, 'known'))) return nothing;
  // What is assumed for a fact that nobody stated does not hold for one whose statement was refused.
  if (assumed !== null && open) return null;
  return at(name, 'unobtainable') === 1 ? nothing + 1 : nothing;
}
