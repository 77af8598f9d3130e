import { listed } from '../../protocol/words.ts';
import type { Asking } from './asking.ts';
import { stands, type Atom } from './atoms.ts';
import { atomInWords } from './atom-in-words.ts';
import type { RuleHere, RulePair } from './rule-pairs.ts';

/** What is different about a rule, in words: `it asked for heart rate above 90 /min; it asks for heart rate above 95 /min`. */
export function ruleDifferences(pair: RulePair, asking: Asking): string[] {
  const { before, after } = pair;
  if (!before) return ['there was no such rule before'];
  if (!after) return ['the rule is gone'];
  const [first, second] = [before, after].map((here) => asking.open.ofRule(here)) as [
    readonly Atom[],
    readonly Atom[],
  ];
  const gone = first.filter((atom) => !second.includes(atom));
  const come = second.filter((atom) => !first.includes(atom));
  const words = (atoms: readonly Atom[]): string =>
    listed([...new Set(atoms.map((atom) => atomInWords(atom, stands.holds, asking)))]);
  const comparisons = [
    ...(gone.length > 0 ? [`before, it asked for ${words(gone)}`] : []),
    ...(come.length > 0 ? [`now, it asks for ${words(come)}`] : []),
  ];
  const levels = levelDifference(before, after);
  if (comparisons.length > 0 || levels.length > 0) return [...comparisons, ...levels];
  return ['the same comparisons are put together otherwise'];
}

function levelDifference(before: RuleHere, after: RuleHere): string[] {
  const title = ({ member, rule }: RuleHere, explained: boolean): string => {
    const level = explained ? (rule.explainedBy?.level ?? null) : rule.level;
    return level === null ? 'no level' : `"${member.protocol.ladder.levels[level]?.title ?? ''}"`;
  };
  return [false, true].flatMap((explained) => {
    const [was, is] = [title(before, explained), title(after, explained)];
    const when = explained ? ', when it is explained' : '';
    return was === is ? [] : [`before, it called for ${was}${when}; now, for ${is}`];
  });
}

/** The two in one line, with the rule's name. */
export const ruleInWords = (pair: RulePair, asking: Asking): string => {
  const here = (pair.after ?? pair.before) as RuleHere;
  return `rule ${here.rule.name} ("${here.rule.title}"): ${ruleDifferences(pair, asking).join('; ')}`;
};
