import { answersOver } from './answers-over.ts';
import { Code, code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { bits, wordsOf } from './packed-answers.ts';
import { writeParts } from './write-parts.ts';

/** `answer(b, out)`: over bounds, certain and possible apart. */
export function boundsFunction(inputs: ModuleInputs): Code {
  const { logic } = inputs;
  const { read, names } = answersOver(inputs, 'bounds');
  const rules = wordsOf(
    logic.rules.map(({ certain, possible }) => ({ certain: read(certain), possible: read(possible) })),
  );
  const { applies, levels } = logic;
  const roots = [applies.certain, applies.possible, levels.raised, levels.could, levels.floor].map(read);
  const written = writeParts(
    [...roots, ...rules.flat().flatMap((rule) => [rule.certain, rule.possible])],
    names,
  );
  const [certain, possible, raised, could, floor] = roots.map(written.of) as [Code, Code, Code, Code, Code];
  const out = [
    code`  out[0] = ${certain} | (${possible} << 1);`,
    code`  out[1] = ${raised};`,
    code`  out[2] = ${could};`,
    code`  out[3] = ${floor};`,
    ...rules.flatMap((word, index) => [
      code`  out[${4 + 2 * index}] = ${bits(word.map((rule) => written.of(rule.certain)))};`,
      code`  out[${5 + 2 * index}] = ${bits(word.map((rule) => written.of(rule.possible)))};`,
    ]),
  ];
  return code`function answer(b: Float64Array, out: Int32Array): void {
${Code.joined([...written.lines, ...out], '\n')}
}`;
}

/** `work(b, out)`: the measures over bounds, seven numbers each. */
export function measuresFunction(inputs: ModuleInputs): Code {
  const { read, names } = answersOver(inputs, 'bounds');
  const roots = inputs.logic.measures.map(({ low, high, bottomLow, bottomHigh, maybe }) =>
    [low, high, bottomLow, bottomHigh, maybe].map(read),
  );
  const written = writeParts(roots.flat(), names);
  const numbers = roots.flatMap((each, index) =>
    each.map((part, place) => code`  out[${5 * index + place}] = ${written.of(part)};`),
  );
  return code`function work(b: Float64Array, out: Float64Array): void {
${Code.joined([...written.lines, ...numbers], '\n')}
}`;
}
