import type { Level, Observation, Rule } from '../../protocol/protocol.ts';
import { listed, plainWords } from '../../protocol/words.ts';
import type { Finding, FindingKind, WhyOpen } from './finding.ts';

const quoted = (text: string): string => `"${text}"`;
const titles = (rules: readonly Rule[]): string =>
  listed([...new Set(rules.map(({ title }) => quoted(title)))]);
const titleOf = (level: Level | undefined): string => quoted(level?.title ?? '');

/** Every sentence about what was found, for a nurse to judge. */
export const sentences = {
  rule_never_met: (rule: Rule): string =>
    `The rule ${quoted(rule.title)} is never met: no set of a patient for whom this protocol is meets it.`,
  rules_always_together: (rule: Rule, other: Rule): string =>
    `The rules ${quoted(rule.title)} and ${quoted(other.title)} are always met together: no set meets one of them without the other.`,
  rule_inside_another: (inner: Rule, outer: Rule, higher: boolean): string =>
    `Every set that meets ${quoted(inner.title)} also meets ${quoted(outer.title)}${
      higher
        ? ', which calls for less: the one is a step up from the other.'
        : inner.level === null
          ? '.'
          : ', which calls for as much or more: the first one alone never decides the level.'
    }`,
  level_never_reached: (levels: readonly Level[], level: number, calling: readonly Rule[]): string => {
    const title = titleOf(levels[level]);
    if (level === 0)
      return `No set ever settles at the lowest level, ${title}: for every patient something stays open or calls for more.`;
    return calling.length === 0
      ? `No rule of this protocol calls for the level ${title}.`
      : `The level ${title} is never the answer, although ${titles(calling)} ${calling.length === 1 ? 'calls' : 'call'} for it: whenever that holds, another rule calls for more, or it never holds.`;
  },
  threshold_changes_nothing: (asked: string): string =>
    `${asked} changes nothing: for every set, each rule and the level come out the same without it.`,
  band_changes_nothing: (measure: string, at: string): string =>
    `In the score ${quoted(plainWords(measure))}, the cut point ${at} changes nothing: the points are the same on both sides of it.`,
  cliff: (
    rule: Rule,
    observations: readonly Observation[],
    from: Level | undefined,
    to: Level | undefined,
  ): string =>
    `One step of ${listed(
      observations.map(({ title }) => title),
      'or',
    )} moves the level from ${titleOf(from)} straight to ${titleOf(to)}, where the rule ${quoted(rule.title)} no longer calls for it.`,
  advice_excluded: (first: string, second: string, rules: readonly Rule[]): string =>
    `${quoted(plainWords(first))} and ${quoted(plainWords(second))} exclude each other, and one set is advised both, by ${titles(rules)}.`,
  nothing_said: (part: string): string =>
    `In the part ${quoted(plainWords(part))}, of which the protocol says that something must be said, some sets are answered by no rule at all.`,
  ordinary_not_settled: (rule: Rule): string =>
    `A set that this protocol calls ordinary does not settle at the lowest level: the rule ${quoted(rule.title)} holds, or could hold.`,
  ordinary_for_nobody: (): string =>
    'No set with the ordinary values is of a patient for whom this protocol is, so nothing could be asked of ordinary sets.',
} as const;

/** What kind of thing was asked, as a heading. */
export const headings: Readonly<Record<FindingKind, string>> = {
  rule_never_met: 'Rules that are never met',
  rules_always_together: 'Rules that are always met together',
  rule_inside_another: 'Rules that are met only where another one is',
  level_never_reached: 'Levels that are never reached',
  threshold_changes_nothing: 'Thresholds that change nothing',
  cliff: 'Cliffs: one step of one number, two levels or more',
  nothing_said: 'Parts in which nothing is said',
  advice_excluded: 'Advice that excludes other advice given at once',
  ordinary_not_settled: 'Ordinary sets that do not settle at the lowest level',
};

/** Why a question stays open. */
export const openSentences: Readonly<Record<WhyOpen, string>> = {
  earlier_sets:
    'Not settled: it takes earlier sets, and no case shows it. A case in which it happens settles it.',
  too_large: 'Not settled: it has more parts than can be held at once, so nobody has looked at all of them.',
};

/** What a finding is worth, and what it is not. */
export const scope =
  'True of the rules as written, at the limits of the file, not of patients. Every set counts in which each observation has one value, or none.';

/** How the file answers a finding; empty where it needs no answer. */
export const answerInYaml = ({ name, needsAnswer }: Pick<Finding, 'name' | 'needsAnswer'>): string =>
  needsAnswer ? `  - { finding: ${JSON.stringify(name)}, accepted: … }\n` : '';
