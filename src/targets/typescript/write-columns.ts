import { Code, code } from './code.ts';
import type { ModuleInputs, ModuleObservation } from './module-inputs.ts';
import { nothingIn, short } from './names.ts';
import { answerCompleteFunction, answerRowsFunction } from './write-rows.ts';

/** `Columns` and `packColumns`. */
export function writeColumns(inputs: ModuleInputs): readonly Code[] {
  return [columnsType(inputs), answerRowsFunction(inputs), packColumnsText, answerCompleteFunction(inputs)];
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

const packColumnsText = code`/** The packed answers to \`count\` sets, one after the other, each in \`words\` places. A value that is refused sets bit 19. */
export function packColumns(
  columns: Columns,
  count: number,
  out: Int32Array = new Int32Array(count * words),
): Int32Array {
  answerRows(columns, count, out, 0);
  return out;
}`;
