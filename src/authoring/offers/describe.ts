import Fraction from 'fraction.js';
import { quantityWords } from '../../protocol/checks/in-words.ts';
import type { Level } from '../../protocol/protocol.ts';
import { listed } from '../../protocol/words.ts';
import type { Band, ObservationEntry } from '../../vocabulary/observation.ts';
import type { Known, KnownLimit, KnownMeasure, KnownRule } from '../known/known.ts';
import { entriesOf, textsOf, textUnder, under } from '../sketch/sketch.ts';
import { conditionInWords } from './condition-in-words.ts';

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const sentence = (words: string): string => (/[.!?]$/.test(words) ? capital(words) : `${capital(words)}.`);
const present = (lines: readonly (string | null)[]): string[] =>
  lines.filter((line) => line !== null && line !== '') as string[];

/** What an observation is: title, unit and step, ranges, choices, how long it holds. */
export function describeObservation(entry: ObservationEntry): string[] {
  return present([
    sentence(`${entry.title}${kindWords(entry)}`),
    entry.meaning,
    ranges(entry),
    entry.kind === 'choice' || entry.kind === 'several'
      ? sentence(`choices: ${entry.choices.map(({ choice }) => choice).join(', ')}`)
      : null,
    entry.standing ? standing(entry) : null,
  ]);
}

function kindWords({ kind, unit, stepsPerUnit }: ObservationEntry): string {
  switch (kind) {
    case 'yes_no':
      return ': yes or no';
    case 'several':
      return ': any of several choices';
    case 'choice':
      return ': one of several choices';
    default: {
      if (unit?.word === 'y') return ', in y, mo, wk or d';
      const step = quantityWords(new Fraction(1).div(stepsPerUnit), null);
      return unit ? `, in ${unit.word}, in steps of ${step}` : `, a plain number in steps of ${step}`;
    }
  }
}

function ranges(entry: ObservationEntry): string | null {
  if (entry.kind !== 'number') return null;
  const possible = `Possible: ${bands(entry.possible, entry)}`;
  return entry.plausible.length === 0
    ? `${possible}.`
    : `${possible}; questioned outside ${bands(entry.plausible, entry)}.`;
}

function bands(of: readonly Band[], { unit, stepsPerUnit }: ObservationEntry): string {
  const value = (steps: number): string => quantityWords(new Fraction(steps).div(stepsPerUnit), null);
  const last = of.at(-1);
  if (!last) return 'anything';
  const range = `${value(last.low)} to ${quantityWords(new Fraction(last.high).div(stepsPerUnit), unit)}`;
  return of.length === 1 ? range : `${range} in adults, by age below that`;
}

function standing({ setBy, ifNotStated, stepsPerUnit, unit }: ObservationEntry): string {
  const counts =
    typeof ifNotStated === 'number'
      ? quantityWords(new Fraction(ifNotStated).div(stepsPerUnit), unit)
      : ifNotStated;
  return [
    'A standing fact: it holds until it is changed',
    setBy === null ? '' : `; set by: ${setBy}`,
    counts === null ? '' : `; it counts as ${counts} while nobody has stated it`,
    '.',
  ].join('');
}

/** A limit: its number, inside which bounds it may be changed, and by whom. */
export function describeLimit({ title, value, unit, between, setBy }: KnownLimit): string[] {
  const suffix = unit === '' ? '' : ` ${unit}`;
  const bounds =
    between.length === 2 ? `It may be changed from ${between.join(' to ')}${suffix}` : 'It is not changed';
  const by =
    between.length === 2 && setBy !== '' ? ` by: ${setBy}` : between.length === 2 ? ' by nobody named' : '';
  return [
    sentence(title),
    sentence(value === '' ? 'No value yet' : `The limit is ${value}${suffix}`),
    `${bounds}${by}.`,
  ];
}

/** A measure: how it is worked out, its unit, what it tells. */
export function describeMeasure(measure: KnownMeasure): string[] {
  const unit = measure.unit === '' ? '' : `, in ${measure.unit}`;
  return present([sentence(measure.title), sentence(`${howInWords(measure)}${unit}`), measure.meaning]);
}

function howInWords({ how, part }: KnownMeasure): string {
  const value = under(part, how);
  const over = textUnder(part, 'over');
  switch (how) {
    case '':
      return 'nothing says yet how it is worked out';
    case 'formula':
      return `formula: ${textUnder(part, 'formula')}`;
    case 'curve':
      return `a curve read at ${textUnder(value, 'of')}`;
    case 'score':
      return `points for ${listed(entriesOf(value).map(({ key }) => key.text))}`;
    case 'choose':
      return 'the first of several whose condition holds';
    case 'first_known':
      return `the first that is known of ${listed(textsOf(value))}`;
    case 'held':
      return `minutes for which a condition has held, over ${over}`;
    default:
      return `${how.replaceAll('_', ' ')} of ${textUnder(part, how)}, over ${over}`;
  }
}

/** A level: what it means, whom to tell and how soon, when to look again. */
export function describeLevel(level: Level, levels: readonly Level[]): string[] {
  const rank = levels.indexOf(level) + 1;
  const tell = level.tell.map(({ who, from, to }) =>
    from === null && to === null ? who : `${who} (${from ?? ''} to ${to ?? ''})`,
  );
  return present([
    sentence(`${level.title}: level ${rank} of ${levels.length}, lowest first`),
    level.says,
    tell.length === 0 ? null : sentence(`tell: ${tell.join(', ')}`),
    level.respond === null ? null : `At the bedside within ${level.respond}.`,
    level.reassess === null ? null : `Reassess within ${level.reassess}.`,
  ]);
}

/** A rule: what it says, the level it calls for, when it is met. */
export function describeRule({ title, level, when, says }: KnownRule, known: Known): string[] {
  const condition = conditionInWords(when, known);
  const levelTitle = known.levels.find(({ name }) => name === level)?.title ?? level;
  return present([
    sentence(title),
    level === '' ? 'It calls for no level.' : sentence(`calls for: ${levelTitle}`),
    condition === '' ? null : sentence(`met when ${condition}`),
    says === '' ? null : says,
  ]);
}
