import type { Input } from '../../logic/inputs.ts';
import type { LookBack, Observation } from '../../protocol/protocol.ts';
import { observationsOfCondition } from '../../protocol/walk.ts';
import type { Leaf, Program } from './program.ts';
import { hasValueName, lackName, lookBackName, type Space } from './space.ts';
import type { Part } from './subject.ts';

/** Which observations may be without a value, by the variable that says so. */
export interface Lacks {
  /** In both sets of a pair, because the requirement asks of it: not given, or tried and not obtained. */
  readonly both: ReadonlySet<string>;
  /** In the second set alone. */
  readonly second: ReadonlySet<string>;
}

/** Where the inputs of one protocol enter a program. In a set each observation has one value, so its two ends are one number. */
export function bind(part: Part, program: Program, space: Space, lacks: Lacks): (input: Input) => number {
  return (input) => {
    if (input.of === 'limit') return program.constant(part.protocol.limits.get(input.owner)?.value ?? 0);
    if (input.of === 'look_back') return lookBack(input, part, program, space, lacks);
    const observation = part.protocol.observations.get(input.owner);
    if (!observation) throw new Error(`${input.owner} is no observation of ${part.protocol.name}`);
    return observed(input, observation, program, space, lacks);
  };
}

function observed(
  { owner, part, choice }: Input,
  observation: Observation,
  program: Program,
  space: Space,
  lacks: Lacks,
): number {
  const mayLack = lacks.both.has(owner) || lacks.second.has(owner);
  const by = mayLack ? space.at(lackName(owner)) : null;
  if (part === 'known' || part === 'missing' || part === 'unobtainable') {
    if (by === null) return program.constant(Number(part === 'known'));
    const assumed = observation.ifNotStated !== null;
    const missing = [0, assumed ? 0 : 1, assumed ? 0 : 1];
    const table = { known: [1, 0, 0], missing, unobtainable: [0, 0, 1] }[part];
    const { high } = space.variables[by] as { high: number };
    return program.leaf({ variable: by, table: Float64Array.from(table.slice(0, high + 1)) });
  }
  const leaf = valueLeaf(part, choice, observation, space);
  if (by === null) return program.leaf(leaf);
  return program.leaf({
    ...leaf,
    blank: { by, both: lacks.both.has(owner), ...lacking(part, choice, observation) },
  });
}

function valueLeaf(
  part: Input['part'],
  choice: string | null,
  { name, kind }: Observation,
  space: Space,
): Leaf {
  if (part === 'low' || part === 'high') return { variable: space.at(name), table: null };
  if (kind === 'several')
    return { variable: space.at(`${name}:${choice ?? ''}`), table: Float64Array.of(0, 1) };
  const variable = space.at(name);
  const choices = space.variables[variable]?.choices ?? [];
  return { variable, table: Float64Array.from(choices, (each) => Number(each === choice)) };
}

/** What a part is while nothing is known: the whole range, every choice; or what counts as stated. */
function lacking(
  part: Input['part'],
  choice: string | null,
  { ifNotStated, possible, kind }: Observation,
): { low: number; high: number; widens: 'up' | 'down' | null } {
  if (ifNotStated !== null) {
    const value = typeof ifNotStated === 'number' ? ifNotStated : Number(ifNotStated === choice);
    return { low: value, high: value, widens: null };
  }
  // At each age one band is possible; which one is open.
  const ends = (of: 'low' | 'high'): readonly number[] => possible.map((band) => band[of]);
  if (part === 'low')
    return { low: Math.min(...ends('low')), high: Math.max(...ends('low')), widens: 'down' };
  if (part === 'high')
    return { low: Math.min(...ends('high')), high: Math.max(...ends('high')), widens: 'up' };
  const may = Number(part === 'may' || kind !== 'several');
  return { low: may, high: may, widens: may === 1 ? 'up' : 'down' };
}

function lookBack(
  { owner, part }: Input,
  { protocol }: Part,
  program: Program,
  space: Space,
  lacks: Lacks,
): number {
  const how = protocol.measures.get(owner)?.how as LookBack;
  const reads = observationsBehindLookBack(how).filter(
    (name) => lacks.second.has(name) || lacks.both.has(name),
  );
  const helps = reads.some((name) => protocol.observations.get(name)?.role === 'helps');
  const lack = reads[0];
  const blankBy = lack === undefined ? null : { by: space.at(lackName(lack)), both: lacks.both.has(lack) };
  const value = space.at(lookBackName(owner));
  const { low, high } = space.variables[value] as { low: number; high: number };
  const has = space.find(hasValueName(owner));
  const flag = (widens: 'up' | 'down'): number => {
    if (has === null) return program.constant(1);
    const leaf: Leaf = { variable: has, table: Float64Array.of(0, 1) };
    return program.leaf(
      blankBy ? { ...leaf, blank: { ...blankBy, low: 0, high: 1, widens: helps ? null : widens } } : leaf,
    );
  };
  switch (part) {
    case 'low':
    case 'high': {
      const widens = helps ? null : part === 'low' ? 'down' : 'up';
      const leaf: Leaf = { variable: value, table: null };
      return program.leaf(blankBy ? { ...leaf, blank: { ...blankBy, low, high, widens } } : leaf);
    }
    case 'sure':
      return flag('down');
    case 'maybe':
      return flag('up');
    case 'count':
      return program.constant(1);
    default:
      return blankBy
        ? program.leaf({ variable: blankBy.by, table: Float64Array.of(0, 1, 1).slice(0, 2) })
        : program.constant(0);
  }
}

/** Every observation that a look back reads, in whatever part of it. */
export const observationsBehindLookBack = ({ observation, where, condition }: LookBack): string[] => [
  ...(observation === null ? [] : [observation]),
  ...observationsOfCondition(where),
  ...observationsOfCondition(condition),
];
