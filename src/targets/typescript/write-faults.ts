import { answersOver } from './answers-over.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { writeParts } from './write-parts.ts';

/** `doubt(b)`: the faults of technique. Nothing where there are none. */
export function faultFunctions(inputs: ModuleInputs): readonly Code[] {
  const { faults, indexOf } = inputs;
  if (faults.length === 0) return [];
  const { read, names } = answersOver(inputs, 'bounds');
  const parts = faults.map(({ isThere }) => read(isThere));
  const written = writeParts(parts, names);
  const widened = faults.map(({ readsHigh, readsLow }, index) => {
    const doubted = new Set([...readsHigh.keys(), ...readsLow.keys()]);
    const lines = [...doubted].map(
      (name) => code`    widen(${indexOf(name)}, ${readsHigh.get(name) ?? 0}, ${readsLow.get(name) ?? 0});`,
    );
    return code`  const isThere${index} = ${written.of(parts[index] as (typeof parts)[number])};
  if (isThere${index} === 1) {
${Code.joined(lines, '\n')}
  }`;
  });
  const each = faults.map((_, index) => code`isThere${index}`);
  return [
    code`/** Makes room for the truth around what was read, by every fault of technique that surely is there; whether one is. */
function doubt(b: Float64Array): boolean {
${Code.joined([...written.lines, ...widened], '\n')}
  return (${Code.joined(each, ' | ')}) === 1;
}`,
  ];
}

/** The second half of `packOpen`: as it was read, and with room for the truth. */
export const askedWide = code`  if (doubt(bounds)) {
    writeBounds(bounds, limits);
    answer(bounds, wideAnswer);
    packAnswers(narrowAnswer, wideAnswer, out, at);
  } else packAnswers(narrowAnswer, narrowAnswer, out, at);`;
