/** Whole steps of a number in its unit, exact, ties away from zero: 36.65 at 10 steps per unit is 367. */
function stepsOf(value, stepsPerUnit) {
  const digits = /^(-?)(\d+)\.?(\d*)$/.exec(typeof value === 'number' ? String(value) : '');
  if (!digits) throw new Error(`${JSON.stringify(value)} is no plain number`);
  const [, minus, whole, part] = digits;
  const [by, over = 1n] = stepsPerUnit.split('/').map(BigInt);
  const unit = 10n ** BigInt(part.length) * over;
  return Number((2n * BigInt(whole + part) * by + unit) / (2n * unit)) * (minus ? -1 : 1);
}

const endsOf = (value) => (typeof value === 'object' ? value : { low: value, high: value });
const pickedOf = (kind, value) =>
  kind === 'several'
    ? value
    : [kind === 'yes_no' && typeof value === 'boolean' ? (value ? 'yes' : 'no') : value];

/**
 * The inputs of a logic file from one set, in the units of the file, and the names of the values that were refused: they count as missing. What
 * counts, and what a missing value may be, the file itself works out. Throws at whatever it cannot read. `others` holds inputs by name: those of
 * look backs, for which one set is not enough, and those of limits that somebody has changed.
 */
export function setToInputs(file, apply, set, others = {}) {
  const data = {};
  for (const { observation: name, kind, steps_per_unit: per, choices = [] } of file.observations) {
    const value = set[name] ?? { declined: true };
    const isGiven = !('unobtainable' in Object(value) || 'declined' in Object(value));
    data[`${name}:given`] = isGiven ? 1 : 0;
    data[`${name}:tried`] = value.unobtainable ? 1 : 0;
    if (kind === 'number') {
      const { low, high, ...more } = isGiven ? endsOf(value) : endsOf(0);
      [data[`${name}:from`], data[`${name}:to`]] = [stepsOf(low, per), stepsOf(high, per)];
      if (Object.keys(more).length > 0 || data[`${name}:from`] > data[`${name}:to`])
        throw new Error(`${name}: a number, or low and high`);
    } else {
      const picked = isGiven ? pickedOf(kind, value) : [];
      if (!(Array.isArray(picked) && picked.every((each) => choices.includes(each))))
        throw new Error(`${name}: ${kind === 'several' ? 'a list of' : 'one of'} ${choices.join(', ')}`);
      for (const each of choices) data[`${name}:gave:${each}`] = picked.includes(each) ? 1 : 0;
    }
  }
  const open = file.inputs.filter(({ is }) => is === undefined).map(({ input }) => input);
  const lacking = file.inputs.flatMap(({ input, otherwise }) =>
    (others[input] ?? otherwise) === undefined ? [input] : [],
  );
  const strange = [
    ...Object.keys(set).filter((name) => !(`${name}:given` in data)),
    ...Object.keys(others).filter((name) => !open.includes(name)),
  ];
  if (strange.length + lacking.length > 0)
    throw new Error(`unknown: ${strange.join(', ')}; needed beside the set: ${lacking.join(', ')}`);
  for (const { step, is } of file.reading) data[step] = apply(is, data);
  const valueOf = ({ input, is, otherwise }) =>
    is === undefined ? (others[input] ?? otherwise) : apply(is, data);
  return {
    inputs: Object.fromEntries(file.inputs.map((each) => [each.input, valueOf(each)])),
    refused: file.observations.map((each) => each.observation).filter((name) => data[`${name}:refused`]),
  };
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
  const doubted = file.inputs
    .filter(({ wide }) => wide !== undefined)
    .map((each) => [each.input, narrow(each.wide)]);
  const wide = given ?? { ...inputs, ...Object.fromEntries(doubted) };
  const whole = given === null && doubted.length === 0 ? narrow : run(wide);
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
