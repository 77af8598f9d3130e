import { asRules, saidInWords, sayable, type CaseCard } from '../../../src/index.ts';
import type { PageLessons } from './messages.ts';

/** Cases that are drilled together. */
export interface DeckChoice {
  /** `all`; `level 3`; `rule fast_rate`. */
  readonly id: string;
  readonly title: string;
  readonly names: readonly string[];
}

export interface DeckGroup {
  readonly heading: string;
  readonly decks: readonly DeckChoice[];
}

/** All decks that have a case in them: by what the rules say, and by the rules that a case meets. */
export function decksOf({ cards, ladder, rules }: PageLessons, withAll: boolean): readonly DeckGroup[] {
  const used = withAll ? cards : cards.filter(({ teaches }) => teaches);
  const deck = (id: string, title: string, isIn: (card: CaseCard) => boolean): DeckChoice => ({
    id,
    title,
    names: used.filter(isIn).map(({ name }) => name),
  });
  const groups: DeckGroup[] = [
    { heading: 'Everything', decks: [deck('all', withAll ? 'All cases' : 'All teaching cases', () => true)] },
    {
      heading: 'By what your ward’s rule says',
      decks: sayable(ladder).map((said) =>
        deck(`level ${said}`, saidInWords(said, ladder), (card) => asRules(card.rules) === said),
      ),
    },
    {
      heading: 'By a rule that is met',
      decks: rules.map(({ rule, title }) => deck(`rule ${rule}`, title, ({ met }) => met.includes(rule))),
    },
  ];
  return groups
    .map(({ heading, decks }) => ({ heading, decks: decks.filter(({ names }) => names.length > 0) }))
    .filter(({ decks }) => decks.length > 0);
}

/** `12 cases`; `1 case`. */
export const casesInWords = (count: number): string => `${count} ${count === 1 ? 'case' : 'cases'}`;
