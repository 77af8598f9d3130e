import { error } from '../entry.ts';
import { quoted } from '../visible.ts';

type Expected = { expected: string };
/** A part of a file in words: `"edition"`, `rule "low_pressure"`. */
type Placed = { place: string };
type Counted = Placed & { count: number };

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const entries = (count: number): string => (count === 1 ? '1 entry' : `${count} entries`);
const characters = (count: number): string => (count === 1 ? '1 character' : `${count} characters`);
const expected = (f: Expected): string => f.expected;

/** Problems of the shape of a file: which keys, which kind of value, how many. */
export const shapeWording = {
  wrong_type: error(
    (f: Placed & Expected & { written: string; belongs: string }) =>
      `${capital(f.place)} is ${f.written}; here belongs ${f.belongs}.`,
    expected,
  ),
  value_missing: error((f: Placed & Expected) => `${capital(f.place)} has no value.`, expected),
  key_unknown: error(
    (f: Placed & { key: string; allowed: readonly string[] }) =>
      `${quoted(f.key)} cannot stand in ${f.place}.`,
    (f) => (f.allowed.length === 1 ? `only ${f.allowed[0]}` : `one of ${f.allowed.join(', ')}`),
  ),
  key_missing: error(
    (f: Placed & Expected & { key: string }) => `${quoted(f.key)} is missing from ${f.place}.`,
    expected,
  ),
  key_not_formed: error(
    (f: Expected & { key: string }) => `${quoted(f.key)} is not a name that can stand here.`,
    expected,
  ),
  word_unknown: error(
    (f: Placed & Expected & { written: string }) =>
      `${capital(f.place)} is ${f.written}, which is not one of the words for it.`,
    expected,
  ),
  name_not_formed: error(
    (f: Placed & Expected & { written: string }) =>
      `${capital(f.place)} is ${f.written}, which is not written as a name.`,
    expected,
  ),
  text_not_formed: error(
    (f: Placed & Expected & { written: string }) =>
      `${capital(f.place)} is ${f.written}, which is not the way it is written.`,
    expected,
  ),
  text_without_words: error((f: Placed & Expected) => `${capital(f.place)} has no words.`, expected),
  text_too_long: error(
    (f: Counted & { most: number }) =>
      `${capital(f.place)} has ${characters(f.count)}; it can have ${f.most}.`,
    (f) => `at most ${characters(f.most)}`,
  ),
  too_few: error(
    (f: Counted & { least: number }) => `${capital(f.place)} has ${entries(f.count)}; it needs ${f.least}.`,
    (f) => `at least ${entries(f.least)}`,
  ),
  too_many: error(
    (f: Counted & { most: number }) => `${capital(f.place)} has ${entries(f.count)}; it can have ${f.most}.`,
    (f) => `at most ${entries(f.most)}`,
  ),
  number_too_low: error(
    (f: Placed & { written: string; least: number }) =>
      `${capital(f.place)} is ${f.written}; the lowest that can stand here is ${f.least}.`,
    (f) => `${f.least} or more`,
  ),
  number_too_high: error(
    (f: Placed & { written: string; most: number }) =>
      `${capital(f.place)} is ${f.written}; the highest that can stand here is ${f.most}.`,
    (f) => `${f.most} or less`,
  ),
} as const;
