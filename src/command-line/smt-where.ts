import type { Observation, Protocol } from '../protocol/protocol.ts';
import type { AskedSets } from '../targets/smt-lib/sets.ts';
import { parseQuantity, toSteps } from '../vocabulary/quantity.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';
import { unnamed, type Unreadable } from './smt-question.ts';

/** What `--where` narrows the sets to. */
export type Narrowed = Required<Pick<AskedSets, 'ranges' | 'choices' | 'absent'>>;

/**
 * Reads each `--where NAME=WHAT`: one value or `LOW..HIGH` of a number, in its own unit; a choice, or several with `|` between them;
 * of a several, `CHOICE:yes` or `CHOICE:no`; or `missing`, `unobtainable`, `assumed`. Nothing that leaves no set is taken.
 */
export function readWhere(texts: readonly string[], protocol: Protocol): Narrowed | Unreadable {
  const read = { ranges: new Map(), choices: new Map(), absent: new Map() } as {
    readonly [Key in keyof Narrowed]: Narrowed[Key] extends ReadonlyMap<string, infer Value>
      ? Map<string, Value>
      : never;
  };
  const seen = new Set<string>();
  for (const text of texts) {
    const [name = '', what, ...more] = text.split('=');
    if (what === undefined || more.length > 0)
      return { why: `--where takes NAME=WHAT, as in systolic=80..90, not "${text}"` };
    const wrong = unnamed('observation', name, [...protocol.observations.keys()]);
    if (wrong) return wrong;
    const observation = protocol.observations.get(name) as Observation;
    const problem = readOne(observation, what, read, seen);
    if (problem !== null) return { why: `--where ${name}: ${problem}` };
  }
  return read;
}

type Into = {
  readonly ranges: Map<string, readonly [number, number]>;
  readonly choices: Map<string, readonly string[]>;
  readonly absent: Map<string, 'missing' | 'unobtainable' | 'assumed'>;
};

const isAbsence = (what: string): what is 'missing' | 'unobtainable' | 'assumed' =>
  ['missing', 'unobtainable', 'assumed'].includes(what);

/** Null, or what is wrong. */
function readOne(observation: Observation, what: string, into: Into, seen: Set<string>): string | null {
  const { name, kind, choices } = observation;
  const member = kind === 'several' ? /^(.*):(yes|no)$/s.exec(what) : null;
  const key = member ? `${name}:${member[1] ?? ''}` : name;
  if (seen.has(key) || (member ? seen.has(name) : [...seen].some((each) => each.startsWith(`${name}:`))))
    return 'it is there twice';
  seen.add(key);
  const known = choices.map(({ choice }) => choice);
  if (isAbsence(what) && !known.includes(what)) {
    if (what === 'assumed' && (!observation.standing || observation.ifNotStated === null))
      return 'nothing is assumed for it';
    into.absent.set(name, what);
    return null;
  }
  if (kind === 'number') return readNumbers(observation, what, into);
  if (kind === 'several') {
    if (!member?.[1] || !known.includes(member[1]))
      return `it takes CHOICE:yes or CHOICE:no, of ${known.join(', ')}`;
    into.choices.set(key, [member[2] as string]);
    return null;
  }
  const asked = what.split('|');
  const other = asked.find((each) => !known.includes(each));
  if (other !== undefined) return `it is one of ${known.join(', ')}, not "${other}"`;
  into.choices.set(name, asked);
  return null;
}

function readNumbers(observation: Observation, what: string, into: Into): string | null {
  const ends = what.split('..');
  if (ends.length > 2) return `it takes a number or LOW..HIGH, not "${what}"`;
  const steps: number[] = [];
  for (const end of ends) {
    const quantity = parseQuantity(end);
    if ('problem' in quantity || quantity.unit)
      return `"${end}" is no plain number in ${observation.unit?.word ?? 'points'}`;
    const found = toSteps(quantity.value, null, observation);
    if (!found.exact) return `"${end}" lies between two steps`;
    steps.push(found.steps);
  }
  const [low, high = low] = steps as [number, number?];
  const possible = possibleRange(observation);
  if (low > high) return `it goes from "${ends[0] ?? ''}" down to "${ends[1] ?? ''}"`;
  if (low < possible.low || high > possible.high) return `"${what}" is not possible at any age`;
  into.ranges.set(observation.name, [low, high]);
  return null;
}
