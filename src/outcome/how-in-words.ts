import type { LookBack, Measure, MeasureHow, ScorePart } from '../protocol/protocol.ts';
import { choiceValue } from './choice-in-words.ts';
import { same } from './exact.ts';
import { formulaWriter } from './formula-in-words.ts';
import { hows } from './sentences.ts';
import { durationInWords } from './time-in-words.ts';
import type { View } from './view.ts';
import type { Wording } from './wording.ts';
import { pointsReader } from './points.ts';

type Words = (view: View) => string;

/** How a measure came about, one level deep; each measure is put into words once in a view. */
export function howWriter(wording: Wording): (measure: string) => Words {
  const known = new Map<string, Words>();
  return (name) => {
    const before = known.get(name);
    if (before) return before;
    const measure = wording.protocol.measures.get(name);
    const made = measure ? remembered(measure, writer(measure, wording)) : (): string => '';
    known.set(name, made);
    return made;
  };
}

function remembered({ name }: Measure, words: Words): Words {
  return (view) => {
    const before = view.hows.get(name);
    if (before !== undefined) return before;
    const made = words(view);
    view.hows.set(name, made);
    return made;
  };
}

function writer({ how, name }: Measure, wording: Wording): Words {
  const { amounts, numbers } = wording;
  switch (how.kind) {
    case 'formula':
      return formulaWriter(how.formula, amounts, numbers);
    case 'curve': {
      const at = numbers.withUnit(how.of);
      return (view) => hows.readAt(at(view));
    }
    case 'score':
      return scoreWriter(how.parts, wording);
    case 'choose':
      return chooseWriter(how.entries, wording);
    case 'first_known':
      return firstKnownWriter(name, how.of, wording);
    default:
      return lookBackWriter(how, name, wording);
  }
}

/** The parts that gave points, or may have. */
function scoreWriter(parts: readonly ScorePart[], wording: Wording): Words {
  const each = parts.map((part) => ({ points: pointsReader(part, wording), of: partWriter(part, wording) }));
  return (view) => {
    const gave = each.flatMap(({ points, of }) => {
      const { low, high } = points(view);
      if (low === 0 && high === 0) return [];
      return [hows.gives(of(view), low === high ? String(low) : `${low} to ${high}`)];
    });
    if (gave.length > 0) return gave.join(', ');
    return each.length === 1 && each[0] ? hows.gives(each[0].of(view), '0') : hows.noPoints;
  };
}

function partWriter(part: ScorePart, { numbers, protocol, choices }: Wording): Words {
  if (part.kind === 'bands') return numbers.withUnit(part.of);
  const observation = protocol.observations.get(part.observation);
  if (!observation) return () => part.observation;
  const places = choices(part.observation);
  return (view) => {
    const { values, how } = choiceValue(observation, places, view);
    return `${observation.title}: ${values}${how === '' ? '' : `, ${how},`}`;
  };
}

/** The entry that was chosen, or those that still may be. */
function chooseWriter(
  entries: Extract<MeasureHow, { kind: 'choose' }>['entries'],
  { conditions, numbers }: Wording,
): Words {
  const each = entries.map(({ when, use }) => ({
    when: when && conditions.of(when),
    use: numbers.named(use),
  }));
  return (view) => {
    const reached: string[] = [];
    for (const { when, use } of each) {
      if (when && when.possible(view.result) === 0) continue;
      reached.push(use(view));
      if (!when || when.certain(view.result) !== 0) break;
    }
    return reached.length === 1 ? hows.here(reached[0] ?? '') : hows.oneOf(reached);
  };
}

/** The entry that was used: the first that is not plainly unknown, where its value is the measure's; else all that may be. */
function firstKnownWriter(
  measure: string,
  of: Extract<MeasureHow, { kind: 'first_known' }>['of'],
  { numbers, amounts, place }: Wording,
): Words {
  const own = amounts.of({ kind: 'measure', name: measure }).amount;
  const each = of.map((operand) => ({
    text: numbers.named(operand),
    amount: amounts.of(operand).amount,
    known: operand.kind === 'observation' ? place(`${operand.name}:known`) : null,
  }));
  return (view) => {
    const left = each.filter(({ known }) => known === null || view.result[known] !== 0);
    const [first] = left;
    const value = own(view);
    const used = first?.amount(view);
    if (first && used && same(used.low, value.low) && same(used.high, value.high))
      return hows.here(first.text(view));
    return hows.oneOf((left.length > 0 ? left : each).map(({ text }) => text(view)));
  };
}

function lookBackWriter(how: LookBack, name: string, { protocol, place }: Wording): Words {
  const of = protocol.observations.get(how.observation ?? '')?.title ?? '';
  const over = durationInWords(how.over);
  switch (how.kind) {
    case 'average': {
      const count = place(`${name}:count`);
      return ({ result }) => hows.average(of, over, sets(result[count] as number));
    }
    case 'minutes_since':
      return () => hows.since(of, over);
    case 'held':
      return () => hows.held(over);
    default: {
      const text = hows[how.kind](of, over);
      return () => text;
    }
  }
}

const sets = (count: number): string => (count === 1 ? '1 set' : `${count} sets`);
