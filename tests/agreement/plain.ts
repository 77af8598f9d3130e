import { answersOf, setToInputs } from '../../src/targets/json-logic/reader.mjs';
import type { Bounds } from '../../src/series/bounds.ts';
import type { KitAnswer } from './kit.ts';
import { decimal, type Subject } from './observations.ts';
import type { MadeProtocol, Plain } from './protocols.ts';
import { apply, counts, named, saidApart, saidBy, type Targets } from './said.ts';

/** A number as programs give it: alone, or with both ends. */
function plainNumber(subject: Subject, what: unknown): unknown {
  if (typeof what !== 'object' || what === null) return what;
  const given = what as Readonly<Record<string, number>>;
  if ('unobtainable' in given || 'declined' in given) return given;
  const [bottom, top] = [decimal(subject, subject.low), decimal(subject, subject.high)];
  const beside = (value: number, steps: number): number => decimal(subject, value * subject.perUnit + steps);
  if (given['above_device'] !== undefined) return { low: beside(given['above_device'], 1), high: top };
  if (given['below_device'] !== undefined) return { low: bottom, high: beside(given['below_device'], -1) };
  const { value, low = value ?? bottom, high = value ?? top } = given;
  return low === high ? low : { low, high };
}

const yesNo = (what: unknown): unknown => (what === true ? 'yes' : what === false ? 'no' : what);

/** A set as programs give it; null for a series, and where a patient's own facts or limits are told. */
function plainSet({ subjects }: MadeProtocol, set: Plain): Plain | null {
  if ('sets' in set || 'patient' in set) return null;
  const given = subjects.filter(({ name }) => name in set);
  return Object.fromEntries(
    given.map((subject) => [
      subject.name,
      subject.kind === 'number' ? plainNumber(subject, set[subject.name]) : yesNo(set[subject.name]),
    ]),
  );
}

/**
 * What the targets that read a set by themselves make of it, and the kit does not: the module's `evaluate`, and the reader of the JSON
 * Logic artefact. What an earlier set would say they are given only where it is the same with and without faults of technique.
 */
export function plainApart(
  targets: Targets,
  made: MadeProtocol,
  set: Plain,
  { narrow, wide }: Bounds,
  kit: KitAnswer,
): string[] {
  const { compiled, module, file } = targets;
  const plain = plainSet(made, set);
  const inputs = compiled.logic.inputs.filter(({ of }) => of === 'look_back');
  if (!plain || (inputs.length > 0 && narrow !== wide)) return [];
  counts.plain += 1;
  const expected = named(compiled, narrow);
  const others = Object.fromEntries(inputs.map(({ name }) => [name, expected[name] ?? NaN]));
  const read = setToInputs(file, apply, plain, others).inputs;
  const wrong = Object.keys(expected).filter((name) => read[name] !== expected[name]);
  const library = answersOf(file, apply, read);
  const generated = module.evaluate({ ...plain, look_backs: lookBacksOf(targets, expected) });
  return [
    ...wrong.map((name) => `the reader of JSON Logic: ${name} is ${read[name]}, not ${expected[name]}`),
    ...saidApart('the reader of JSON Logic', library, saidBy(kit)),
    ...saidApart('evaluate of the module', generated, saidBy(kit)),
  ];
}

/** What the look backs of a set come to, as the module asks for it. */
function lookBacksOf({ compiled }: Targets, at: Readonly<Record<string, number>>): Plain {
  const backs = [...compiled.protocol.measures.values()].filter(({ how }) => 'over' in how);
  const one = (name: string): Plain => ({
    low: at[`${name}:low`] ?? 0,
    high: at[`${name}:high`] ?? 0,
    sure: at[`${name}:sure`] === 1,
    maybe: at[`${name}:maybe`] === 1,
    open: at[`${name}:open`] === 1,
    count: at[`${name}:count`] ?? 1,
  });
  return Object.fromEntries(backs.map(({ name }) => [name, one(name)]));
}
