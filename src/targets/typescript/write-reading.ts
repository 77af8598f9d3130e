import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';

const list = (lines: readonly Code[]): Code => Code.joined(lines, '\n');

/** `takeSet(set)`: the values of a set into `low`, `high` and `state`. */
export function takeSetFunction({ observations }: ModuleInputs): Code {
  const lines = observations.map(({ index, entry, choices }) => {
    const value = code`set.${Code.name(entry.name)}`;
    const words = code`[${Code.joined(
      choices.map((choice) => code`${choice}`),
      ', ',
    )}]`;
    if (entry.kind === 'several') return code`  takeSeveral(${index}, ${value}, ${words});`;
    if (entry.kind !== 'number') return code`  takeChoice(${index}, ${value}, ${words});`;
    const { n, d } = entry.stepsPerUnit;
    return code`  takeNumber(${index}, ${value}, ${Number(n)}, ${Number(d)});`;
  });
  return code`function takeSet(set: GivenSet): void {
${list(lines)}
}`;
}

const bandsOf = ({ entry }: ModuleObservation): Code =>
  code`[${Code.joined(
    entry.possible.map(({ ageBelow, low, high }) => code`${ageBelow ?? Code.never}, ${low}, ${high}`),
    ', ',
  )}]`;

/** `refuse()`: what is impossible, and what contradicts, counts as missing from here on. */
export function refuseFunction(inputs: ModuleInputs): Code {
  const { observations, contradictions, indexOf } = inputs;
  const numbers = observations.filter(({ entry }) => entry.kind === 'number');
  const ageFirst = [...numbers].sort(
    (a, b) => Number(b.entry.name === 'age') - Number(a.entry.name === 'age'),
  );
  const checks = ageFirst.map(({ index }) => code`  refuseImpossible(${index});`);
  const pairs = contradictions.map(({ lower, higher, mayBeEqual, scale, factor, shift }) => {
    const [below, above] = [indexOf(lower.name), indexOf(higher.name)];
    return code`  contradict(${below}, ${above}, ${mayBeEqual}, ${scale}, ${factor}, ${shift});`;
  });
  return code`const ageAt = ${indexOf('age')};
/** Of each number its bands of ages: the age below which a band ends, its lowest and its highest step. */
const bands: readonly (readonly number[])[] = [
${list(observations.map((each) => code`  ${bandsOf(each)},`))}
];

function refuse(): void {
${list(checks)}${
    pairs.length === 0
      ? code``
      : code`
  clashes.fill(0);
${list(pairs)}
  for (let index = 0; index < clashes.length; index += 1) if (clashes[index] === 1) state[index] = 3;`
  }
}`;
}

/** `writeBounds(b, limits)`: the values as the bounds that `answer` reads. */
export function writeBoundsFunction(inputs: ModuleInputs): Code {
  const { protocol, placeOf } = inputs;
  const limits = [...protocol.limits.values()].map(({ name, value, between, stepsPerUnit }) => {
    const { n, d } = stepsPerUnit;
    const place = placeOf(name, 'value');
    return between
      ? code`  b[${place}] = limitOf(${name}, limits?.${Code.name(name)}, ${value}, ${between[0]}, ${between[1]}, ${Number(n)}, ${Number(d)});`
      : code`  b[${place}] = ${value};`;
  });
  const read = inputs.observations.filter(({ entry }) => placeOf(entry.name, 'known') !== -1);
  return code`function writeBounds(b: Float64Array, limits: Limits | null): void {
  void limits;
${list([...read.map((each) => writeObservation(each, inputs)), ...limits])}
}`;
}

function writeObservation({ index, entry, choices, assumed }: ModuleObservation, inputs: ModuleInputs): Code {
  const place = (part: Parameters<ModuleInputs['placeOf']>[1]): number => inputs.placeOf(entry.name, part);
  const [unobtainable, missing] = [place('unobtainable'), place('missing')];
  const otherwise = assumed ?? Code.never;
  const common = code`${place('known')}, ${unobtainable}, ${missing}`;
  if (entry.kind === 'number')
    return code`  writeNumber(b, ${index}, ${place('low')}, ${place('high')}, ${common}, ${otherwise});`;
  const first = inputs.placeOf(entry.name, 'may', choices[0] ?? '');
  if (entry.kind !== 'several')
    return code`  writeChoice(b, ${index}, ${first}, ${choices.length}, ${common}, ${otherwise});`;
  const sure = inputs.placeOf(entry.name, 'sure', choices[0] ?? '');
  return code`  writeSeveral(b, ${index}, ${first}, ${sure}, ${choices.length}, ${common});`;
}

/** `writeLookBacks(b, backs)`. */
export function writeLookBacksFunction({ lookBacks, placeOf }: ModuleInputs): Code {
  if (lookBacks.length === 0) return code``;
  const lines = lookBacks.map(({ name }) => {
    const at = (part: Parameters<typeof placeOf>[1]): number => placeOf(name, part);
    return code`  writeLookBack(b, backs.${Code.name(name)}, ${at('low')}, ${at('sure')}, ${at('maybe')}, ${at('open')}, ${at('count')});`;
  });
  return code`
function writeLookBacks(b: Float64Array, backs: LookBacks): void {
${list(lines)}
}
`;
}
