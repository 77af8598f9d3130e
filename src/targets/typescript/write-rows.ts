import { answersOver, type From } from './answers-over.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';
import { has, lookedBack, nothingIn, ofEnd, ofLookBack, ofObservation } from './names.ts';
import { packed } from './packed-answers.ts';
import { isComplete, mayBeOpen } from './row-conditions.ts';

/**
 * `answerRows(columns, count, out, start)`: row by row, in the quickest of three ways. A row in which everything is one value goes straight
 * through; one of which some values are missing, in both logics; any other over its bounds.
 */
export function answerRowsFunction(inputs: ModuleInputs): Code {
  const { observations, lookBacks } = inputs;
  const columns = [...observations.map(({ entry }) => entry.name), ...lookBacks.map(({ name }) => name)];
  const values = [
    ...observations.map(({ entry: { name } }) => [ofObservation(name), name] as const),
    ...lookBacks.map(({ name }) => [ofLookBack(name), name] as const),
  ];
  return code`/** The packed answers to \`count\` rows of columns, from \`start\` on. */
function answerRows(columns: Columns, count: number, out: Int32Array, start: number): void {
${lines(columns.map((name) => code`  const column_${Code.name(name)} = columns.${Code.name(name)};`))}
  for (let row = 0; row < count; row += 1) {
    const at = start + row * words;
${lines(values.map(([value, name]) => code`    const ${value} = column_${Code.name(name)}[row] as number;`))}
    if (${isComplete(inputs)}) {
${answerOf(inputs, 'complete_row', code`continue`)}
    }
${lines(hasEach(inputs))}
    if (${mayBeOpen(inputs)}) {
${answerOf(inputs, 'open_row', code`continue`)}
    }
${overBounds(inputs)}
  }
}`;
}

/**
 * `answerComplete(…, out, at)`: the first of the three ways, for one set. It is written a second time, because a processor takes as long to hand
 * over what stands in columns as to work the answer out.
 */
export function answerCompleteFunction(inputs: ModuleInputs): Code {
  const values = [
    ...inputs.observations.map(({ entry }) => ofObservation(entry.name)),
    ...inputs.lookBacks.map(({ name }) => ofLookBack(name)),
  ];
  return code`/** Straight through, where everything is one value; false where it is not. */
function answerComplete(
${lines(values.map((value) => code`  ${value}: number,`))}
  out: Int32Array,
  at: number,
): boolean {
    if (${isComplete(inputs)}) {
${answerOf(inputs, 'complete_row', code`return true`)}
    }
  return false;
}`;
}

const lines = (all: readonly Code[]): Code => Code.joined(all, '\n');

/** The lines that answer a row, and then end; where a fault of technique is there, none of them does. */
function answerOf(inputs: ModuleInputs, from: From, end: Code): Code {
  const faults = inputs.faults.map(({ isThere }) => isThere);
  const { lines: worked, also, summary, words } = packed(inputs.logic, answersOver(inputs, from), faults);
  const answers = [
    code`out[at] = ${summary};`,
    ...words.flatMap(({ met, undecided }, index) => [
      code`out[at + ${2 * index + 1}] = ${met};`,
      code`out[at + ${2 * index + 2}] = ${undecided};`,
    ]),
    code`${end};`,
  ];
  const answer =
    also.length === 0
      ? answers.map((each) => code`      ${each}`)
      : [
          code`      if ((${Code.joined(also, ' | ')}) === 0) {`,
          ...answers.map((each) => code`        ${each}`),
          code`      }`,
        ];
  const own = [...worked.map((each) => code`    ${each}`), ...answer];
  return lines([...(from === 'open_row' ? ends(inputs, lines(own)) : []), ...own]);
}

/** Whether a row has each observation and look back. */
const hasEach = ({ observations, lookBacks }: ModuleInputs): readonly Code[] => [
  ...observations.map(({ entry, surely }) => {
    const value = ofObservation(entry.name);
    return code`    const ${has(entry.name)} = Number(${value} >= ${surely.low}) & Number(${value} <= ${surely.high});`;
  }),
  ...lookBacks.map(
    ({ name }) => code`    const ${has(name)} = Number(${ofLookBack(name)} === ${ofLookBack(name)});`,
  ),
];

/** The ends of the numbers of an open row, as far as its answer reads them. */
function ends(inputs: ModuleInputs, answer: Code): readonly Code[] {
  const numbers = inputs.observations.filter(({ entry }) => entry.kind === 'number');
  const own = numbers.flatMap((each) =>
    (['low', 'high'] as const).map((end) => {
      const { name } = each.entry;
      const value = code`${has(name)} === 1 ? ${ofObservation(name)} : ${whenMissing(each, end, inputs)}`;
      return [ofEnd(end, name), value] as const;
    }),
  );
  const said = inputs.lookBacks.map(
    ({ name }) => [lookedBack(name), code`${has(name)} === 1 ? ${ofLookBack(name)} : 0`] as const,
  );
  const read = new Set(answer.text.match(/\w+/g));
  return [...own, ...said].flatMap(([name, is]) =>
    read.has(name.text) ? [code`      const ${name} = ${is};`] : [],
  );
}

/** The end of what is possible: at any age, or in the band of an age that is known. */
function whenMissing(
  { entry, low, high, assumed }: ModuleObservation,
  end: 'low' | 'high',
  inputs: ModuleInputs,
): Code {
  const atAnyAge = { low, high }[end];
  if (assumed !== null) return code`${assumed}`;
  if (entry.possible.length === 1 || inputs.indexOf('age') === -1) return code`${atAnyAge}`;
  const bands = entry.possible.map(({ ageBelow, ...band }) =>
    ageBelow === null ? code`${band[end]}` : code`${ofObservation('age')} < ${ageBelow} ? ${band[end]} : `,
  );
  return code`${has('age')} === 0 ? ${atAnyAge} : ${Code.joined(bands, '')}`;
}

/** A row over its bounds: what is refused or contradicts, what depends on the age, and faults of technique. */
function overBounds({ observations, lookBacks }: ModuleInputs): Code {
  const taken = observations.map((each) => {
    const width = each.entry.kind === 'number' ? 0 : each.high + 1;
    return code`    takeColumn(${each.index}, ${ofObservation(each.entry.name)}, ${nothingIn(each)}, ${width});`;
  });
  const backs = lookBacks.map(
    ({ name }) => code`${Code.name(name)}: ${has(name)} === 1 ? ${ofLookBack(name)} : null`,
  );
  const looked = lookBacks.length === 0 ? code`` : code`, { ${Code.joined(backs, ', ')} }`;
  return lines([...taken, code`    packOpen(out, at, null${looked});`]);
}
