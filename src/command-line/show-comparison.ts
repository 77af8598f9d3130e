import type {
  ChangedLevel,
  ChangedRule,
  ChangedStand,
  ChangedWords,
  Comparison,
  OtherLevels,
  ComparedSide,
  Witness,
} from '../review/compare/comparison.ts';
import {
  groundInWords,
  notWhole,
  othersInWords,
  regionLines,
  ruleIsWords,
} from '../review/compare/comparison-in-words.ts';
import { shortDigest } from './short-digest.ts';
import { plainText, wrap } from './wrap.ts';

interface Shown {
  readonly width: number;
}

/** A comparison as plain words, wrapped to the terminal. */
export function showComparison(comparison: Comparison, { width }: Shown): string {
  const lines: string[] = [];
  const say = (text: string, first = ''): void => void lines.push(...wrap(text, width, first));
  const heading = (text: string): void => void lines.push('', plainText(text));
  say(sideWords(comparison.before), 'before: ');
  say(sideWords(comparison.after), 'after:  ');
  lines.push('');
  say(comparison.says);
  if (!comparison.levels_whole) say(notWhole);
  for (const each of comparison.levels) sayLevel(each, heading, say);
  sayOthers(comparison.other_levels, heading, say);
  for (const { protocol, levels, levels_whole: whole, other_levels: others } of comparison.by_protocol) {
    heading(
      `${protocol} BY ITSELF: ${levels.length === 0 ? 'no complete set gets another level from it' : 'sets that get another level from it'}`,
    );
    if (!whole) say(notWhole);
    for (const each of levels) sayLevel(each, heading, say);
    sayOthers(others, heading, say);
  }
  for (const each of comparison.rules) sayRule(each, heading, say);
  if (comparison.renamed.length > 0) {
    heading('RENAMED, and asking the same');
    for (const { protocol, from, to } of comparison.renamed) say(`${protocol}: ${from} is now ${to}`, '  - ');
  }
  if (comparison.limits.length > 0) {
    heading('LIMITS');
    for (const { limit, before, after } of comparison.limits)
      say(`${limit}: ${before ?? 'not there'} before; ${after ?? 'gone'} now`, '  - ');
  }
  sayWords(comparison.words, heading, say);
  heading(`CASES: ${comparison.cases.length} of ${comparison.cases_read} come out otherwise`);
  for (const each of comparison.cases) {
    say(
      `${each.case}: ${each.before === each.after ? each.after : `${each.before} before, ${each.after} now`}`,
      '  - ',
    );
    for (const rule of each.rules) say(rule, '      ');
  }
  heading('WHAT THIS IS ABOUT');
  for (const each of comparison.over) say(each, '  - ');
  if (comparison.not_settled.length > 0) {
    heading('NOT SETTLED');
    for (const each of comparison.not_settled) say(each, '  - ');
  }
  lines.push('');
  say(comparison.caution);
  return `${lines.join('\n')}\n`;
}

type Heading = (text: string) => void;
type Say = (text: string, first?: string) => void;

const sideWords = ({ title, name, edition, digest }: ComparedSide): string =>
  `${title} (${name}), edition ${edition}, ${shortDigest(digest)}`;

function sayLevel(level: ChangedLevel, heading: Heading, say: Say): void {
  heading(`${directions[level.direction]}: "${level.before}" becomes "${level.after}"`);
  sayRegions(level, say);
  for (const each of level.because) say(each, '  because: ');
  for (const each of level.course) say(each, '  in a series: ');
}

/** So many of them are printed; the rest are counted. */
const mostPrinted = 6;

function sayOthers(others: OtherLevels | null, heading: Heading, say: Say): void {
  for (const [key, title] of [
    ['complete', 'OTHER CHANGES OF LEVEL'],
    ['incomplete', 'WHILE SOMETHING IS MISSING'],
  ] as const) {
    const all = others?.[key] ?? [];
    if (all.length === 0) continue;
    heading(title);
    say(othersInWords[key]);
    for (const { direction, before, after, witness } of all.slice(0, mostPrinted)) {
      say(`${directions[direction]}: "${before}" becomes "${after}"`, '  - ');
      say(witness.in_words, '    for example: ');
    }
    if (all.length > mostPrinted)
      say(`and ${all.length - mostPrinted} more, which --json and --html tell`, '  - ');
  }
  if (others?.whole === true) say(othersInWords.whole);
}

const directions = { lower: 'LOWER', higher: 'HIGHER', otherwise: 'OTHERWISE' } as const;

function sayRule(rule: ChangedRule, heading: Heading, say: Say): void {
  heading(`RULE ${rule.rule} ("${rule.title}"): ${ruleIsWords(rule)}`);
  for (const each of rule.differences) say(each, '  - ');
  for (const stand of rule.stands) {
    say(`${stand.before} before, ${stand.after} now`, '  ');
    sayRegions(stand, say);
  }
}

function sayRegions(of: (ChangedLevel | ChangedStand) & { readonly witness: Witness }, say: Say): void {
  say(groundInWords(of.ground), '    ');
  for (const each of regionLines(of)) say(each, '    - ');
  const { in_words: words, before, after } = of.witness;
  say(`${words}: ${before === after ? after : `${before} before, ${after} now`}`, '    for example: ');
}

const kinds = { words: 'WORDS', advice: 'ADVICE', response: 'HOW A LEVEL IS ANSWERED' } as const;

function sayWords(words: readonly ChangedWords[], heading: Heading, say: Say): void {
  for (const kind of ['response', 'advice', 'words'] as const) {
    const own = words.filter((each) => each.kind === kind);
    if (own.length === 0) continue;
    heading(`${kinds[kind]}: changed, with no other outcome`);
    for (const { where, before, after } of own) {
      say(where, '  - ');
      say(before ?? 'nothing', '      before: ');
      say(after ?? 'nothing', '      after:  ');
    }
  }
}
