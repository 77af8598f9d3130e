import {
  afterAnswer,
  asRules,
  deckOf,
  isMissed,
  judge,
  outputAndVessels,
  saidInWords,
  type Answered,
  type Deck,
  type DrillAnswer,
  type OutputAndVessels,
  type SaidLevel,
  type Verdict,
} from '../../../src/index.ts';
import type { PageLessons } from './messages.ts';

/** One time through a deck. */
export interface Round {
  readonly title: string;
  readonly deck: Deck;
  /** How many cases the deck has. */
  readonly cases: number;
  /** How many cards have been put away. */
  readonly done: number;
  readonly answers: readonly Answered[];
}

/** What a learner says of a case. */
export interface LearnerSays {
  readonly level: SaidLevel;
  readonly output: OutputAndVessels | null;
  readonly asks: readonly string[];
  readonly ownWords: string;
  /** How many of the observations that the case gives had been shown, and how many it gives. */
  readonly seen: number;
  readonly given: number;
}

export const startRound = (title: string, names: readonly string[], seed: number): Round => ({
  title,
  deck: deckOf(names, seed),
  cases: names.length,
  done: 0,
  answers: [],
});

/** The round with the next card on top. A case that was opened alone does not come back: right after itself it would teach nothing. */
export function nextCard(round: Round): Round {
  const last = round.answers.at(-1);
  const missed = round.cases > 1 && last !== undefined && isMissed(last.verdict);
  return { ...round, done: round.done + 1, deck: afterAnswer(round.deck, missed) };
}

export const verdictOf = ({ level }: LearnerSays, { rules }: DrillAnswer): Verdict => judge(level, rules);

/** An answer as it is counted and kept. The learner's own words are not among it. */
export function answeredAs(
  says: LearnerSays,
  answer: DrillAnswer,
  lessons: Pick<PageLessons, 'name' | 'edition' | 'ladder'>,
  { at, showing }: { readonly at: string; readonly showing: number },
): Answered {
  const rule = asRules(answer.rules);
  return {
    at,
    protocol: lessons.name,
    edition: lessons.edition,
    case: answer.name,
    said: saidInWords(says.level, lessons.ladder),
    ruleSays: saidInWords(rule, lessons.ladder),
    rank: typeof rule === 'number' ? rule : rule === 'complete_the_set' ? -1 : -2,
    verdict: verdictOf(says, answer),
    showing,
    seen: says.seen,
    given: says.given,
    outputAndVessels: says.output === null ? '' : outputAndVessels[says.output],
    caseSays: answer.outputAndVessels.caseSays ?? '',
  };
}
