import { readStory } from '../../cases/document-to-cases.ts';
import { partAt, type Document } from '../../document/document.ts';
import { answersOf, type LevelAnswer } from '../../outcome/answers.ts';
import { reporter } from '../../problems/problem.ts';
import { setVocabularyOf } from '../../series/set-reading.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import type { Series } from '../../series/series.ts';
import { mergeLevels } from '../../ward/merge-levels.ts';
import type { ChangedCase } from './comparison.ts';
import { levelInWords } from './levels-in-words.ts';
import type { Compared, Side } from './side.ts';

/** What one side answers to a patient. */
interface Answer {
  readonly level: LevelAnswer | null;
  /** By `protocol.rule`. */
  readonly states: ReadonlyMap<string, string>;
}

/** Everything that one side says of a series, without words. */
export function answerOf({ members }: Pick<Side, 'members'>, series: Series): Answer {
  const states = new Map<string, string>();
  const levels = members.map((member) => {
    const answers = answersOf(member, seriesToBounds(member.protocol, series));
    if (answers.applies === 'no') return null;
    for (const { rule, state, explained } of answers.rules)
      states.set(
        `${member.protocol.name}.${rule.name}`,
        explained && state !== 'not_met' ? `${state}, explained` : state,
      );
    return answers.level;
  });
  return { level: mergeLevels(levels), states };
}

/** The cases that come out otherwise, of those that both sides can read. */
export function caseChanges(
  cases: Document,
  compared: readonly [Compared, Compared],
  sides: readonly [Side, Side],
): { readonly changed: readonly ChangedCase[]; readonly read: number } {
  const { node } = partAt(cases, ['cases']);
  const items = node.kind === 'list' ? node.items : [];
  const changed: ChangedCase[] = [];
  let read = 0;
  for (const index of items.keys()) {
    const stories = compared.map((each) => storyAt(index, cases, each));
    const [first, second] = stories;
    if (!first || !second) continue;
    read += 1;
    const difference = differenceOf(
      first.name,
      answerOf(sides[0], first.series),
      answerOf(sides[1], second.series),
      sides,
    );
    if (difference) changed.push(difference);
  }
  return { changed, read };
}

function storyAt(
  index: number,
  cases: Document,
  compared: Compared,
): { name: string; series: Series } | null {
  const { node } = partAt(cases, ['cases', index]);
  if (node.kind !== 'map') return null;
  const value = (key: string) => node.entries.find((entry) => entry.key === key)?.value;
  const name = value('case');
  const story = (['given', 'series'] as const).flatMap((key) => (value(key) ? [[key, {}] as const] : []));
  const vocabulary = 'members' in compared ? compared.vocabulary : setVocabularyOf(compared.protocol);
  const { series } = readStory(Object.fromEntries(story), ['cases', index], cases, vocabulary, reporter([]));
  return series && name?.kind === 'scalar' ? { name: String(name.value), series } : null;
}

function differenceOf(
  name: string,
  before: Answer,
  after: Answer,
  [first, second]: readonly [Side, Side],
): ChangedCase | null {
  const [was, is] = [levelInWords(before.level, first.ladder), levelInWords(after.level, second.ladder)];
  const rules = [...new Set([...before.states.keys(), ...after.states.keys()])].flatMap((rule) => {
    const [one, other] = [before.states.get(rule) ?? 'not there', after.states.get(rule) ?? 'not there'];
    return one === other
      ? []
      : [`${rule}: ${one.replace('_', ' ')} before, ${other.replace('_', ' ')} after`];
  });
  return was === is && rules.length === 0 ? null : { case: name, before: was, after: is, rules };
}
