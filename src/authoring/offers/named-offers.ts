import type { ObservationEntry } from '../../vocabulary/observation.ts';
import { sameDimension, unitByWord, units, type Dimension } from '../../vocabulary/units.ts';
import type { Known } from '../known/known.ts';
import {
  describeLevel,
  describeLimit,
  describeMeasure,
  describeObservation,
  describeRule,
} from './describe.ts';
import type { Offer } from './offer.ts';

/** Observations: those that the protocol reads first, in its own order; the others after them, where they fit. */
export function observationOffers(
  { observations, listed }: Known,
  which: 'listed' | 'not_listed' | 'all',
  fits: (entry: ObservationEntry) => boolean = () => true,
): Offer[] {
  const own = which === 'not_listed' ? [] : [...listed.keys()];
  const others = which === 'listed' ? [] : [...observations.keys()].filter((name) => !listed.has(name));
  return [...own, ...others].flatMap((name) => {
    const entry = observations.get(name);
    return entry && fits(entry) ? [observationOffer(entry)] : [];
  });
}

const observationOffer = (entry: ObservationEntry): Offer => ({
  label: entry.name,
  what: 'observation',
  says: describeObservation(entry),
  alsoCalled: [...entry.alsoCalled, entry.title],
});

export const isNumber = ({ kind }: ObservationEntry): boolean => kind === 'number';

export const measureOffers = ({ measures }: Known): Offer[] =>
  [...measures.values()].map((measure) => ({
    label: measure.name,
    what: 'measure',
    says: describeMeasure(measure),
    alsoCalled: [measure.title],
  }));

export const limitOffers = ({ limits }: Known): Offer[] =>
  [...limits.values()].map((limit) => ({
    label: limit.name,
    what: 'limit',
    says: describeLimit(limit),
    alsoCalled: [limit.title],
  }));

export const ruleOffers = (known: Known): Offer[] =>
  [...known.rules.values()].map((rule) => ({
    label: rule.name,
    what: 'rule',
    says: describeRule(rule, known),
    alsoCalled: [rule.title],
  }));

export const levelOffers = ({ levels }: Known): Offer[] =>
  levels.map((level) => ({
    label: level.name,
    what: 'level',
    says: describeLevel(level, levels),
    alsoCalled: [level.title],
  }));

/** The choices of an observation, yes and no among them. */
export function choiceOffers({ observations }: Known, name: string): Offer[] {
  const entry = observations.get(name);
  return (entry?.choices ?? []).map(({ choice, title, meaning }) => ({
    label: choice,
    what: 'choice',
    says: [`${title}.`, ...(meaning === null ? [] : [meaning])],
    alsoCalled: [title],
  }));
}

/** Names with the words that stand beside them. */
export const plainOffers = (names: ReadonlyMap<string, string>, what: Offer['what']): Offer[] =>
  [...names].map(([label, words]) => ({ label, what, says: words === '' ? [] : [words] }));

/** Names that stand for a number of this protocol: observations, measures, limits; those that measure the same. */
export function numberOffers(known: Known, dimension: Dimension | null, withLimits = true): Offer[] {
  const fits = (name: string): boolean => {
    const own = dimensionOf(name, known);
    return dimension === null || own === null || sameDimension(own, dimension);
  };
  return [
    ...(withLimits ? limitOffers(known) : []),
    ...measureOffers(known),
    ...observationOffers(known, 'listed', isNumber),
  ].filter(({ label }) => fits(label));
}

/** What a name measures; null where that is not known: of a measure without a unit, of a name that nothing is called. */
export function dimensionOf(name: string, { observations, measures, limits }: Known): Dimension | null {
  const observation = observations.get(name);
  if (observation) return observation.unit?.dimension ?? {};
  const unit = limits.get(name)?.unit ?? measures.get(name)?.unit ?? '';
  return unitByWord(unit)?.dimension ?? null;
}

const unitWords: Readonly<Record<string, string>> = {
  '/min': 'each minute',
  '/s': 'each second',
  '/h': 'each hour',
  s: 'seconds',
  ms: 'milliseconds',
  min: 'minutes',
  h: 'hours',
  d: 'days of 24 h',
  wk: 'weeks',
  mo: 'months of 30.4375 d',
  y: 'years of 365.25 d',
  '%': 'percent',
};

/** Units that measure the same as something; the one that it is written in first. All of them where that is not known. */
export function unitOffers(dimension: Dimension | null, own: string | null = null): Offer[] {
  const fitting = units.filter((unit) => dimension === null || sameDimension(unit.dimension, dimension));
  const first = fitting.filter(({ word }) => word === own);
  return [...first, ...fitting.filter(({ word }) => word !== own)].map(({ word, ucum }) => ({
    label: word,
    what: 'unit',
    says: [unitWords[word] ?? (word === ucum ? 'a unit' : `a unit; UCUM ${ucum}`)],
  }));
}

/** The units of a length of time. */
export const durationOffers = (): Offer[] => unitOffers({ time: 1 }).filter(({ label }) => label !== 'ms');
