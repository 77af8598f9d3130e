import { code, type Code } from './code.ts';
import type { ModuleInputs } from './module-inputs.ts';
import { writeColumns } from './write-columns.ts';
import { askedWide } from './write-faults.ts';
import { writeOutcomes } from './write-outcomes.ts';
import { packFunctions } from './write-pack.ts';

/** The calls of a module: one set, columns of many, bounds, and the measures. */
export function writeCalls(inputs: ModuleInputs): readonly Code[] {
  return [
    summary,
    packFunction(inputs),
    ...writeColumns(inputs),
    ...packFunctions(inputs),
    ...writeOutcomes(inputs),
  ];
}

const summary = code`/** Bits 0 and 1: for this patient (0 no, 1 unsure, 2 yes). Bit 2: settled. From bit 3: at least, plus 1. From bit 11: could be. Bit 19: a value was refused. */
function summary(
  yes: number,
  mayBe: number,
  sure: number,
  raised: number,
  could: number,
  floor: number,
): number {
  if (mayBe === 0) return 0;
  const couldBe = Math.max(raised, could, 0);
  const lowest = Math.max(floor, 0);
  const settled = sure & Number(lowest === Math.max(raised, 0)) & Number(lowest === couldBe);
  const atLeast = raised > 0 ? raised : settled - 1;
  return (1 + yes) | (settled << 2) | ((atLeast + 1) << 3) | (couldBe << 11);
}`;

/** From bounds to a packed answer, and the way of an incomplete set. */
function packFunction({ lookBacks, faults }: ModuleInputs): Code {
  return code`function packAnswers(narrow: Int32Array, wide: Int32Array, out: Int32Array, at: number): void {
  const fits = narrow[0] as number;
  const wideFits = wide[0] as number;
  const raised = narrow[1] as number;
  out[at] = summary(
    fits & 1,
    wideFits >> 1,
    wideFits & 1,
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
