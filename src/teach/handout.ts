import { caution } from '../outcome/caution.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Level, Protocol, Rule } from '../protocol/protocol.ts';
import type { Ward } from '../ward/ward.ts';
import { conditionInWords, type ConditionWords } from './condition-in-words.ts';
import { measureInWords, type MeasureWords } from './measure-in-words.ts';

/** What is printed to teach with: the levels and whom to call, the rules with their reasons, the sources. */
export interface Handout {
  readonly title: string;
  readonly about: string | null;
  /** `pressure_reading, edition 1`. */
  readonly edition: string;
  readonly digest: string;
  readonly owners: readonly string[];
  readonly ladder: string;
  /** Highest first. */
  readonly levels: readonly HandoutLevel[];
  /** One for a protocol; of a ward policy, one for each protocol that it reads with. */
  readonly parts: readonly HandoutPart[];
  readonly plans: readonly { readonly title: string; readonly says: string }[];
  readonly caution: string;
}

export interface HandoutLevel {
  readonly title: string;
  readonly says: string | null;
  /** With hours, where there are any: `Night doctor (20:00 to 08:00)`. */
  readonly tell: readonly string[];
  readonly respond: string | null;
  readonly reassess: string | null;
  readonly noAnswer: string | null;
  readonly stepDown: string | null;
}

export interface HandoutPart {
  readonly title: string;
  readonly edition: string;
  readonly forWhom: ConditionWords | null;
  readonly otherwise: string | null;
  /** The highest level first; those that only say come last. */
  readonly rules: readonly HandoutRule[];
  /** Numbers that are worked out, in the order of the file. */
  readonly measures: readonly MeasureWords[];
  /** Numbered from 1 in this order. */
  readonly sources: readonly string[];
}

export interface HandoutRule {
  readonly title: string;
  /** Null: it only says. */
  readonly level: string | null;
  readonly when: ConditionWords;
  readonly unless: ConditionWords | null;
  readonly explained: { readonly when: ConditionWords; readonly says: string } | null;
  readonly says: string | null;
  readonly because: string | null;
  readonly ask: readonly string[];
  /** Numbers of sources of its part. */
  readonly sources: readonly number[];
}

/** The handout of a protocol or a ward policy. */
export function handoutOf(reads: Compiled | Ward): Handout {
  const isWard = 'members' in reads;
  const { name, title, about, edition, digest, owners, ladder } = isWard ? reads : reads.protocol;
  const members = isWard ? reads.members : [reads];
  return {
    title,
    about,
    edition: `${name}, edition ${edition}`,
    digest,
    owners,
    ladder: `${ladder.title}, edition ${ladder.edition}`,
    levels: ladder.levels.map(levelOf).toReversed(),
    parts: members.map(({ protocol }) => partOf(protocol)),
    plans: isWard ? [...reads.plans.values()].map((plan) => ({ title: plan.title, says: plan.says })) : [],
    caution,
  };
}

function levelOf({ title, says, tell, respond, reassess, ifNoAnswer, stepDown }: Level): HandoutLevel {
  return {
    title,
    says,
    tell: tell.map(({ who, from, to }) => (from === null || to === null ? who : `${who} (${from} to ${to})`)),
    respond,
    reassess,
    noAnswer: ifNoAnswer ? `after ${ifNoAnswer.after}: ${ifNoAnswer.tell}` : null,
    stepDown: stepDown
      ? `${stepDown.setsInARow === 1 ? 'sets' : `${stepDown.setsInARow} sets in a row or more`} below it for at least ${stepDown.over}; agreed by: ${stepDown.agreedBy}`
      : null,
  };
}

function partOf(protocol: Protocol): HandoutPart {
  const { title, name, edition, applies, otherwise, rules, sources } = protocol;
  const cited = [...new Set(rules.flatMap((rule) => rule.sources))].filter((each) => sources.has(each));
  const inOrder = rules.toSorted((left, right) => (right.level ?? -1) - (left.level ?? -1));
  return {
    title,
    edition: `${name}, edition ${edition}`,
    forWhom: applies && conditionInWords(applies, protocol),
    otherwise,
    rules: inOrder.map((rule) => ruleOf(rule, protocol, cited)),
    measures: [...protocol.measures.values()].map((each) => measureInWords(each, protocol)),
    sources: cited.map((each) => {
      const source = sources.get(each);
      return `${source?.cite ?? each}${source?.link ? `. ${source.link}` : ''}`;
    }),
  };
}

function ruleOf(rule: Rule, protocol: Protocol, cited: readonly string[]): HandoutRule {
  const { title, level, when, unless, explainedBy, says, because, ask, sources } = rule;
  return {
    title,
    level: level === null ? null : (protocol.ladder.levels[level]?.title ?? null),
    when: conditionInWords(when, protocol),
    unless: unless && conditionInWords(unless.when, protocol),
    explained: explainedBy && {
      when: conditionInWords(explainedBy.when, protocol),
      says: explainedBy.says,
    },
    says,
    because,
    ask,
    sources: sources.map((each) => cited.indexOf(each) + 1).filter((number) => number > 0),
  };
}
