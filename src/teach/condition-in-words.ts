import { choiceTitle, stepsInWords, titleOf } from '../bedside/words.ts';
import { quantityWords } from '../protocol/checks/in-words.ts';
import type { Comparison, Condition, NumberComparison, Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';

/** A condition as people read it: one sentence, or a heading with sentences below it. */
export interface ConditionWords {
  readonly text: string;
  readonly of: readonly ConditionWords[];
}

/** `systolic pressure at most 90 mmHg (lowest acceptable systolic)`; `any of these` with what they are. */
export function conditionInWords(condition: Condition, protocol: Protocol): ConditionWords {
  switch (condition.kind) {
    case 'all':
    case 'any':
    case 'none':
    case 'at_least_of': {
      const of = condition.of.map((each) => conditionInWords(each, protocol));
      const [only] = of;
      if (only && of.length === 1 && condition.kind !== 'none') return only;
      return { text: headings[condition.kind](condition.kind === 'at_least_of' ? condition.count : 0), of };
    }
    case 'rule': {
      const rule = protocol.rules.find(({ name }) => name === condition.rule);
      return { text: `“${rule?.title ?? condition.rule}” is met`, of: [] };
    }
    default:
      return { text: comparisonInWords(condition, protocol), of: [] };
  }
}

const headings = {
  all: () => 'all of these',
  any: () => 'any of these',
  none: () => 'none of these',
  at_least_of: (count: number) => `at least ${count} of these`,
} as const;

const hows = { below: 'below', above: 'above', at_most: 'at most', at_least: 'at least' } as const;

function comparisonInWords(comparison: Comparison, protocol: Protocol): string {
  if (comparison.kind === 'compare') return numberInWords(comparison, protocol);
  const title = titleOf(comparison.observation, protocol);
  switch (comparison.kind) {
    case 'one_of': {
      const entry = protocol.observations.get(comparison.observation);
      const choices = comparison.choices.map((each) => choiceTitle(each, entry));
      return `${title}: ${listed(choices, 'or')}`;
    }
    case 'known':
      return `${title} is ${comparison.is ? 'known' : 'not known'}`;
    case 'unobtainable':
      return comparison.is
        ? `${title} was tried and could not be obtained`
        : `${title} is not one that was tried and could not be obtained`;
  }
}

function numberInWords({ subject, how, to }: NumberComparison, protocol: Protocol): string {
  const start = `${titleOf(subject.name, protocol)} ${hows[how]}`;
  if (to.kind === 'number') {
    const own = protocol.observations.get(subject.name) ?? protocol.measures.get(subject.name);
    return `${start} ${quantityWords(to.value, to.unit ?? own?.unit ?? null)}`;
  }
  const limit = to.kind === 'limit' ? protocol.limits.get(to.name) : undefined;
  const title = titleOf(to.name, protocol);
  return limit ? `${start} ${stepsInWords(limit.value, limit)} (${title})` : `${start} the ${title}`;
}
