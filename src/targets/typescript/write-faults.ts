import { answersOver, completeParameters } from './calculations.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { writeParts } from './write-parts.ts';
import { completeArguments } from './write-reading.ts';

/** `isFaulty(…)` of a complete set, and `doubt(b)`: the faults of technique. Nothing where there are none. */
export function faultFunctions(inputs: ModuleInputs): readonly Code[] {
  const { faults, indexOf } = inputs;
  if (faults.length === 0) return [];
  const [complete, open] = [isThere(inputs, true), isThere(inputs, false)];
  const widened = faults.map(({ readsHigh, readsLow }, index) => {
    const names = new Set([...readsHigh.keys(), ...readsLow.keys()]);
    const lines = [...names].map(
      (name) => code`    widen(${indexOf(name)}, ${readsHigh.get(name) ?? 0}, ${readsLow.get(name) ?? 0});`,
    );
    return code`  const isThere${index} = ${open.each[index] ?? code`false`};
  if (isThere${index}) {
${Code.joined(lines, '\n')}
  }`;
  });
  return [
    code`/** Whether a fault of technique is there in a complete set. */
function isFaulty(
  ${completeParameters(inputs)},
): boolean {
${Code.joined(complete.lines, '\n')}
  return ${Code.joined(complete.each, ' || ')};
}`,
    code`/** Makes room for the truth around what was read, by every fault of technique that surely is there; whether one is. */
function doubt(b: Float64Array): boolean {
${Code.joined([...open.lines, ...widened], '\n')}
  return ${Code.joined(
    faults.map((_, index) => code`isThere${index}`),
    ' || ',
  )};
}`,
  ];
}

function isThere(
  inputs: ModuleInputs,
  single: boolean,
): { readonly lines: readonly Code[]; readonly each: readonly Code[] } {
  const { read, names } = answersOver(inputs, single);
  const parts = inputs.faults.map((fault) => read(fault.isThere));
  const written = writeParts(parts, names);
  return { lines: written.lines, each: parts.map(written.of) };
}

/** The second half of `packOpen`: as it was read, and with room for the truth. */
export const askedWide = code`  if (doubt(bounds)) {
    writeBounds(bounds, limits);
    answer(bounds, wideAnswer);
    packAnswers(narrowAnswer, wideAnswer, out, at);
  } else packAnswers(narrowAnswer, narrowAnswer, out, at);`;

/** What a complete set must fulfil to go straight through: no fault of technique. */
export const noFault = (inputs: ModuleInputs): readonly Code[] =>
  inputs.faults.length === 0 ? [] : [code`!isFaulty(${completeArguments(inputs)})`];
