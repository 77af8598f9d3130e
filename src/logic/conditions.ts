import type { Comparison, Condition, NumberComparison } from '../protocol/protocol.ts';
import { difference } from './arithmetic.ts';
import type { Context, Rails } from './context.ts';
import { literalIn } from './literal.ts';
import { over1, type Ratio } from './linear.ts';
import { stepName } from './logic.ts';
import { inQuantity } from './measures/formula.ts';
import { joined, settledPresence, type NumberForm, type Presence } from './number-form.ts';
import { and, either, lessOrSame, not, or, sum, variable, type Logical } from './operators.ts';

/** The rails of a rule, where a condition names it. */
export type RuleRails = (rule: string) => Rails;

/** Writes a condition: each part becomes steps under its path. */
export function conditionRails(condition: Condition, context: Context, ruleRails: RuleRails): Rails {
  const of = (parts: readonly Condition[]): Rails[] => parts.map((part) => context.rails(part));
  switch (condition.kind) {
    case 'all':
      return named(condition, eachRail(of(condition.of), and), context);
    case 'any':
      return named(condition, eachRail(of(condition.of), or), context);
    case 'none':
      return named(condition, negated(eachRail(of(condition.of), or)), context);
    case 'at_least_of': {
      const atLeast = (...parts: Logical[]): Logical =>
        lessOrSame(condition.count, sum(parts.map((part) => either(part, 1, 0))));
      return named(condition, eachRail(of(condition.of), atLeast), context);
    }
    case 'rule':
      return ruleRails(condition.rule);
    default:
      return named(condition, comparisonRails(condition, context), context);
  }
}

function eachRail(parts: readonly Rails[], join: (...parts: Logical[]) => Logical): Rails {
  const rail = (key: Exclude<keyof Rails, 'presence'>): Logical => join(...parts.map((part) => part[key]));
  return {
    certain: rail('certain'),
    possible: rail('possible'),
    counts: rail('counts'),
    could: rail('could'),
    couldNot: not(join(...parts.map((part) => not(part.couldNot)))),
    presence: joined(parts.map(({ presence }) => presence)),
  };
}

/** A negation: what is certain of it is that the other is not possible. */
function negated(rails: Rails): Rails {
  return {
    certain: not(rails.possible),
    possible: not(rails.certain),
    counts: not(rails.possible),
    could: rails.couldNot,
    couldNot: rails.could,
    presence: rails.presence,
  };
}

/** Each rail as a step under the condition's path; rails that are the same share one. */
function named(condition: Condition, rails: Rails, { writer }: Context): Rails {
  const name = stepName(condition.path);
  const written = new Map<string, Logical>();
  const define = (key: string, is: Logical): Logical => {
    const text = JSON.stringify(is);
    const known = written.get(text);
    if (known !== undefined) return known;
    const step = writer.define(`${name}:${key}`, is);
    written.set(text, step);
    return step;
  };
  return {
    certain: define('certain', rails.certain),
    possible: define('possible', rails.possible),
    counts: define('counts', rails.counts),
    could: define('could', rails.could),
    couldNot: define('could_not', rails.couldNot),
    presence: rails.presence,
  };
}

function comparisonRails(comparison: Comparison, context: Context): Rails {
  switch (comparison.kind) {
    case 'compare':
      return numberRails(comparison, context);
    case 'one_of':
      return choiceRails(comparison.observation, comparison.choices, context);
    default: {
      const flag = variable(`${comparison.observation}:${comparison.kind}`);
      const fact = comparison.is ? flag : not(flag);
      return {
        certain: fact,
        possible: fact,
        counts: fact,
        could: fact,
        couldNot: not(fact),
        presence: settledPresence,
      };
    }
  }
}

function choiceRails(observation: string, choices: readonly string[], context: Context): Rails {
  const entry = context.protocol.observations.get(observation);
  const may = (choice: string): Logical => variable(`${observation}:may:${choice}`);
  const possible = or(...choices.map(may));
  const others = (entry?.choices ?? [])
    .map(({ choice }) => choice)
    .filter((choice) => !choices.includes(choice));
  const certain =
    entry?.kind === 'several'
      ? or(...choices.map((choice) => variable(`${observation}:sure:${choice}`)))
      : not(or(...others.map(may)));
  return fromTruth(certain, possible, context.presenceOf(observation));
}

function numberRails(comparison: NumberComparison, context: Context): Rails {
  const owner = stepName(comparison.path);
  const subject = context.form(comparison.subject);
  const to = rightSide(comparison, subject, context);
  const [high, low]: [Ratio, Ratio] =
    comparison.how === 'above' || comparison.how === 'at_least'
      ? [subject.ratio, to.ratio]
      : [to.ratio, subject.ratio];
  const strict = comparison.how === 'above' || comparison.how === 'below';
  const gap = difference(high, low, context.arithmetic, owner);
  const { certain, possible } = context.arithmetic.atLeastZero(gap, strict, owner);
  if (certain === true || possible === false) context.fixed.push({ comparison, holds: certain === true });
  return fromTruth(certain, possible, joined([subject.presence, to.presence]));
}

function rightSide({ to }: NumberComparison, subject: NumberForm, context: Context): NumberForm {
  if (to.kind === 'number') {
    return { ratio: over1(literalIn(to, subject.quantity)), quantity: 'plain', presence: settledPresence };
  }
  const form = context.form(to);
  return { ...form, ratio: inQuantity(form, subject.quantity) };
}

/**
 * The rails of one comparison from its truth over the values that its numbers can have.
 *
 * Without a value nobody knows: possible, not certain. What only helps and is missing cannot be counted on to be given,
 * unless something needed is open as well.
 */
function fromTruth(all: Logical, some: Logical, presence: Presence): Rails {
  const { sure, maybe, helpsMissing, needsOpen } = presence;
  const stuck = and(helpsMissing, not(needsOpen));
  const certain = and(sure, all);
  const never = and(sure, not(some));
  return {
    certain,
    possible: or(not(sure), some),
    counts: certain,
    could: and(maybe, some, or(not(stuck), certain)),
    couldNot: and(maybe, not(all), or(not(stuck), never)),
    presence,
  };
}
