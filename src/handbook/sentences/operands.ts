import type { Limit, NamedOperand, Operand } from '../../protocol/protocol.ts';
import type { Unit } from '../../vocabulary/units.ts';
import { between } from './apart.ts';
import { fromSteps, readNumber, sayNumber } from './numbers.ts';
import { readThing, sayThing, type Speaker } from './speaker.ts';

/** A limit with the number that it has now: `the limit “lowest acceptable mean pressure” (65 mmHg)`. */
const sayLimit = (limit: Limit, { things }: Speaker): string =>
  `the limit ${things.quoted(limit.name)} (${sayNumber(fromSteps(limit.value, limit.stepsPerUnit), limit.unit)})`;

/** What something is compared with or made of. A number without a unit of its own is said in the unit of what it meets. */
export function sayOperand(operand: Operand, unit: Unit | null, speaker: Speaker): string {
  switch (operand.kind) {
    case 'number':
      return sayNumber(operand.value, operand.unit ?? unit);
    case 'limit': {
      const limit = speaker.protocol.limits.get(operand.name);
      if (!limit) throw new Error(`no limit is called ${operand.name}`);
      return sayLimit(limit, speaker);
    }
    default:
      return sayThing(operand.name, speaker);
  }
}

export function readOperand(words: string, speaker: Speaker): Operand | null {
  const number = readNumber(words);
  if (number) return { kind: 'number', ...number };
  const limit = between(words, 'the limit ')?.replace(/ \([^()]*\)$/, '');
  return limit === undefined ? readNamed(words, speaker) : readLimit(limit, words, speaker);
}

/** A limit is read only with the number that it has. */
function readLimit(label: string, words: string, speaker: Speaker): Operand | null {
  const limit = speaker.protocol.limits.get(speaker.things.nameOf(label) ?? '');
  return limit && sayLimit(limit, speaker) === words ? { kind: 'limit', name: limit.name } : null;
}

/** An observation that is a number, or a measure. */
export function readNamed(
  words: string,
  speaker: Speaker,
): (NamedOperand & { readonly kind: 'observation' | 'measure' }) | null {
  const name = readThing(words, speaker);
  if (name === null) return null;
  if (speaker.protocol.measures.has(name)) return { kind: 'measure', name };
  return speaker.observation(name).kind === 'number' ? { kind: 'observation', name } : null;
}
