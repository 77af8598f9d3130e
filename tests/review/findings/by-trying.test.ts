import { expect, test } from 'vitest';
import { advised, byTrying, everySet, isWhole } from './by-trying.ts';
import { drawRules } from './draw-rules.ts';
import { findingsIn, levels, madeUp } from './made-up.ts';

const seeds = [...Array(24).keys()];

test('on made-up protocols the findings are those that trying every set gives, and nothing stays open', () => {
  const kinds = new Map<string, number>();
  for (const seed of seeds) {
    const made = madeUp({ rules: drawRules(seed, levels) });
    const { findings, open } = findingsIn(made);
    expect(open, `seed ${seed}`).toEqual([]);
    const bands = findings.filter(({ name }) => !name.startsWith('measure '));
    expect(bands.map(({ name }) => name).sort(), `seed ${seed}`).toEqual(byTrying(made));
    for (const { kind } of findings) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
  // A test that compares empty lists could not fail: every kind that rules alone can have was there, more than once.
  const often = [...kinds].filter(([, count]) => count >= 2).map(([kind]) => kind);
  expect(often.sort()).toEqual([
    'advice_excluded',
    'cliff',
    'level_never_reached',
    'rule_inside_another',
    'rule_never_met',
    'rules_always_together',
    'threshold_changes_nothing',
  ]);
}, 240_000);

test('what is ordinary, and where something must be said, is found as by trying every set', () => {
  const found = { ordinary: 0, silent: 0, well: 0 };
  for (const seed of seeds) {
    const all = drawRules(seed, levels);
    const made = madeUp({
      // Only the first rule, which names no other, and the last, that most sets are answered by none.
      rules: seed % 2 === 0 ? all : [...all.slice(0, 1), ...all.slice(-1)],
      ordinary: { pulse_a: { between: [2, 4] } },
      must_say: { slow_leg: { pulse_b: { below: 2 } } },
    });
    const { findings } = findingsIn(made);
    const { protocol } = made.compiled;
    const tried = everySet(made);
    const usual = tried.filter(({ values }) => isUsual(values));
    expect(usual.length).toBe(3);
    const named = new Set(findings.map(({ name }) => name));
    const unsettled = usual.filter(
      ({ answers: { level } }) => !(level?.settled === true && level.atLeast === 0),
    );
    const ofOrdinary = findings.filter(({ kind }) => kind === 'ordinary_not_settled');
    expect(ofOrdinary.length > 0, `seed ${seed}`).toBe(unsettled.length > 0);
    for (const rule of protocol.rules) {
      if ((rule.level ?? 0) === 0 || !unsettled.some((each) => advised(rule, each))) continue;
      expect(named, `seed ${seed}`).toContain(`rule ${rule.name} speaks in an ordinary set`);
    }
    const silent = tried.some(
      (each) =>
        isWhole(each, protocol) &&
        Number(each.values.get('pulse_b')) < 2 &&
        !protocol.rules.some((rule) => advised(rule, each)),
    );
    expect(named.has('nothing is said in part of slow_leg'), `seed ${seed}`).toBe(silent);
    if (ofOrdinary.length > 0) found.ordinary += 1;
    else found.well += 1;
    if (silent) found.silent += 1;
  }
  expect(Math.min(...Object.values(found))).toBeGreaterThan(0);
}, 240_000);

const isUsual = (values: ReadonlyMap<string, string>): boolean =>
  ['2', '3', '4'].includes(values.get('pulse_a') ?? '') &&
  values.get('pulse_b') === '3' &&
  values.get('colour') === 'pink' &&
  values.get('told') === 'missing';
