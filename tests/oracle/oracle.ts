import { compare, minus, never, over, plus, read, show, times, work, type Fraction } from './fraction.ts';
import { duration, readSeries, word, type Plain, type Slot, type Value } from './series.ts';

/** Null: nobody can know, because a number has no value. */
type Truth = boolean | null;
/** One completion: what each slot and each measure comes to. */
type Row = Map<string, Value>;
/** What a condition reads: the present, or one set. A rule is asked to be met, or else not to be. */
type View = { slot(name: string): Slot; worth(name: string): Value; rule(name: string, met: boolean): Truth };
type Rule = Plain & { rule: string; when: Plain; unless?: Rule; explained_by?: Rule; level?: string };

const not = (one: Truth): Truth => (one === null ? null : !one);
const some = (truths: readonly Truth[], count = 1, open = truths.filter((one) => one !== false)): Truth =>
  open.filter(Boolean).length >= count || (open.length >= count ? null : false);
const all = (truths: readonly Truth[]): Truth => some(truths, truths.length);
/** What is the same in all completions; null when they differ. */
const always = (truths: Truth[]): Truth => (new Set(truths).size === 1 ? (truths[0] ?? null) : null);
const valueIn = (row: Row, key: string): Value => row.get(key) ?? null;
const number = (value: Value): Fraction | null => (value && 'd' in value ? value : null);
const quantity = (view: View, what: unknown): Fraction | null =>
  /^-?\d/.test(word(what)) ? read(what) : number(view.worth(word(what)));
const sides = new Map(Object.entries({ below: [-1], at_most: [-1, 0], above: [1], at_least: [0, 1] }));

function compared(view: View, name: string, how: string, to: unknown): Truth {
  if (how === 'known' || how === 'unobtainable') return view.slot(name)[how] === (word(to) === 'yes');
  const [value, side] = [view.worth(name), sides.get(how)];
  const [a, b] = side ? [number(value), quantity(view, to)] : [];
  if (side) return a && b ? side.includes(Math.sign(compare(a, b))) : null;
  const [right, ends] = [[to].flat(), ['at_least', 'at_most']];
  if (how === 'between') return all(ends.map((end, index) => compared(view, name, end, right[index])));
  return !/^(is|one_of)$/.test(how) || right.some((one) => (value as string[]).includes(word(one)));
}

function truth(condition: Plain, view: View, met = true): Truth {
  const each = (what: unknown, asked = met) => (what as Plain[]).map((part) => truth(part, view, asked));
  const parts = Object.entries(condition).map(([key, what]): Truth => {
    if (key === 'all') return all(each(what));
    if (key === 'any') return some(each(what));
    if (key === 'none') return not(some(each(what, !met)));
    if (key === 'rule') return view.rule(word(what), met);
    const { count, of, ...asked } = what as Plain;
    if (of) return some(each(of), Number(count));
    return all(Object.entries(asked).map(([how, to]) => compared(view, key, how, to)));
  });
  return all(parts);
}

const lookBacks = 'highest lowest average earliest latest change count minutes_since held'.split(' ');
/** What a look back makes of the values of its members, which are in order of time. */
function lookedBack(kind: string, values: Fraction[]): Fraction | null {
  const [first, last, sorted] = [values[0], values.at(-1), values.toSorted(compare)];
  if (kind === 'count') return read(values.length);
  if (!first || !last || (kind === 'change' && values.length === 1)) return null;
  if (kind === 'average') return over(values.reduce(plus), read(values.length));
  const ends = { highest: sorted.at(-1), lowest: sorted[0], earliest: first, latest: last };
  return kind === 'change' ? minus(last, first) : (ends[kind as keyof typeof ends] ?? null);
}

function onCurve({ of, points, beyond }: Plain, view: View): Fraction | null {
  const [at, line] = [quantity(view, of), (points as unknown[][]).map((point) => point.map(read))];
  const [x1, y1] = line.findLast(([x]) => at && x && compare(x, at) <= 0) ?? [];
  const [x2, y2] = line.find(([x]) => at && x && compare(x, at) >= 0) ?? [];
  if (!at || !x1 || !y1 || !x2 || !y2) return beyond === 'hold' ? (y1 ?? y2 ?? null) : null;
  return x1 === x2 ? y1 : plus(y1, times(over(minus(y2, y1), minus(x2, x1)), minus(at, x1)));
}

/** The points that one part of a score may give: of a number without a value, those of any band. */
function pointsOf(view: View, name: string, part: Plain | Plain[]): Fraction[] {
  if (!Array.isArray(part)) return [read(part[word(view.worth(name))] ?? 0)];
  const reaches = (band: Plain) => all(Object.keys(band).map((how) => compared(view, name, how, band[how])));
  return (view.worth(name) ? part.filter(reaches).slice(0, 1) : part).map((band) => read(band.points));
}

