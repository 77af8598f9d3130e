import type { Condition, Operand, ScorePart } from '../../protocol/protocol.ts';
import type { Unit } from '../../vocabulary/units.ts';
import type { MeasureLogic } from './measures.ts';
import type { RuleLogic } from './rules.ts';
import type { Speaker } from './speaker.ts';

/**
 * A condition as sentences carry it: without its places in the file, and each plain number in the unit of what it meets, which is what
 * such a number means. Nothing else is changed.
 */
export function unplaced(condition: Condition, speaker: Speaker): Condition {
  if ('of' in condition)
    return { ...condition, of: condition.of.map((each) => unplaced(each, speaker)), path: [] };
  if (condition.kind !== 'compare') return { ...condition, path: [] };
  const to = withUnit(condition.to, speaker.unitOf(condition.subject.name));
  return { ...condition, to, path: [] };
}

const withUnit = <Of extends Operand>(operand: Of, unit: Unit | null): Of =>
  operand.kind === 'number' && operand.unit === null ? { ...operand, unit } : operand;

const orNull = (condition: Condition | null, speaker: Speaker): Condition | null =>
  condition && unplaced(condition, speaker);

/** A rule in the same way. */
export const unplacedRule = (rule: RuleLogic, speaker: Speaker): RuleLogic => ({
  level: rule.level,
  when: unplaced(rule.when, speaker),
  unless: orNull(rule.unless, speaker),
  explainedBy: rule.explainedBy && {
    when: unplaced(rule.explainedBy.when, speaker),
    level: rule.explainedBy.level,
  },
  notReliableWhen: orNull(rule.notReliableWhen, speaker),
});

/** A measure in the same way; of a formula, not the text that it was written in but what was read from it. */
export function unplacedMeasure(measure: MeasureLogic, speaker: Speaker): MeasureLogic {
  const { name, unit, how, notReliableWhen } = measure;
  return {
    name,
    unit,
    how: unplacedHow(how, unit, speaker),
    notReliableWhen: orNull(notReliableWhen, speaker),
  };
}

function unplacedHow(how: MeasureLogic['how'], unit: Unit | null, speaker: Speaker): MeasureLogic['how'] {
  switch (how.kind) {
    case 'formula':
      return { kind: 'formula', formula: how.formula };
    case 'curve':
      return how;
    case 'score':
      return { kind: 'score', parts: how.parts.map((part) => unplacedPart(part, speaker)) };
    case 'choose': {
      const entries = how.entries.map(({ when, use }) => ({
        when: orNull(when, speaker),
        use: withUnit(use, unit),
      }));
      return { kind: 'choose', entries };
    }
    case 'first_known':
      return { kind: 'first_known', of: how.of.map((each) => withUnit(each, unit)) };
    default:
      return { ...how, condition: orNull(how.condition, speaker), where: orNull(how.where, speaker) };
  }
}

function unplacedPart(part: ScorePart, speaker: Speaker): ScorePart {
  if (part.kind === 'choices') return { ...part, path: [] };
  const unit = part.of.kind === 'number' ? part.of.unit : speaker.unitOf(part.of.name);
  const bands = part.bands.map((band) => ({ ...band, to: band.to && withUnit(band.to, unit) }));
  return { ...part, bands, path: [] };
}
