import { ofLookBack, ofObservation } from './calculations.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';
import { noFault } from './write-faults.ts';
import { completeArguments, isPlainColumns } from './write-reading.ts';

const short = ({ low, high }: ModuleObservation): boolean => low > -32_000 && high < 32_000;
const nothingIn = (observation: ModuleObservation): number => (short(observation) ? -32_768 : -2_147_483_648);

/** `Columns` and `packColumns`. */
export function writeColumns(inputs: ModuleInputs): readonly Code[] {
  return [columnsType(inputs), packColumnsFunction(inputs)];
}

function columnsType({ observations, lookBacks }: ModuleInputs): Code {
  const properties = [
    ...observations.map(
      (each) => code`  ${Code.comment(inColumn(each))}
  readonly ${Code.name(each.entry.name)}: ${short(each) ? code`Int16Array` : code`Int32Array`};`,
    ),
    ...lookBacks.map(
      ({ name }) => code`  /** As in \`LookBacks\`; NaN where it has no value. */
  readonly ${Code.name(name)}: Float64Array;`,
    ),
  ];
  return code`/** Many sets as columns, each as long as there are sets. */
export interface Columns {
${Code.joined(properties, '\n')}
}`;
}

function inColumn(observation: ModuleObservation): string {
  const { entry, choices } = observation;
  const kinds = {
    number: 'whole steps',
    several: 'one bit for each',
    choice: 'the place of',
    yes_no: 'the place of',
  };
  const words = choices.length === 0 ? '' : ` ${choices.join(', ')}`;
  const nothing = nothingIn(observation);
  return `${entry.title}, ${kinds[entry.kind]}${words}; ${nothing} not taken, ${nothing + 1} unobtainable.`;
}

function packColumnsFunction(inputs: ModuleInputs): Code {
  const { observations, lookBacks } = inputs;
  const columns = [...observations.map(({ entry }) => entry.name), ...lookBacks.map(({ name }) => name)];
  const taken = observations.map((each) => {
    const width = each.entry.kind === 'number' ? 0 : each.high + 1;
    return code`    takeColumn(${each.index}, ${ofObservation(each.entry.name)}, ${nothingIn(each)}, ${width});`;
  });
  const backs = lookBacks.map(
    ({ name }) => code`${Code.name(name)}: Number.isNaN(${ofLookBack(name)}) ? null : ${ofLookBack(name)}`,
  );
  const isNumber = lookBacks.map(({ name }) => code`!Number.isNaN(${ofLookBack(name)})`);
  return code`/** The packed answers to \`count\` sets, one after the other, each in \`words\` places. A value that is refused sets bit 19. */
export function packColumns(
  columns: Columns,
  count: number,
  out: Int32Array = new Int32Array(count * words),
): Int32Array {
${Code.joined(
  columns.map((name) => code`  const column_${Code.name(name)} = columns.${Code.name(name)};`),
  '\n',
)}
  for (let row = 0; row < count; row += 1) {
${Code.joined(
  [
    ...observations.map(
      ({ entry: { name } }) =>
        code`    const ${ofObservation(name)} = column_${Code.name(name)}[row] as number;`,
    ),
    ...lookBacks.map(
      ({ name }) => code`    const ${ofLookBack(name)} = column_${Code.name(name)}[row] as number;`,
    ),
  ],
  '\n',
)}
    if (
    ${Code.joined([...isNumber, isPlainColumns(inputs), ...noFault(inputs)], ' &&\n    ')}
    ) {
      complete(${completeArguments(inputs)}, out, row * words);
      continue;
    }
${Code.joined(taken, '\n')}
    packOpen(out, row * words, null${lookBacks.length === 0 ? code`` : code`, { ${Code.joined(backs, ', ')} }`});
  }
  return out;
}`;
}
