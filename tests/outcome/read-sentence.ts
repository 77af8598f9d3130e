import Fraction from 'fraction.js';

/** A number as it is shown, in years where it is an age; and how far it may have been rounded. */
export interface Shown {
  readonly value: Fraction;
  readonly rounded: Fraction;
}

type Side = 'above' | 'below' | 'nowhere below' | 'nowhere above';
type Asks = 'more than' | 'less than' | 'or more' | 'or less';

export interface ParsedNumber {
  readonly kind: 'number';
  readonly subject: string;
  /** The same twice for a number that is known. */
  readonly low: Shown;
  readonly high: Shown;
  readonly how: string;
  /** Null: exactly; undefined: a range, of which no difference is told. */
  readonly difference: Shown | null | undefined;
  readonly side: Side | null;
  /** The name in front of the number that it is compared with; null for a plain number. */
  readonly toName: string | null;
  readonly to: Shown;
  readonly asks: readonly [Asks, Shown];
}

/** A number beside another that is known only as a range. */
export interface ParsedBesideRange {
  readonly kind: 'beside a range';
  readonly subject: string;
  readonly value: readonly [low: Shown, high: Shown];
  readonly side: Side;
  readonly toName: string;
  readonly to: readonly [low: Shown, high: Shown];
  readonly asks: 'less than that' | 'more than that' | 'that or more' | 'that or less';
}

/** A sentence that explains an outcome, taken apart again. */
export type Parsed =
  | ParsedNumber
  | ParsedBesideRange
  | { readonly kind: 'choice'; readonly subject: string; readonly values: string }
  | { readonly kind: 'rule'; readonly title: string; readonly met: boolean }
  | { readonly kind: 'counted'; readonly count: number; readonly of: number; readonly holds: boolean }
  | { readonly kind: 'known'; readonly subject: string; readonly known: boolean }
  | { readonly kind: 'fact'; readonly subject: string };

const plain = String.raw`-?[0-9]+(?:\.[0-9]+)?`;
const amount = `(?:${plain} y ${plain} mo|${plain} (?:y|mo|d)(?![a-z])|${plain})`;

const compared = new RegExp(
  [
    String.raw`^(?<low>${amount})(?: to (?<high>${amount}))?(?: (?<unit>[^ ()]+))?(?: \((?<how>.*)\))? is `,
    `(?:(?<gap>${amount}) (?<side>above|below)|exactly|(?<all>above|below)(?= .* throughout; )|`,
    `(?<nowhere>nowhere above|nowhere below)) (?<to>.*?)(?: throughout)?; the rule asks for (?<asks>.*)$`,
  ].join(''),
);
const named = [
  new RegExp(String.raw`^the limit of (?<to>${amount}) \((?<name>.*?)(?:, changed for this patient)?\)$`),
  new RegExp(String.raw`^the (?<name>.*), (?<to>${amount})$`),
  new RegExp(`^(?<to>${amount})$`),
];
const asking = new RegExp(
  `^(?:(?<before>more than|less than) (?<first>${amount})|(?<second>${amount}) (?<after>or more|or less))$`,
);

const besideRange = new RegExp(
  [
    String.raw`^(?<low>${amount})(?: to (?<high>${amount}))?(?: [^ ()]+)?(?: \(.*\))? is `,
    `(?<side>above|below|nowhere above|nowhere below) the (?<name>.*), (?<from>${amount}) to (?<upTo>${amount}); `,
    `the rule asks for (?<asks>(?:less|more) than that|that or (?:less|more))$`,
  ].join(''),
);

const inYear = { y: new Fraction(1), mo: new Fraction(1, 12), d: new Fraction(4, 1461) };

/** A number, or an age in years: `15 y 11 mo`. */
function shown(text: string): Shown {
  const unit = /(?<= )(?:y|mo|d)$/.exec(text)?.[0] as keyof typeof inYear | undefined;
  const [, years, months] = /^(.*) y (.*) mo$/.exec(text) ?? [];
  const scale = unit ? inYear[unit] : new Fraction(1);
  const value =
    years === undefined
      ? new Fraction(text.split(' ')[0] ?? '').mul(scale)
      : new Fraction(years).add(new Fraction(months ?? '').div(12));
  return { value, rounded: scale.div(200) };
}

