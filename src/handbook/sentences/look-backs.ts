import type { LookBack, LookBackKind } from '../../protocol/protocol.ts';
import { between, cutAt } from './apart.ts';
import { readCondition, sayCondition } from './conditions.ts';
import { readTime, sayTime } from './numbers.ts';
import { plain, type Sentence } from './sentence.ts';
import { readObservation, sayThing, type Speaker } from './speaker.ts';

const starts: Readonly<Record<Exclude<LookBackKind, 'held'>, string>> = {
  highest: 'the highest value of ',
  lowest: 'the lowest value of ',
  average: 'the average value of ',
  earliest: 'the earliest value of ',
  latest: 'the latest value of ',
  change: 'the latest less the earliest value of ',
  count: 'the number of sets with a value of ',
  minutes_since: 'the minutes since the last set with a value of ',
};
const asked = 'yes as ';
const window = ' over the last ';
const presents = { included: ', the present set included', left_out: ', the present set left out' } as const;
const among = ', among the sets for which ';
const heldFor =
  'the minutes for which it has held without a break up to the present set, looked for over the last ';
const gap = ' with no gap above ';
const that = ', that ';

/** `the highest value of the systolic pressure over the last 4 h, the present set included`. */
export function sayLookBack(back: LookBack, speaker: Speaker): Sentence {
  if (back.kind === 'held') return sayHeld(back, speaker);
  const { kind, observation, over, presentSet, where } = back;
  const name = observation ?? '';
  const isQuestion = speaker.observation(name).kind === 'yes_no';
  const start = isQuestion ? starts[kind].replace('a value of ', asked) : starts[kind];
  const text = `${start}${sayThing(name, speaker)}${window}${sayTime(over)}${presents[presentSet]}`;
  if (!where) return plain(text);
  const clause = sayCondition(where, speaker);
  return { text: `${text}${among}${clause.text}`, of: clause.of };
}

function sayHeld({ condition, over, longestGap }: LookBack, speaker: Speaker): Sentence {
  if (!condition) throw new Error('what held has no condition');
  const clause = sayCondition(condition, speaker);
  const gaps = longestGap === null ? '' : `${gap}${sayTime(longestGap)}`;
  return { text: `${heldFor}${sayTime(over)}${gaps}${that}${clause.text}`, of: clause.of };
}

export function readLookBack(clause: Sentence, speaker: Speaker): LookBack | null {
  const { text, of } = clause;
  if (text.startsWith(heldFor)) return readHeld(clause, speaker);
  const [start, rest] = cutAt(text, window) ?? ['', ''];
  const looked = readLookedAt(start, speaker);
  const [time, condition] = cutAt(rest, among) ?? [rest, null];
  const where = condition === null ? null : readCondition({ text: condition, of }, speaker);
  const presentSet = (['included', 'left_out'] as const).find((each) => time.endsWith(presents[each]));
  if (!looked || !presentSet || (condition !== null && !where)) return null;
  const over = readTime(time.slice(0, -presents[presentSet].length));
  return over === null ? null : { ...looked, condition: null, where, over, presentSet, longestGap: null };
}

function readLookedAt(
  words: string,
  speaker: Speaker,
): { readonly kind: LookBackKind; readonly observation: string } | null {
  for (const [kind, start] of Object.entries(starts) as [LookBackKind, string][]) {
    for (const said of new Set([start, start.replace('a value of ', asked)])) {
      const observation = readObservation(between(words, said) ?? '', speaker);
      if (observation) return { kind, observation: observation.name };
    }
  }
  return null;
}

function readHeld({ text, of }: Sentence, speaker: Speaker): LookBack | null {
  const [times, words] = cutAt(text.slice(heldFor.length), that) ?? ['', ''];
  const [overWords, gapWords] = cutAt(times, gap) ?? [times, null];
  const condition = readCondition({ text: words, of }, speaker);
  const over = readTime(overWords);
  const longestGap = gapWords === null ? null : readTime(gapWords);
  if (!condition || over === null || (gapWords !== null && longestGap === null)) return null;
  return {
    kind: 'held',
    observation: null,
    condition,
    where: null,
    over,
    presentSet: 'included',
    longestGap,
  };
}
