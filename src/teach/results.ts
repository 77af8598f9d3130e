import { verdicts, type Verdict } from './judge.ts';

/** One answer of a learner, as it is kept and exported. It holds no words that the learner wrote. */
export interface Answered {
  /** RFC 3339. */
  readonly at: string;
  readonly protocol: string;
  readonly edition: number;
  readonly case: string;
  /** In words, as the ladder has them. */
  readonly said: string;
  readonly ruleSays: string;
  /** Where what the rule says stands on the ladder, lowest 0; −1 without a level so far, −2 for another patient. */
  readonly rank: number;
  readonly verdict: Verdict;
  /** 1 the first time in its deck, then 2 and 3. */
  readonly showing: number;
  /** How many of the observations that the case gives had been shown, and how many it gives. */
  readonly seen: number;
  readonly given: number;
  /** What output and vessels are doing, in words; empty where nothing was said. */
  readonly outputAndVessels: string;
  readonly caseSays: string;
}

/** How many answers stand how beside the rules. The four add up to all. */
export type Counts = Readonly<Record<Verdict, number>> & { readonly answers: number };

export interface Results extends Counts {
  /** By what the rule says, the highest level first. */
  readonly byLevel: readonly (Counts & { readonly ruleSays: string })[];
}

/** `resultsOf([]).answers` is 0. */
export function resultsOf(answers: readonly Answered[]): Results {
  const levels = new Map<string, { rank: number; answers: Answered[] }>();
  for (const each of answers) {
    const level = levels.get(each.ruleSays) ?? { rank: each.rank, answers: [] };
    level.answers.push(each);
    levels.set(each.ruleSays, level);
  }
  const ordered = [...levels].toSorted(([, left], [, right]) => right.rank - left.rank);
  return {
    ...countsOf(answers),
    byLevel: ordered.map(([ruleSays, level]) => ({ ruleSays, ...countsOf(level.answers) })),
  };
}

function countsOf(answers: readonly Answered[]): Counts {
  const count = (verdict: Verdict): number => answers.filter((each) => each.verdict === verdict).length;
  return {
    answers: answers.length,
    ...(Object.fromEntries(verdicts.map((verdict) => [verdict, count(verdict)])) as Record<Verdict, number>),
  };
}