/** Takes a sentence apart; null when it is none that the catalogue can make. `titles` are what numbers and choices are called. */
export function readSentence(sentence: string, titles: readonly string[]): Parsed | null {
  const rule = /^"(?<title>.*)" is (?<state>met|not met)$/.exec(sentence)?.groups;
  if (rule) return { kind: 'rule', title: rule['title'] ?? '', met: rule['state'] === 'met' };
  const counted = /^(?<most>at most )?(?<count>[0-9]+) of (?<of>[0-9]+) criteria (?:can )?hold; /.exec(
    sentence,
  )?.groups;
  if (counted) {
    const [count, of] = [Number(counted['count']), Number(counted['of'])];
    return { kind: 'counted', count, of, holds: counted['most'] === undefined };
  }
  const fact =
    /^nobody reported that (?<subject>.*) could not be obtained$/.exec(sentence) ??
    /^(?<subject>.*) was tried and could not be obtained(?: \(.*\))?$/.exec(sentence);
  if (fact?.groups) return { kind: 'fact', subject: fact.groups['subject'] ?? '' };
  const known = /^(?<subject>.*) is (?<not>not )?known$/.exec(sentence)?.groups;
  if (known) return { kind: 'known', subject: known['subject'] ?? '', known: known['not'] === undefined };
  const starts = titles.filter(
    (title) => sentence.startsWith(`${title} `) || sentence.startsWith(`${title}: `),
  );
  const subject = starts.toSorted((left, right) => right.length - left.length)[0];
  if (subject === undefined) return null;
  const choice = /^: (?<values>.*); the rule asks for .*$/.exec(sentence.slice(subject.length))?.groups;
  if (choice) return { kind: 'choice', subject, values: choice['values'] ?? '' };
  const rest = sentence.slice(subject.length + 1);
  return readBesideRange(subject, rest) ?? readComparison(subject, rest);
}

function readBesideRange(subject: string, rest: string): ParsedBesideRange | null {
  const parts = besideRange.exec(rest)?.groups;
  if (!parts) return null;
  const { low = '', high, side, name = '', from = '', upTo = '', asks } = parts;
  return {
    kind: 'beside a range',
    subject,
    value: [shown(low), shown(high ?? low)],
    side: side as Side,
    toName: name,
    to: [shown(from), shown(upTo)],
    asks: asks as ParsedBesideRange['asks'],
  };
}

function readComparison(subject: string, rest: string): Parsed | null {
  const parts = compared.exec(rest)?.groups;
  const to = named.map((pattern) => pattern.exec(parts?.['to'] ?? '')?.groups).find((found) => found);
  const asks = asking.exec(parts?.['asks'] ?? '')?.groups;
  if (!parts || !to || !asks) return null;
  const { low = '', high, how = '', gap, side, all, nowhere } = parts;
  const isRange = all !== undefined || nowhere !== undefined;
  return {
    kind: 'number',
    subject,
    low: shown(low),
    high: shown(high ?? low),
    how,
    difference: isRange ? undefined : gap === undefined ? null : shown(gap),
    side: (side ?? all ?? nowhere ?? null) as Side | null,
    toName: to['name'] ?? null,
    to: shown(to['to'] ?? ''),
    asks: [(asks['before'] ?? asks['after']) as Asks, shown(asks['first'] ?? asks['second'] ?? '')],
  };
}

/** Whether a number is what is asked for. */
export function isAsked([asks, { value: than }]: ParsedNumber['asks'], value: Fraction): boolean {
  const order = value.compare(than);
  return { 'more than': order > 0, 'less than': order < 0, 'or more': order >= 0, 'or less': order <= 0 }[
    asks
  ];
}
