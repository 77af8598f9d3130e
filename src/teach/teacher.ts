import type { Course } from '../bedside/course.ts';
import { protocolReader, wardReader, type Reader } from '../bedside/reader.ts';
import type { BedsideSheet, SheetRaise } from '../bedside/sheet.ts';
import { changesInWords } from '../bedside/sheet-raises.ts';
import { changeableBy, changeableByWard } from '../bedside/changeable.ts';
import { lowersOf } from '../bedside/would-raise.ts';
import type { Document } from '../document/document.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Problem } from '../problems/problem.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { protocolsAsOne } from '../ward/as-one.ts';
import type { Ward } from '../ward/ward.ts';
import { cardOf, type CaseCard } from './case-card.ts';
import { handoutOf, type Handout } from './handout.ts';
import { outputAndVessels, ownSentences } from './output-and-vessels.ts';
import type { RulesSay } from './judge.ts';
import { caseOnMap, protocolOnMap, type MapOrWhy } from './on-the-map.ts';
import { storiesOf, type Story } from './stories.ts';
import { unfold, type Drill } from './unfold.ts';
import { rulesInWords } from './verdict-in-words.ts';

/** What the Teach room works with: the cases of a protocol or a ward policy, and what is said of each. */
export interface Teacher {
  readonly lessons: Lessons;
  readonly handout: Handout;
  /** A case before it is answered; null when there is none of this name. */
  drill(name: string): Drill | null;
  /** What is told once it is answered. */
  answer(name: string): Answer | null;
  /** What the map of a case is drawn of, or that of the protocol by itself; null when there is no case of this name. */
  map(name: string | null): MapOrWhy | null;
}

/** All that a page needs to make decks. */
export interface Lessons {
  readonly name: string;
  readonly edition: number;
  /** Titles of the levels, lowest first. */
  readonly ladder: readonly string[];
  readonly cards: readonly CaseCard[];
  /** Rules that a case meets, in the order of the file. */
  readonly rules: readonly { readonly rule: string; readonly title: string }[];
  /** What the rules ask, each question once. */
  readonly questions: readonly string[];
  /** Cases that do not come out as expected: nobody is taught from them. */
  readonly leftOut: readonly string[];
  readonly problems: readonly Problem[];
}

export interface Answer {
  readonly name: string;
  readonly sheet: BedsideSheet;
  readonly courses: readonly Course[];
  readonly rules: RulesSay;
  readonly rulesSay: string;
  /** The nearest values that would lower the level. What would raise it stands in the sheet. */
  readonly lowers: readonly SheetRaise[];
  /** What the rules that are met ask, each question once. */
  readonly asks: readonly string[];
  readonly outputAndVessels: {
    /** What the case itself says; null when it says nothing. */
    readonly caseSays: string | null;
    /** Sentences of the rules that are met. */
    readonly ownSentences: readonly string[];
  };
  readonly commonMistake: string | null;
  readonly source: string | null;
}

/** `teacherOf(compiled, document).lessons.cards.length` is how many cases can be drilled. A null document: there are no cases. */
export function teacherOf(reads: Compiled | Ward, document: Document | null): Teacher {
  const isWard = 'members' in reads;
  const protocol = isWard ? protocolsAsOne(reads) : reads.protocol;
  const reader = isWard ? wardReader(reads) : protocolReader(reads);
  const { stories, leftOut, problems } = document
    ? storiesOf(document, reads)
    : { stories: [], leftOut: [], problems: [] };
  const byName = new Map(stories.map((story) => [story.name, story]));
  const cards = new Map(stories.map((story) => [story.name, cardOf(story, reads)]));
  const members = isWard ? reads.members : [reads];
  const rules = members.flatMap((member) => rulesOf(member, isWard));
  const met = new Set([...cards.values()].flatMap((card) => card.met));
  return {
    lessons: {
      name: isWard ? reads.name : protocol.name,
      edition: isWard ? reads.edition : protocol.edition,
      ladder: protocol.ladder.levels.map(({ title }) => title),
      cards: [...cards.values()],
      rules: rules.filter(({ rule }) => met.has(rule)),
      questions: [...new Set(members.flatMap((each) => each.protocol.rules.flatMap(({ ask }) => ask)))],
      leftOut,
      problems,
    },
    handout: handoutOf(reads),
    drill: (name) => {
      const story = byName.get(name);
      return story ? unfold(story, protocol) : null;
    },
    answer: (name) => {
      const [story, card] = [byName.get(name), cards.get(name)];
      return story && card ? answerOf(story, card, { reads, protocol, reader }) : null;
    },
    map: (name) => {
      if (name === null)
        return protocolOnMap(
          reads,
          stories.flatMap((each) => {
            const card = cards.get(each.name);
            return card ? [{ ...each, rules: card.rules }] : [];
          }),
        );
      const story = byName.get(name);
      return story ? caseOnMap(reads, story.series) : null;
    },
  };
}

function rulesOf({ protocol }: Compiled, isWard: boolean): Lessons['rules'][number][] {
  return protocol.rules.map(({ name, title }) => ({
    rule: isWard ? `${protocol.name}.${name}` : name,
    title: isWard ? `${title} (${protocol.title})` : title,
  }));
}

interface Taught {
  readonly reads: Compiled | Ward;
  readonly protocol: Protocol;
  readonly reader: Reader;
}

function answerOf(story: Story, card: CaseCard, { reads, protocol, reader }: Taught): Answer | null {
  const [reading] = reader.read(story.series);
  if (!reading) return null;
  const { outcome, sheet, courses } = reading;
  const standing =
    'members' in reads ? changeableByWard(reads, story.series) : changeableBy(reads, story.series);
  const said = story.teach?.output_and_vessels;
  return {
    name: story.name,
    sheet,
    courses,
    rules: card.rules,
    rulesSay: rulesInWords(card.rules, sheet.level.ladder),
    lowers: changesInWords(lowersOf(standing), protocol),
    asks: [...new Set(outcome.advice.flatMap(({ ask }) => ask))],
    outputAndVessels: {
      caseSays: said === undefined ? null : outputAndVessels[said],
      ownSentences: ownSentences(outcome),
    },
    commonMistake: story.teach?.common_mistake ?? null,
    source: story.source,
  };
}
