/** Whole steps of a number in its unit, exact, ties away from zero: 36.65 at 10 steps per unit is 367. */
function stepsOf(value, stepsPerUnit) {
  const digits = /^(-?)(\d+)\.?(\d*)$/.exec(typeof value === 'number' ? String(value) : '');
  if (!digits) throw new Error(`${JSON.stringify(value)} is no plain number`);
  const [, minus, whole, part] = digits;
  const [by, over = 1n] = stepsPerUnit.split('/').map(BigInt);
  const unit = 10n ** BigInt(part.length) * over;
  return Number((2n * BigInt(whole + part) * by + unit) / (2n * unit)) * (minus ? -1 : 1);
}

/** What is possible at an age, `[low, high]`; where the age is null, at any. */
function possibleAt(bands, age) {
  const begins = (index) => bands[index - 1]?.age_below ?? -Infinity;
  const touched = bands.filter(
    ({ age_below: end = Infinity }, index) => !age || (age[0] < end && age[1] >= begins(index)),
  );
  return [Math.min(...touched.map(({ low }) => low)), Math.max(...touched.map(({ high }) => high))];
}

/** The ends of a number or of `{ low, high }`, in steps; null when it is not possible at this age. */
function spanOf({ observation, steps_per_unit: per, possible }, given, age) {
  const { low, high, ...more } = typeof given === 'object' ? given : { low: given, high: given };
  const [from, to] = [stepsOf(low, per), stepsOf(high, per)];
  if (Object.keys(more).length > 0 || from > to) throw new Error(`${observation}: a number, or low and high`);
  const [least, most] = possibleAt(possible, age);
  return from < least || to > most ? null : [from, to];
}

/** The choices that were given; throws at one that there is not. */
function choicesOf({ observation, kind, choices }, given) {
  const yesNo = kind === 'yes_no' && typeof given === 'boolean' ? (given ? 'yes' : 'no') : given;
  const picked = kind === 'several' ? yesNo : [yesNo];
  if (Array.isArray(picked) && picked.every((each) => choices.includes(each))) return picked;
  throw new Error(`${observation}: ${kind === 'several' ? 'a list of' : 'one of'} ${choices.join(', ')}`);
}

/** The values of a set: spans of numbers, lists of choices; null for what is refused, nothing for what is missing. */
function valuesOf(file, set) {
  const given = file.observations.filter(({ observation: name }) => {
    const nothing = set[name] === undefined || set[name] === null;
    return !nothing && !('unobtainable' in Object(set[name]) || 'declined' in Object(set[name]));
  });
  const values = new Map();
  const isAge = ({ observation }) => observation === 'age';
  for (const each of [...given.filter(isAge), ...given.filter((entry) => !isAge(entry))]) {
    const { observation: name, kind } = each;
    const age = name === 'age' ? null : (values.get('age') ?? null);
    values.set(name, kind === 'number' ? spanOf(each, set[name], age) : choicesOf(each, set[name]));
  }
  const wrong = file.contradictions.filter(({ lower, higher, scale, factor, shift, may_be_equal: same }) => {
    const [below, above] = [values.get(lower), values.get(higher)];
    const gap = below && above ? factor * above[1] + shift - scale * below[0] : 1;
    return same ? gap < 0 : gap <= 0;
  });
  for (const name of wrong.flatMap(({ lower, higher }) => [lower, higher])) values.set(name, null);
  return values;
}

/**
 * The inputs of a logic file from one set, in the units of the file, and the names of the values that were refused: they count
 * as missing. Throws at whatever it cannot read. `others` holds inputs by name: those of look backs, for which one set is not
 * enough, and those of limits that somebody has changed.
 */
