import { nearest, over, read, show, times, type Fraction } from './fraction.ts';

/** A number; the choices that are in, of a choice just one; null: no value. */
export type Value = Fraction | readonly string[] | null;
export type Plain = Readonly<Record<string, unknown>>;
/** What something can still be. One key, one value. `beyond`: measuring the needs now would not tell. */
export type Slot = { key: string; values: Value[]; known: boolean; unobtainable: boolean; beyond: boolean };

export const word = (what: unknown): string => (what === true ? 'yes' : what === false ? 'no' : String(what));
const lengths: Plain = { s: 1e3, min: 6e4, h: 36e5, d: 864e5, wk: 6048e5, mo: 26298e5, y: 315576e5 };
/** Milliseconds: `duration('4 h')` is 14,400,000. */
export const duration = (text: unknown = '0 s'): number =>
  parseFloat(word(text)) * Number(lengths[word(text).split(' ')[1] ?? '']);
const time = (text: unknown, none = 0): number => (text === undefined ? none : Date.parse(word(text)));

/** The values that are left by what is given: all, when nothing is; none, when it is impossible. */
function left({ kind, step = 1, possible, choices = ['yes', 'no'] }: Plain, given: Plain): Value[] {
  if (kind !== 'number' && 'value' in given) return [[given.value].flat().map(word)];
  const names = (choices as (string | Plain)[]).map((one) => [word(Object(one).choice ?? one)]);
  const subsets = (sets: string[][], name: string[]) => sets.flatMap((set) => [set, [...set, ...name]]);
  if (kind !== 'number') return kind === 'several' ? names.reduce(subsets, [[]]) : names;
  const steps = (what: unknown): number => nearest(over(read(what), read(step)));
  const [bottom, top] = possible as number[];
  const { value, low = value ?? bottom, high = value ?? top } = given;
  const from = 'above_device' in given ? steps(given.above_device) + 1 : steps(low);
  const to = 'below_device' in given ? steps(given.below_device) - 1 : steps(high);
  if (from < steps(bottom) || to > steps(top)) return [];
  return Array.from({ length: to - from + 1 }, (_, index) => times(read(from + index), read(step)));
}

const plain = ({ values }: Slot) => values.map((one) => (one && 'd' in one ? show(one) : word(one))).join();

/** What each observation can be in each of a patient's sets, and now. Times in milliseconds; without one, 0. */
export function readSeries(json: Plain, entries: ReadonlyMap<string, Plain>, needs: ReadonlySet<string>) {
  const { patient = {}, sets: given = [json] } = json as { patient?: Plain; sets?: Plain[] };
  const at = time(json.at, Math.max(...given.map((set) => time(set.at))));
  const moments = new Set(given.map((set) => time(set.at)).filter((moment) => moment <= at));
  const taken = [...moments].sort((a, b) => a - b);
  const during = (when: number) => given.filter((set) => time(set.at) === when).flatMap(Object.entries);
  const sets = taken.map((when): Plain => Object.fromEntries(during(when)));
  const [present, names] = [sets.length - 1, [...entries.keys()]];
  const entry = (name: string): Plain => entries.get(name) ?? {};

  const told = (name: string, index: number, what = sets[index]?.[name], key = `${index}`): Slot => {
    const parts: Plain = typeof what === 'object' && !Array.isArray(what) ? { ...what } : { value: what };
    const nothing = what === undefined || 'unobtainable' in parts || 'declined' in parts;
    const values = nothing ? [] : left(entry(name), parts);
    const [known, unobtainable] = [values.length > 0, 'unobtainable' in Object(sets[index]?.[name])];
    const open = { values: known ? values : left(entry(name), {}), unobtainable };
    return { key: `${key}:${name}`, known, ...open, beyond: !known && (index < present || !needs.has(name)) };
  };
  /** A standing fact or limit that someone has stated for this patient and that holds at a time. */
  const stated = (part: string, name: string, when: number): Plain | undefined => {
    const found = (patient[part] as Record<string, Plain> | undefined)?.[name];
    return time(found?.at, -Infinity) <= when && when < time(found?.until, Infinity) ? found : undefined;
  };
  /** What a set says by itself, or what a standing fact was at its time. */
  const holds = (name: string, index: number, when: number): Slot => {
    if (!entry(name).standing) return told(name, index);
    const latest = sets.findLastIndex((_, each) => each <= index && told(name, each).known);
    const [order, ours] = [stated('standing', name, when), told(name, latest < 0 ? index : latest)];
    const later = order ? time(order.at, -1e18) - (taken[latest] ?? -2e18) : -1;
    // Stated at one time in two ways: both are refused, and nobody can tell what holds.
    const clash = later === 0 && plain(told(name, index, order)) !== plain(ours);
    if (later >= 0) return told(name, index, clash ? { declined: 'both' } : order, 'patient');
    const { known, unobtainable, ...fact } = told(name, index, entry(name).if_not_stated, 'assumed');
    return latest >= 0 || !known ? { ...ours, unobtainable } : { ...fact, known: false, unobtainable };
  };
  const own = taken.map((when, index) => new Map(names.map((name) => [name, holds(name, index, when)])));
  /** What holds at the evaluation time. When wide, values of earlier sets count as missing. */
  const now = (name: string, wide: boolean): Slot => {
    const { standing: stands, taken_with: group = name, good_for: good } = entry(name);
    if (stands) return holds(name, present, at);
    const together = names.filter((each) => each === name || entry(each).taken_with === group);
    const says = (each: string, index: number): boolean =>
      told(each, index).known || (index === present && group !== name && each in (sets[index] ?? {}));
    const from = sets.findLastIndex((_, index) => together.some((each) => says(each, index)));
    const [found, here] = [told(name, from), told(name, present)];
    const known = found.known && at - (taken[from] ?? at) <= duration(good);
    if (known && !(wide && from < present)) return { ...found, unobtainable: here.unobtainable };
    const missing = told(name, present, { declined: 'too old' }, here.known ? 'old' : `${present}`);
    return { ...missing, known, unobtainable: here.unobtainable };
  };
  return { at, taken, present, own, now, limit: (name: string) => stated('limits', name, at)?.value };
}
