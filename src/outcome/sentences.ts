import { listed } from '../protocol/words.ts';

/** Who asks for something in a sentence, with the verb. */
export type Asker =
  'the rule asks for' | 'the protocol is for' | 'the exception asks for' | 'the explanation asks for';

/** The side of a threshold on which a number lies; `or more` and `or less` include it. */
export type Side = 'above' | 'below' | 'or more' | 'or less';

/** What is asked for: shown after who asks. Null where the sentence itself says enough. */
export interface Asked {
  readonly asker: Asker;
  readonly what: string;
}

interface Subject {
  /** In plain words: `estimated mean`. */
  readonly subject: string;
  /** How the number came about, in brackets after it; empty when there is nothing to say. */
  readonly how: string;
}

const asks = (asked: Asked | null): string => (asked ? `; ${asked.asker} ${asked.what}` : '');
const bracket = (how: string): string => (how === '' ? '' : ` (${how})`);

const allOf: Readonly<Record<Side, (to: string) => string>> = {
  above: (to) => `above ${to} throughout`,
  below: (to) => `below ${to} throughout`,
  'or more': (to) => `nowhere below ${to}`,
  'or less': (to) => `nowhere above ${to}`,
};

const alwaysOn: Readonly<Record<Side, (to: string) => string>> = {
  above: (to) => `always above ${to}`,
  below: (to) => `always below ${to}`,
  'or more': (to) => `never below ${to}`,
  'or less': (to) => `never above ${to}`,
};

const asksFor: Readonly<Record<Side, (to: string) => string>> = {
  above: (to) => `more than ${to}`,
  below: (to) => `less than ${to}`,
  'or more': (to) => `${to} or more`,
  'or less': (to) => `${to} or less`,
};

/**
 * Every sentence that explains an outcome. Numbers come in as text, already rounded so that nothing seems to stand on the
 * other side of what it is compared with.
 */
export const sentences = {
  /** `heart rate 98 /min is 8 above 90; the rule asks for more than 90` */
  compared: (
    f: Subject & {
      value: string;
      difference: string;
      side: 'above' | 'below';
      to: string;
      asked: Asked | null;
    },
  ) => `${f.subject} ${f.value}${bracket(f.how)} is ${f.difference} ${f.side} ${f.to}${asks(f.asked)}`,

  /** `heart rate 95 /min is exactly 95; the rule asks for more than 95` */
  equal: (f: Subject & { value: string; to: string; asked: Asked | null }) =>
    `${f.subject} ${f.value}${bracket(f.how)} is exactly ${f.to}${asks(f.asked)}`,

  /** `systolic pressure 96 to 104 mmHg is below 110 throughout; the rule asks for less than 110` */
  range: (f: Subject & { value: string; side: Side; to: string; asked: Asked | null }) =>
    `${f.subject} ${f.value}${bracket(f.how)} is ${allOf[f.side](f.to)}${asks(f.asked)}`,

  /** `diastolic pressure 40 mmHg is below the systolic pressure, 96 to 104; the rule asks for less than that` */
  besideRange: (f: Subject & { value: string; side: Side; to: string; asked: Asked | null }) =>
    `${f.subject} ${f.value}${bracket(f.how)} is ${allOf[f.side](f.to).replace(/ throughout$/, '')}${asks(f.asked)}`,

  /** The ranges of both sides overlap, but what they share cancels. */
  coupled: (f: Subject & { value: string; side: Side; to: string; asked: Asked | null }) =>
    `${f.subject} ${f.value}${bracket(f.how)} is ${alwaysOn[f.side](f.to)}, whatever the values are inside their ranges${asks(f.asked)}`,

  /** `minutes since the last dose never is above every number; the rule asks for 60 or more` */
  never: (f: Subject & { asked: Asked | null }) =>
    `${f.subject} never${bracket(f.how)} is above every number${asks(f.asked)}`,

  /** `consciousness: newly confused; the rule asks for newly confused or unresponsive` */
  choice: (f: { subject: string; values: string; how: string; asked: Asked | null }) =>
    `${f.subject}: ${f.values}${bracket(f.how)}${asks(f.asked)}`,

  known: (f: { subject: string; known: boolean }) =>
    f.known ? `${f.subject} is known` : `${f.subject} is not known`,
  unobtainable: (f: { subject: string; unobtainable: boolean; because: string | null }) =>
    f.unobtainable
      ? `${f.subject} was tried and could not be obtained${f.because === null ? '' : ` (${f.because})`}`
      : `nobody reported that ${f.subject} could not be obtained`,

  rule: (f: { title: string; state: 'met' | 'not met' }) => `"${f.title}" is ${f.state}`,
  ruleCounts: (f: { title: string }) => `"${f.title}" counts: nobody has answered what could take it back`,

  counted: (f: { count: number; of: number; holds: boolean; asked: Asked | null }) =>
    f.holds
      ? `${f.count} of ${f.of} criteria hold${asks(f.asked)}`
      : `at most ${f.count} of ${f.of} criteria can hold${asks(f.asked)}`,

  curveWithoutValue: (f: { subject: string; of: string; value: string; from: string; to: string }) =>
    `${f.subject} has no value for a ${f.of} of ${f.value} (the curve runs from ${f.from} to ${f.to})`,
  lookBackWithoutValue: (f: {
    subject: string;
    count: number;
    of: string;
    over: string;
    where: boolean;
    earlier: boolean;
  }) => {
    const values =
      f.count === 1 ? `${f.earlier ? 'an earlier' : 'a'} value` : `two ${f.earlier ? 'earlier ' : ''}values`;
    const where = f.where ? ', taken as its condition asks' : '';
    return `${f.subject} has no value: it needs ${values} of ${f.of} from the last ${f.over}${where}`;
  },

  measureNotReliable: (f: { subject: string; because: string }) =>
    `${f.subject} is not reliable here (${f.because})`,
  notKnown: (f: { subject: string; asked: Asked | null }) => `${f.subject} is not known${asks(f.asked)}`,
} as const;