export function setToInputs(file, set, others = {}) {
  const inputs = Object.fromEntries(
    file.inputs.map((each) => [each.input, others[each.input] ?? each.otherwise]),
  );
  const names = new Set([...file.observations.map(({ observation }) => observation), ...Object.keys(inputs)]);
  const unknown = [...Object.keys(set), ...Object.keys(others)].filter((name) => !names.has(name));
  const lacking = Object.keys(inputs).filter((name) => inputs[name] === undefined);
  if (unknown.length + lacking.length > 0)
    throw new Error(`unknown: ${unknown.join(', ')}; needed beside the set: ${lacking.join(', ')}`);
  const values = valuesOf(file, set);
  for (const { input, of, name, part, choice } of file.inputs) {
    if (of !== 'observation') continue;
    const { possible = [], assumed } = file.observations.find(({ observation }) => observation === name);
    const value = values.get(name);
    const refused = value === null;
    const range = value ?? possibleAt(possible, values.get('age') ?? null);
    const isOpen = !value && (refused || assumed === undefined);
    if (part === 'unobtainable') inputs[input] = set[name]?.unobtainable ? 1 : 0;
    else if (part === 'low' && (value || isOpen)) inputs[input] = range[0];
    else if (part === 'high' && (value || isOpen)) inputs[input] = range[1];
    else if (part === 'known' && value) inputs[input] = 1;
    else if (part === 'missing') inputs[input] = isOpen ? 1 : 0;
    else if (value) inputs[input] = value.includes(choice) ? 1 : 0;
  }
  return { inputs, refused: [...values.keys()].filter((name) => values.get(name) === null) };
}

/** The inputs with room for the truth around what was read, where faults of technique are known to be there; else the same. */
function widened({ faults = [], observations }, inputs, ask) {
  const wide = { ...inputs };
  const there = faults.filter(({ is_there: isThere }) => ask(isThere));
  const age = inputs['age:known'] ? [inputs['age:low'], inputs['age:high']] : null;
  for (const { reads_high: above, reads_low: below } of there)
    for (const { observation: name, possible } of observations) {
      if (!(name in above || name in below) || !inputs[`${name}:known`]) continue;
      const [least, most] = possibleAt(possible, age);
      wide[`${name}:low`] = Math.max(least, wide[`${name}:low`] - (above[name] ?? 0));
      wide[`${name}:high`] = Math.min(most, wide[`${name}:high`] + (below[name] ?? 0));
    }
  return there.length > 0 ? wide : inputs;
}

/**
 * The answers, from inputs and `apply` of any JSON Logic library. `given` holds the wide inputs, where earlier sets take part: with
 * earlier values counted as missing. Without them they are worked out from the faults of technique of this one set.
 */
export function answersOf(file, apply, inputs, given = null) {
  const run = (from) => {
    const data = { ...from };
    for (const { step, is } of file.steps) data[step] = apply(is, data);
    return (is) => apply(is, data);
  };
  const narrow = run(inputs);
  const wide = given ?? widened(file, inputs, narrow);
  const whole = wide === inputs ? narrow : run(wide);
  const { applies, levels, rules, measures } = file.answers;
  const raised = narrow(levels.raised);
  const [couldBe, floor] = [Math.max(raised, whole(levels.could), 0), Math.max(whole(levels.floor), 0)];
  const settled = Boolean(whole(applies.certain)) && floor === Math.max(raised, 0) && floor === couldBe;
  const isFor = !whole(applies.possible) ? 'no' : narrow(applies.certain) ? 'yes' : 'unsure';
  const atLeast = raised > 0 ? raised : settled ? 0 : null;
  const level = { at_least: file.levels[atLeast] ?? null, could_be: file.levels[couldBe], settled };
  const stateOf = ({ certain, possible }) =>
    narrow(certain) ? 'met' : whole(possible) ? 'undecided' : 'not_met';
  const each = (all, make) => Object.fromEntries(Object.entries(all).map(([name, of]) => [name, make(of)]));
  return {
    applies: isFor,
    level: isFor === 'no' ? null : level,
    rules: each(rules, stateOf),
    measures: each(measures, (of) => (narrow(of.maybe) ? measureOf(of, narrow) : null)),
  };
}

/** The ends of a measure, in its unit. What never happened is a number beyond every window. */
function measureOf({ low, high, scale, bottom_low: least, bottom_high: most, bottom_scale: by }, ask) {
  const end = (top, small, large) => (top / Number(scale)) * (Number(by) / ask(top < 0 ? small : large));
  return { low: end(ask(low), least, most), high: end(ask(high), most, least) };
}