/** Everything that a measure may be in one completion: more than one where nobody can know which. */
function worths(measure: Plain, view: View, known: (name: string) => boolean): readonly Value[] {
  const { formula, curve, score, choose, first_known: first = [] } = measure as Record<string, Plain[]>;
  if (formula !== undefined) return [work(word(formula), (name) => number(view.worth(name)))];
  if (curve) return [onCurve(curve as unknown as Plain, view)];
  const parts = Object.entries(score ?? {}).map(([name, part]) => pointsOf(view, name, part));
  const added = (sums: Fraction[], part: Fraction[]) =>
    part.flatMap((one) => sums.map((sum) => plus(sum, one)));
  if (score) return parts.reduce(added, [read(0)]);
  const holds = (choose ?? []).map(({ when = {} }) => truth(when as Plain, view));
  const may = (_: unknown, index: number) => index <= holds.indexOf(true) && holds[index] !== false;
  if (choose) return choose.filter(may).map(({ use }) => quantity(view, use));
  const [names, is] = [first.map(word), first.map(word).find(known)];
  const values = names.map((name) => view.worth(name)).filter((value) => value !== null);
  return is ? [view.worth(is)] : values.length ? values : [null];
}

/** A protocol as it stands in its file. */
export type Protocol = Readonly<Record<string, Readonly<Record<string, Plain>>>>;
/** The judge: what the laws say of a set, found by looking at every completion of what is missing or a range. */
export function judge(protocol: Protocol, levels: readonly string[], set: unknown) {
  const { observations = {}, standing = {}, limits = {}, measures = {} } = protocol;
  const [scope, rules] = [protocol.applies_when ?? {}, Object.values(protocol.rules ?? {}) as Rule[]];
  const entries = new Map(Object.entries({ ...observations.declares }) as [string, Plain][]);
  for (const name in standing) entries.set(name, { ...entries.get(name), ...standing[name], standing: true });
  const words = (...what: unknown[]): string[] => JSON.stringify(what).match(/[a-z]\w*/g) ?? [];
  const seen = (...what: unknown[]): string[] => words(what).filter((name) => entries.has(name));
  const scoped = words(scope).filter((name) => !words(observations.helps, standing).includes(name));
  const needs = new Set([...words(observations.needs), ...scoped]);
  const { at, taken, present, ...series } = readSeries(set as Plain, entries, needs);
  const own = (name: string, index: number): Slot => series.own[index]?.get(name) as Slot;
  const moment = (index = -1): number => taken[index] ?? at;
  const minutes = (from: number, to: number): Fraction => over(read(to - from), read(60_000));
  const count = (measure: Plain) => (measure.present_set === 'left_out' ? present : taken.length);
  const windowOf = (measure: Plain): number[] =>
    [...taken.keys()].slice(0, count(measure)).filter((index) => moment(index) > at - duration(measure.over));

  /** All completions, and what everything comes to in them; earlier values stand in or, when wide, are missing. */
  function complete(wide: boolean, before = new Map<string, boolean>()) {
    const slotsNow = new Map([...entries.keys()].map((name) => [name, series.now(name, wide)]));
    const now = (name: string): Slot => slotsNow.get(name) as Slot;
    const slots = seen(scope, measures, rules).map(now);
    for (const measure of Object.values(measures).filter((each) => 'over' in each))
      for (const index of windowOf(measure)) slots.push(...seen(measure).map((name) => own(name, index)));
    // Completions of one group differ only in what cannot be told now.
    let groups: Row[][] = [[new Map()]];
    const grow = (key: string, values: (row: Row) => readonly Value[]): void => {
      const split = (row: Row, [first = null, ...more] = values(row)): Row[] =>
        more.map((value) => new Map(row).set(key, value)).concat(row.set(key, first));
      groups = groups.map((rows) => rows.flatMap((row) => (row.has(key) ? row : split(row))));
    };
    for (const { key, values } of slots.filter(({ beyond }) => !beyond)) grow(key, () => values);
    groups = groups.flat().map((row) => [row]);
    for (const { key, values } of slots.filter(({ beyond }) => beyond)) grow(key, () => values);

    const knowing = new Map(before);
    const known = (name: string) => (entries.has(name) ? now(name).known : knowing.get(name) !== false);
    const viewOf = (row: Row, lifted = false, slot = now): View => ({
      slot,
      worth: (name) => {
        const limit = series.limit(name) ?? limits[name]?.value;
        return limit === undefined ? valueIn(row, name in measures ? name : slot(name).key) : read(limit);
      },
      rule: (name, met) => stands(rules.find(({ rule }) => rule === name) as Rule, row, lifted && met),
    });
    /** How a rule stands in one completion. Lifted: only a certain exception holds it back. */
    const stands = (rule: Rule, row: Row, lifted = false): Truth => {
      const back = lifted ? excepted.includes(rule) : truth(rule.unless?.when ?? { any: [] }, viewOf(row));
      return back === true ? false : all([truth(rule.when, viewOf(row, lifted)), not(back)]);
    };
    const lookBack = (kind: string, measure: Plain, row: Row): Fraction | null => {
      const { where = {}, held = {}, longest_gap: gap = '1000 y' } = measure as Record<string, Plain>;
      const setView = (index: number): View => viewOf(row, false, (name) => own(name, index));
      const inside = windowOf(measure).filter((index) => truth(where, setView(index)));
      if (kind === 'held') {
        const far = (from: number, to = from): boolean => moment(to) - moment(from) > duration(gap);
        const holds = inside.map((index) => truth(held, setView(index)));
        const ended = inside.findLastIndex((from, place) => !holds[place] || far(from, inside[place + 1]));
        const run = inside.slice(ended + 1);
        return run.at(-1) === present ? minutes(moment(run[0]), moment(present)) : read(0);
      }
      const name = word(measure[kind]);
      const lacks = (index: number) => index === present && needs.has(name) && !own(name, index).known;
      const worth = (index: number) => valueIn(row, (lacks(index) ? now(name) : own(name, index)).key);
      const members = inside.filter(
        (index) => (lacks(index) || own(name, index).known) && word(worth(index)) !== 'no',
      );
      if (kind === 'minutes_since') return members.length ? minutes(moment(members.at(-1)), at) : never;
      return lookedBack(kind, members.map(worth) as Fraction[]);
    };
    const settle = (name: string): void => {
      const measure = measures[name];
      if (!measure) return;
      words(measure).forEach(settle);
      const kind = lookBacks.find((each) => each in measure);
      grow(name, (row) => {
        const values = kind ? [lookBack(kind, measure, row)] : worths(measure, viewOf(row), known);
        if (values.length < 2) return values;
        return [...new Map(values.map((value) => [value && show(value as Fraction), value])).values()];
      });
      const sure = groups.flat().every((row) => row.get(name));
      const how = { ...measure, not_reliable_when: null };
      const reads = words(how).filter((each) => each in measures || entries.has(each));
      const told = measure.first_known ? reads.some(known) : reads.every(known) && (sure || !measure.curve);
      knowing.set(name, before.get(name) ?? (kind ? sure : told));
    };
    Object.keys(measures).forEach(settle);

    const rows = groups.flat();
    const condition = (what: Plain = { any: [] }) => always(rows.map((row) => truth(what, viewOf(row))));
    const excepted: Rule[] = rules.filter(({ unless }) => condition(unless?.when));
    const ask = (rule: Rule) => {
      const lifted = groups.map((group) => group.every((row) => stands(rule, row, true)));
      const [counts, could] = [lifted.every(Boolean), lifted.some(Boolean)];
      const met = always(rows.map((row) => stands(rule, row)));
      return { met, counts, could, explained: condition(rule.explained_by?.when) };
    };
    const hull = (name: string): { low: string; high: string } | null => {
      const found = rows.flatMap((row) => number(valueIn(row, name)) ?? []);
      const end = (sign: number) => show(found.reduce((a, b) => (sign * compare(b, a) > 0 ? b : a)));
      return found.length ? { low: end(-1), high: end(1) } : null;
    };
    return { ask, hull, knowing, applies: condition(scope), size: rows.length };
  }

  const narrow = complete(false);
  const keys = (wide: boolean) => [...entries.keys()].map((name) => series.now(name, wide).key).join();
  const wide = keys(true) === keys(false) ? narrow : complete(true, narrow.knowing);
  const rank = (level?: string): number => levels.indexOf(level ?? '');
  const verdicts: Record<string, { state: string; counts: boolean; explained: boolean }> = {};
  let [raised, could, floor] = [0, 0, 0];
  for (const rule of rules) {
    const [near, far] = [narrow.ask(rule), wide.ask(rule)];
    const [full, lower] = [rank(rule.level), rank(rule.explained_by?.level ?? rule.level)];
    if (near.counts) raised = Math.max(raised, near.explained ? lower : full);
    if (far.could) could = Math.max(could, far.explained ? lower : full);
    if (far.met) floor = Math.max(floor, far.explained === false ? full : lower);
    const state = near.met ? 'met' : far.met === false ? 'not_met' : 'undecided';
    verdicts[rule.rule] = { state, counts: near.counts, explained: near.explained === true };
  }
  const settled = wide.applies === true && floor === raised && could <= raised;
  const at_least = raised > 0 || settled ? levels[raised] : null;
  const applies = narrow.applies ? 'yes' : wide.applies === false ? 'no' : 'unsure';
  const level = applies === 'no' ? null : { at_least, could_be: levels[Math.max(could, raised)], settled };
  const measured = Object.fromEntries(Object.keys(measures).map((name) => [name, narrow.hull(name)]));
  return { applies, level, rules: verdicts, measures: measured, completions: wide.size };
}
