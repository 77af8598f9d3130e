import type { judge } from '../oracle/oracle.ts';
import { compare, never, over, read, type Fraction } from '../oracle/fraction.ts';
import type { KitAnswer, KitRule } from './kit.ts';
import type { Plain } from './protocols.ts';
import { helpsOf, mentionsOf, rulesReadBy } from './reading.ts';

export type Verdict = ReturnType<typeof judge>;

/** How the kit's answer stands to the judge's verdict. */
export interface Comparison {
  /** What the kit says that is not so. */
  readonly wrong: readonly string[];
  /** Rules that the kit leaves undecided although every completion decides them alike. */
  readonly looser: number;
  /** Why a difference that would be wrong is not: the bounds of one observation, read in two places, are not seen to be of one. */
  readonly excused: readonly string[];
}

interface Pair {
  readonly protocol: Plain;
  readonly levels: readonly string[];
  readonly kit: KitAnswer;
  readonly judge: Verdict;
}

const fraction = (text: string): Fraction => {
  const [n = '', d = '1'] = text.split('/');
  return n === 'never' ? never : over(read(n), read(d));
};
const same = (one: string, other: string): boolean => compare(fraction(one), fraction(other)) === 0;

/** A complete set: everything is the same, measures as exact fractions. */
function exactly({ kit, judge: verdict }: Pair): string[] {
  const said = (answer: KitAnswer | Verdict): string =>
    JSON.stringify([
      answer.applies,
      answer.level && [answer.level.at_least, answer.level.could_be, answer.level.settled],
    ]);
  const whole = said(kit) === said(verdict) ? [] : [`level: ${said(kit)}, not ${said(verdict)}`];
  const rules = Object.entries(verdict.rules).flatMap(([name, { state, counts, explained }]) => {
    const found = kit.rules[name];
    const alike = found && found.state === state && found.counts === counts && found.explained === explained;
    return alike
      ? []
      : [`${name}: ${JSON.stringify(found)}, not ${JSON.stringify({ state, counts, explained })}`];
  });
  const measures = Object.entries(verdict.measures).flatMap(([name, hull]) => {
    const found = kit.measures[name];
    const alike = hull && found ? same(hull.low, found.low) && same(hull.high, found.high) : hull === found;
    return alike ? [] : [`${name}: ${JSON.stringify(found)}, not ${JSON.stringify(hull)}`];
  });
  return [...whole, ...rules, ...measures];
}

/** Whether the kit counts a rule of which an exception is known only because every answer to what is missing gives it. */
const byElimination = ({ protocol, kit, judge: verdict }: Pair, name: string): boolean =>
  rulesReadBy(protocol, name).some((rule) => {
    const each = String(rule.rule);
    return (
      'unless' in rule && kit.rules[each]?.state === 'undecided' && verdict.rules[each]?.state === 'not_met'
    );
  });

function ruleSoundly(pair: Pair, name: string, found: KitRule | undefined): Comparison {
  const verdict = pair.judge.rules[name];
  if (!found || !verdict) return { wrong: [`${name} is not there`], looser: 0, excused: [] };
  const wrong =
    found.state !== 'undecided' && found.state !== verdict.state
      ? [`${name} is ${found.state}, not ${verdict.state}`]
      : [];
  const counts = found.counts && !verdict.counts;
  const excused = counts && byElimination(pair, name) ? [`${name}: exception by elimination`] : [];
  if (counts && !excused.length) wrong.push(`${name} counts, and should not`);
  if (found.explained && !verdict.explained) wrong.push(`${name} is explained, and is not`);
  return { wrong, looser: found.state === 'undecided' && verdict.state !== 'undecided' ? 1 : 0, excused };
}

const levelOfRule = ({ protocol, levels }: Pair, name: string): number =>
  levels.indexOf(String((protocol.rules as Plain[]).find(({ rule }) => rule === name)?.level));

/** The highest level that a rule adds only because its exception or explanation is not seen to be known. */
function unseen(pair: Pair): number {
  const names = Object.keys(pair.judge.rules).filter((name) => {
    const [found, verdict] = [pair.kit.rules[name], pair.judge.rules[name]];
    return found?.counts && verdict && (!verdict.counts || (verdict.explained && !found.explained));
  });
  return Math.max(-1, ...names.map((name) => levelOfRule(pair, name)));
}

/** Whether a rule above a level reads something that only helps in two places, where bounds can hide that it holds whatever that is. */
function readsTwice(pair: Pair, above: number): boolean {
  const helps = helpsOf(pair.protocol);
  return Object.keys(pair.judge.rules)
    .filter((name) => levelOfRule(pair, name) > above)
    .some((name) => {
      const mentions = mentionsOf(pair.protocol, name);
      return helps.some((help) => mentions.filter((each) => each === help).length > 1);
    });
}

function levelSoundly(pair: Pair): Comparison {
  const { levels, kit, judge: verdict } = pair;
  const [found, told] = [kit.level, verdict.level];
  if (!found || !told) return { wrong: [], looser: 0, excused: [] };
  const rank = (level: string | null | undefined): number => (level ? levels.indexOf(level) : -1);
  const [wrong, excused]: [string[], string[]] = [[], []];
  const report = (what: string, excuse: string | null): void =>
    void (excuse ? excused.push(excuse) : wrong.push(what));
  if (rank(found.at_least) > rank(told.at_least))
    report(
      `at least ${found.at_least}, not ${told.at_least}`,
      rank(found.at_least) <= unseen(pair) ? 'level by elimination' : null,
    );
  const twice = readsTwice(pair, rank(found.could_be)) ? 'a help read twice' : null;
  if (rank(found.could_be) < rank(told.could_be))
    report(`could be ${found.could_be}, not ${told.could_be}`, twice);
  const alike = told.settled && found.at_least === told.at_least && found.could_be === told.could_be;
  if (found.settled && !alike) report(`settled at ${found.at_least}, and is not`, twice);
  return { wrong, looser: 0, excused };
}

/** Bounds that hold in every completion, though they may be wider than they must be. */
function measuresSoundly({ kit, judge: verdict }: Pair): string[] {
  return Object.entries(verdict.measures).flatMap(([name, hull]) => {
    const found = kit.measures[name];
    if (!hull) return [];
    const inside =
      found &&
      compare(fraction(found.low), fraction(hull.low)) <= 0 &&
      compare(fraction(found.high), fraction(hull.high)) >= 0;
    return inside ? [] : [`${name}: ${JSON.stringify(found)} does not hold ${JSON.stringify(hull)}`];
  });
}

/** Compares the two: exactly on a set with one completion, else that whatever the kit says is so. */
export function compared(
  protocol: Plain,
  levels: readonly string[],
  kit: KitAnswer,
  verdict: Verdict,
): Comparison {
  const pair = { protocol, levels, kit, judge: verdict };
  if (verdict.completions === 1) return { wrong: exactly(pair), looser: 0, excused: [] };
  const rules = Object.keys(verdict.rules).map((name) => ruleSoundly(pair, name, kit.rules[name]));
  const all = [...rules, levelSoundly(pair)];
  const scope =
    kit.applies !== 'unsure' && kit.applies !== verdict.applies
      ? [`applies: ${kit.applies}, not ${verdict.applies}`]
      : [];
  return {
    wrong: [...scope, ...all.flatMap(({ wrong }) => wrong), ...measuresSoundly(pair)],
    looser: all.reduce((sum, { looser }) => sum + looser, 0),
    excused: all.flatMap(({ excused }) => excused),
  };
}
