import { ofLookBack, ofObservation } from './calculations.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';
import { writeColumns } from './write-columns.ts';
import { askedWide, noFault } from './write-faults.ts';
import { writeOutcomes } from './write-outcomes.ts';
import { completeArguments, isPlain } from './write-reading.ts';

/** The calls of a module: one set, columns of many, bounds, and the measures. */
export function writeCalls(inputs: ModuleInputs): readonly Code[] {
  return [
    summary,
    packFunction(inputs),
    packedFunction(inputs),
    ...writeColumns(inputs),
    ...writeOutcomes(inputs),
  ];
}

const summary = code`/** Bits 0 and 1: for this patient (0 no, 1 unsure, 2 yes). Bit 2: settled. From bit 3: at least, plus 1. From bit 11: could be. Bit 19: a value was refused. */
function summary(
  yes: boolean,
  mayBe: boolean,
  sure: boolean,
  raised: number,
  could: number,
  floor: number,
): number {
  if (!mayBe) return 0;
  const couldBe = Math.max(raised, could, 0);
  const lowest = Math.max(floor, 0);
  const settled = sure && lowest === Math.max(raised, 0) && lowest === couldBe;
  const atLeast = raised > 0 ? raised : settled ? 0 : -1;
  return (yes ? 2 : 1) | (settled ? 4 : 0) | ((atLeast + 1) << 3) | (couldBe << 11);
}`;

/** From bounds to a packed answer, and the way of an incomplete set. */
function packFunction({ lookBacks, faults }: ModuleInputs): Code {
  return code`function packAnswers(narrow: Int32Array, wide: Int32Array, out: Int32Array, at: number): void {
  const fits = narrow[0] as number;
  const wideFits = wide[0] as number;
  const raised = narrow[1] as number;
  out[at] = summary(
    (fits & 1) !== 0,
    (wideFits & 2) !== 0,
    (wideFits & 1) !== 0,
    raised,
    wide[2] as number,
    wide[3] as number,
  );
  for (let word = 1; word < words; word += 2) {
    const met = narrow[word + 3] as number;
    out[at + word] = met;
    out[at + word + 1] = (wide[word + 4] as number) & ~met;
  }
}

function packOpen(out: Int32Array, at: number, limits: Limits | null${
    lookBacks.length === 0 ? code`` : code`, backs: LookBacks`
  }): void {
  refuse();
  writeBounds(bounds, limits);${
    lookBacks.length === 0
      ? code``
      : code`
  writeLookBacks(bounds, backs);`
  }
  answer(bounds, narrowAnswer);
${faults.length === 0 ? code`  packAnswers(narrowAnswer, narrowAnswer, out, at);` : askedWide}
  if (state.includes(3)) out[at] = (out[at] as number) | (1 << 19);
}`;
}

/** What a set gives for an observation, as one whole number; what is none lies nowhere. */
function oneValue({ entry, choices }: ModuleObservation): Code {
  const value = code`set.${Code.name(entry.name)}`;
  const { n, d } = entry.stepsPerUnit;
  if (entry.kind === 'number')
    return code`typeof ${value} === 'number' ? steps(${value}, ${Number(n)}, ${Number(d)}) : NaN`;
  const words = Code.joined(
    choices.map((choice) => code`${choice}`),
    ', ',
  );
  if (entry.kind === 'several') return code`maskOf(${value}, [${words}])`;
  const places = choices.map((choice, index) => code`${value} === ${choice} ? ${index} : `);
  return code`${Code.joined(places, '')}-1`;
}

function packedFunction(inputs: ModuleInputs): Code {
  const { observations, lookBacks } = inputs;
  const given = [
    ...observations.map((each) => code`    const ${ofObservation(each.entry.name)} = ${oneValue(each)};`),
    ...lookBacks.map(({ name }) => code`    const ${ofLookBack(name)} = set.look_backs.${Code.name(name)};`),
  ];
  const isNumber = lookBacks.map(({ name }) => code`typeof ${ofLookBack(name)} === 'number'`);
  return code`/**
 * The packed answer to a set, into \`words\` places of \`out\` from \`at\` on: a summary, then for each 32 rules one bit each that is met, and one
 * that is undecided. Returns false where the set did not go straight through: what was refused then stands in \`evaluate\`.
 */
export function pack(set: GivenSet, out: Int32Array, at: number, limits: Limits | null = null): boolean {
  if (limits === null) {
${Code.joined(given, '\n')}
    if (
    ${Code.joined([...isNumber, isPlain(inputs), ...noFault(inputs)], ' &&\n    ')}
    ) {
      complete(${completeArguments(inputs)}, out, at);
      return true;
    }
  }
  takeSet(set);
  packOpen(out, at, limits${lookBacks.length === 0 ? code`` : code`, set.look_backs`});
  return false;
}`;
}
