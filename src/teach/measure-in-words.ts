import { choiceTitle, titleOf } from '../bedside/words.ts';
import { quantityWords } from '../protocol/checks/in-words.ts';
import type { Measure, Operand, Protocol, ScorePart } from '../protocol/protocol.ts';

/** A number that rules read, as a handout tells how it is worked out. */
export interface MeasureWords {
  readonly title: string;
  readonly meaning: string | null;
  /** How it is worked out; empty for a look back and a choice between numbers, which their meaning tells. */
  readonly lines: readonly string[];
}

/** `(systolic pressure + 2 * diastolic pressure) / 3`; `respiratory rate: at most 8: 3, up to 11: 1, …`. */
export function measureInWords({ title, meaning, how, unit }: Measure, protocol: Protocol): MeasureWords {
  switch (how.kind) {
    case 'formula': {
      const words = how.text.replaceAll(/[a-z][a-z0-9_]*/g, (name) => titleOf(name, protocol));
      return { title, meaning, lines: [words] };
    }
    case 'curve': {
      const own = protocol.observations.get('name' in how.of ? how.of.name : '')?.unit ?? null;
      const points = how.points.map(
        ({ at, value }) => `${quantityWords(at, own)}: ${quantityWords(value, unit)}`,
      );
      return { title, meaning, lines: [`by ${operandTitle(how.of, protocol)}: ${points.join(', ')}`] };
    }
    case 'score':
      return { title, meaning, lines: how.parts.map((part) => partInWords(part, protocol)) };
    default:
      return { title, meaning, lines: [] };
  }
}

const operandTitle = (operand: Operand, protocol: Protocol): string =>
  operand.kind === 'number' ? quantityWords(operand.value, operand.unit) : titleOf(operand.name, protocol);

/** The bands of a part in order: each reaches from the end of the one before it. */
function partInWords(part: ScorePart, protocol: Protocol): string {
  if (part.kind === 'choices') {
    const entry = protocol.observations.get(part.observation);
    const points = [...part.points].map(([choice, count]) => `${choiceTitle(choice, entry)}: ${count}`);
    return `${titleOf(part.observation, protocol)}: ${points.join(', ')}`;
  }
  const bands = part.bands.map(({ to, included, points }, index) => {
    if (!to) return `above: ${points}`;
    const start = included ? (index === 0 ? 'at most' : 'up to') : 'below';
    return `${start} ${quantityWords(to.value, null)}: ${points}`;
  });
  return `${operandTitle(part.of, protocol)}: ${bands.join(', ')}`;
}