/** What is asked for of a number: `more than 90`, `14 or more`. */
export const askedNumber = (side: Side, to: string): string => asksFor[side](to);

/** What is asked for of a choice: `alert or newly confused`; its opposite is `anything but alert`. */
export function askedChoice(titles: readonly string[], several: boolean, wanted: boolean): string {
  const words = choiceList(titles, 'or');
  if (!several) return wanted ? words : `anything but ${words}`;
  if (!wanted) return titles.length === 1 ? `no ${words}` : `none of ${words}`;
  return titles.length === 1 ? words : `at least one of ${words}`;
}

/** Titles of choices in a list; apart from each other where one of them is itself a list. */
export const choiceList = (titles: readonly string[], and: 'and' | 'or'): string =>
  titles.length > 1 && titles.some((title) => /,| or | and /.test(title))
    ? titles.join(' / ')
    : listed(titles, and);

/** The words around numbers inside the brackets that say how a number came about. */
export const hows = {
  notTaken: 'not taken',
  notObtained: 'could not be obtained',
  declined: 'declined',
  refused: 'refused',
  takenAt: (time: string) => `taken ${time}`,
  assumed: 'not stated, counted so',
  theRest: (sum: string) => `${sum}; the rest 0`,
  readAt: (of: string) => `read at ${of}`,
  gives: (of: string, points: string) => `${of} gives ${points}`,
  noPoints: 'no part gives points',
  here: (of: string) => `here: ${of}`,
  oneOf: (of: readonly string[]) => `one of: ${of.join('; ')}`,
  highest: (of: string, over: string) => `the highest ${of} of the last ${over}`,
  lowest: (of: string, over: string) => `the lowest ${of} of the last ${over}`,
  earliest: (of: string, over: string) => `the earliest ${of} of the last ${over}`,
  latest: (of: string, over: string) => `the latest ${of} of the last ${over}`,
  average: (of: string, over: string, sets: string) => `the average ${of} of ${sets} in the last ${over}`,
  change: (of: string, over: string) => `the latest less the earliest ${of} of the last ${over}`,
  count: (of: string, over: string) => `counted over the last ${over}: ${of}`,
  since: (of: string, over: string) => `looked for over the last ${over}: ${of}`,
  held: (over: string) => `without a break, looked for over the last ${over}`,
} as const;
