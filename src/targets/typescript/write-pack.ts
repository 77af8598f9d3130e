import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';
import { nothingIn, ofLookBack, ofObservation, short } from './names.ts';

/** What a set gives for an observation, as the one number of a row. */
function oneValue(observation: ModuleObservation): Code {
  const { entry, choices } = observation;
  const value = code`set.${Code.name(entry.name)}`;
  const nothing = nothingIn(observation);
  const { n, d } = entry.stepsPerUnit;
  if (entry.kind === 'number')
    return code`typeof ${value} === 'number' ? stepsInRow(${value}, ${Number(n)}, ${Number(d)}, ${nothing}) : noneInRow(${value}, ${nothing})`;
  if (entry.kind === 'several') return code`severalInRow(${value}, ${listOf(observation)}, ${nothing})`;
  const places = choices.map((choice, index) => code`${value} === ${choice} ? ${index} : `);
  return code`${Code.joined(places, '')}noneInRow(${value}, ${nothing})`;
}

const listOf = ({ entry }: ModuleObservation): Code => Code.name(`choices_${entry.name}`);

/** The choices of each *several*, as lists of their own. */
const choiceLists = ({ observations }: ModuleInputs): readonly Code[] =>
  observations.flatMap((each) => {
    const words = Code.joined(
      each.choices.map((choice) => code`${choice}`),
      ', ',
    );
    return each.entry.kind === 'several'
      ? [code`const ${listOf(each)}: readonly string[] = [${words}];`]
      : [];
  });

const emptyRow = ({ observations, lookBacks }: ModuleInputs): readonly Code[] => [
  ...observations.map(
    (each) =>
      code`  ${Code.name(each.entry.name)}: new ${short(each) ? code`Int16Array` : code`Int32Array`}(1),`,
  ),
  ...lookBacks.map(({ name }) => code`  ${Code.name(name)}: new Float64Array(1),`),
];

/** Of each observation and look back its name, what it is called, and how it is read from a set. */
const valuesOf = ({ observations, lookBacks }: ModuleInputs): (readonly [string, Code, Code])[] => [
  ...observations.map((each) => [each.entry.name, ofObservation(each.entry.name), oneValue(each)] as const),
  ...lookBacks.map(
    ({ name }) => [name, ofLookBack(name), code`lookedBackInRow(set.look_backs.${Code.name(name)})`] as const,
  ),
];

/** `pack(set, out, at, limits)`, and how one set becomes a row. */
export function packFunctions(inputs: ModuleInputs): readonly Code[] {
  const values = valuesOf(inputs);
  const own = Code.joined(
    values.map(([, value]) => value),
    ', ',
  );
  return [
    code`/** One set as a row of columns. */
const oneRow: Columns = {
${lines(emptyRow(inputs))}
};
${lines(choiceLists(inputs))}

/** Answers a set that fits into a row: nothing in it is a range, or was tried and not obtained. False where it does not fit. */
function packRow(set: GivenSet, out: Int32Array, at: number): boolean {
  isRow = true;
${lines(values.map(([, value, is]) => code`  const ${value} = ${is};`))}
  if (isRow && !answerComplete(${own}, out, at)) {
${lines(values.map(([name, value]) => code`    oneRow.${Code.name(name)}[0] = ${value};`))}
    answerRows(oneRow, 1, out, at);
  }
  return isRow;
}`,
    packFunction(inputs.lookBacks.length > 0),
  ];
}

const packFunction = (looksBack: boolean): Code => code`/**
 * The packed answer to a set, into \`words\` places of \`out\` from \`at\` on: a summary, then for each 32 rules one bit each that is met, and one
 * that is undecided. Returns false where a value was refused; which ones, \`evaluate\` says.
 */
export function pack(set: GivenSet, out: Int32Array, at: number, limits: Limits | null = null): boolean {
  if (limits !== null || !packRow(set, out, at)) {
    takeSet(set);
    packOpen(out, at, limits${looksBack ? code`, set.look_backs` : code``});
  }
  return ((out[at] as number) & (1 << 19)) === 0;
}`;

const lines = (all: readonly Code[]): Code => Code.joined(all, '\n');
