import { expect, test } from 'vitest';
import { hospital, onHospital, read, rule, told, ward } from './kit.ts';

// Each problem stands in the ward's own text, at what the ward would change to mend it.

test.each([
  ['the lowest bound itself', '80', []],
  ['one below it', '79', ['limit_outside_bounds at 79']],
  ['the highest bound itself', '110', []],
  ['one above it', '111', ['limit_outside_bounds at 111']],
  ['a value with the unit of the limit', '95 mmHg', []],
  ['a value in another unit', '12 kPa', ['limit_in_two_units at 12 kPa']],
])('a limit changed to %s', (_, value, expected) => {
  expect(told(onHospital(`limits: { floor: { value: ${value}, because: As agreed. } }`))).toEqual(expected);
});

test.each([
  [
    'a limit without bounds',
    'limits: { fixed: { value: 190, because: As agreed. } }',
    'limit_not_to_change at fixed',
  ],
  [
    'a limit that is not there',
    'limits: { flor: { value: 95, because: As agreed. } }',
    'limit_not_of_parent at flor',
  ],
  ['a limit changed without a reason', 'limits: { floor: { value: 95 } }', 'key_missing at floor'],
  [
    'a source that is not there',
    'limits: { floor: { value: 95, because: As agreed., source: [board] } }',
    'unknown_source at board',
  ],
  [
    'a rule that is not there',
    'withdraws: [{ rule: motled, because: As agreed. }]',
    'rule_not_of_parent at motled',
  ],
  ['a rule withdrawn without a reason', 'withdraws: [{ rule: mottled }]', 'key_missing at { rule: mottled }'],
  [
    'a rule withdrawn twice',
    'withdraws: [{ rule: mottled, because: As agreed. }, { rule: mottled, because: So it is. }]',
    'withdrawn_twice at mottled',
  ],
  [
    'a rule that another rule names',
    'withdraws: [{ rule: low, because: As agreed. }]',
    'withdrawn_rule_named at low',
  ],
])('%s', (_, changes, expected) => {
  expect(told(onHospital(changes))).toEqual([expected]);
});

test('what was probably meant is said', () => {
  const near = (text: string): (string | null)[] => read(text).problems.map((each) => each.near_miss);
  expect(near(onHospital('limits: { flor: { value: 95, because: As agreed. } }'))).toEqual(['floor']);
  expect(near(onHospital('withdraws: [{ rule: motled, because: As agreed. }]'))).toEqual(['mottled']);
  expect(near(ward('{ protocol: hospitl, edition: 3 }'))).toEqual(['hospital']);
});

test('a rule that is withdrawn and named stands at the one that names it, when the ward wrote that', () => {
  const text = onHospital(
    'withdraws: [{ rule: mottled, because: As agreed. }]',
    `rules:\n${rule('pale_and_low', '{ all: [{ rule: mottled }, { rule: low }] }')}`,
  );
  const [problem, ...more] = read(text).problems;
  expect(more).toEqual([]);
  expect(problem?.line).toBe(7);
  expect(problem?.says).toBe('The rule "mottled" is withdrawn, but "pale_and_low" names it.');
});

test('two rules that name each other can be withdrawn together', () => {
  const both =
    'withdraws: [{ rule: low, because: As agreed. }, { rule: low_and_narrow, because: As agreed. }]';
  // Nothing compares with the limit any more, and it may stay.
  expect(told(onHospital(both))).toEqual([]);
});

test('a partition that names a withdrawn rule is said', () => {
  const parts = 'exactly_one_of: { whole: [{ systolic: { below: 90 } }, { systolic: { at_least: 90 } }] }\n';
  const named = hospital + parts.replace('{ systolic: { below: 90 } }', '{ rule: mottled }');
  const problems = read(onHospital('withdraws: [{ rule: mottled, because: As agreed. }]'), {
    hospital: named,
  }).problems;
  expect(problems.map(({ code }) => code)).toEqual(['parent_has_errors']);
  const own = onHospital(
    'withdraws: [{ rule: mottled, because: As agreed. }]',
    parts.replace('{ systolic: { below: 90 } }', '{ rule: mottled }'),
  );
  expect(read(own).problems.map(({ says }) => says)).toEqual([
    'The rule "mottled" is withdrawn, but "whole" names it.',
  ]);
});

test.each([
  ['a rule', `rules:\n${rule('low', '{ systolic: { below: 85 } }')}`, 'low'],
  ['a rule that is called as a measure is', `rules:\n${rule('gap', '{ systolic: { below: 85 } }')}`, 'gap'],
  ['a limit', 'limits: { floor: { value: 90, unit: mmHg } }', 'floor'],
  ['a limit that is called as a measure is', 'limits: { gap: { value: 90, unit: mmHg } }', 'gap'],
  ['a measure', 'measures: { gap: { formula: diastolic - 1 } }', 'gap'],
  ['a measure that is called as a rule is', 'measures: { mottled: { formula: diastolic - 1 } }', 'mottled'],
  ['a source', 'sources: { council: { cite: "Common practice, no published source" } }', 'council'],
  ['an observation that is needed', 'observations: { needs: [systolic] }', 'systolic'],
  ['an observation that helps and is now needed', 'observations: { needs: [skin] }', 'skin'],
  ['an observation of the scope that would only help', 'observations: { helps: [age] }', 'age'],
  ['an observation that would be a standing fact', 'standing: { skin: { if_not_stated: pale } }', 'skin'],
])('a name used for two things: %s', (_, parts, name) => {
  expect(told(onHospital('', parts))).toEqual([`name_of_parent at ${name}`]);
});

test('the name of a withdrawn rule is not free for another one', () => {
  const text = onHospital(
    'withdraws: [{ rule: mottled, because: As agreed. }]',
    `rules:\n${rule('mottled', '{ systolic: { below: 85 } }')}`,
  );
  expect(told(text)).toEqual(['name_of_parent at mottled']);
});

test('nor is it further down', () => {
  const between = onHospital('withdraws: [{ rule: mottled, because: As agreed. }]').replace(
    'protocol: ward',
    'protocol: between',
  );
  const text = ward(
    '{ protocol: between, edition: 1 }',
    `rules:\n${rule('mottled', '{ systolic: { below: 85 } }')}`,
  );
  expect(told(text, { between })).toEqual(['name_of_parent at mottled']);
  const naming = ward('{ protocol: between, edition: 1 }', `rules:\n${rule('also', '{ rule: mottled }')}`);
  expect(told(naming, { between })).toEqual(['withdrawn_rule_named at mottled']);
});

test('a declared observation and a partition are names too', () => {
  const declares =
    'declares: { drain: { title: drain, kind: number, unit: mL/h, step: 1, possible: [0, 100] } }';
  const parts = 'exactly_one_of: { bands: [{ systolic: { below: 90 } }, { systolic: { at_least: 90 } }] }\n';
  const parent = `${hospital.replace('helps: [skin]', `helps: [skin, drain], ${declares}`)}${rule('drains', '{ drain: { above: 50 } }')}${parts}`;
  expect(told(onHospital('', `observations: { ${declares} }`), { hospital: parent })).toEqual([
    'name_of_parent at drain',
  ]);
  expect(told(onHospital('', parts), { hospital: parent })).toEqual(['name_of_parent at bands']);
});

test('every problem comes at once', () => {
  const text = onHospital(
    'limits: { fixed: { value: 190, because: As agreed. } }, withdraws: [{ rule: motled, because: As agreed. }]',
    `measures: { gap: { formula: diastolic - 1 } }\nrules:\n${rule('pale', '{ skn: { is: pale } }')}`,
  );
  expect(told(text)).toEqual([
    'limit_not_to_change at fixed',
    'rule_not_of_parent at motled',
    'name_of_parent at gap',
    'unknown_name at skn',
  ]);
});

test('a divisor of the parent that a changed limit brings to zero stands at the change', () => {
  const parent = hospital
    .replace('fixed: { value: 200, unit: mmHg }', 'fixed: { value: 200, unit: mmHg, between: [100, 300] }')
    .replace('measures:', 'measures:\n  share: { formula: systolic / (fixed - 100) }');
  const change = (value: number): string =>
    onHospital(`limits: { fixed: { value: ${value}, because: As agreed. } }`);
  expect(told(change(101), { hospital: parent })).toEqual([]);
  expect(told(change(100), { hospital: parent })).toEqual(['divisor_not_positive at 100']);
});

test('a partition of the parent that a changed limit breaks stands where the parent is named', () => {
  const parts =
    'exactly_one_of: { bands: [{ systolic: { below: floor } }, { systolic: { at_least: 90 } }] }\n';
  const change = (value: number): string =>
    onHospital(`limits: { floor: { value: ${value}, because: As agreed. } }`);
  expect(told(change(90), { hospital: hospital + parts })).toEqual([]);
  expect(told(change(89), { hospital: hospital + parts })).toEqual(['partition_hole at hospital']);
});

test.each([
  ['nothing of that name', ward('{ protocol: hospitl, edition: 3 }'), {}, 'parent_not_found at hospitl'],
  [
    'a file that is another protocol',
    ward('{ protocol: clinic, edition: 3 }'),
    { clinic: hospital },
    'parent_not_found at clinic',
  ],
  ['another edition', ward('{ protocol: hospital, edition: 2 }'), {}, 'parent_of_other_edition at 2'],
  [
    'another ladder',
    onHospital('').replace('alder_ladder', 'ward_ladder'),
    {},
    'ladder_of_parent at ward_ladder',
  ],
  ['itself', ward('{ protocol: ward, edition: 1 }'), {}, 'based_on_circle at ward'],
])('based on %s', (_, text, more, expected) => {
  expect(told(text, more)).toEqual([expected]);
});

test.each([
  ['its shape', hospital.replace('needs:', 'neds:'), 'hospital.yaml:8:17'],
  ['its text', hospital.replace('edition: 3', 'edition: 3\nedition: 4'), 'hospital.yaml:3:1'],
  ['what it means', hospital.replace('below: floor', 'below: flor'), 'hospital.yaml:15:45'],
  ['what only all possible sets show', hospital.replace('value: 200', 'value: 500'), 'hospital.yaml:16:46'],
])('a parent with an error of %s: where it is', (_, text, where) => {
  const [problem, ...more] = read(onHospital(''), { hospital: text }).problems;
  expect(more).toEqual([]);
  expect(problem?.code).toBe('parent_has_errors');
  expect([problem?.file, problem?.line]).toEqual(['ward.yaml', 4]);
  expect(problem?.says).toContain(`(${where})`);
});

const chain = (name: string, basedOn: string, edition = 1): string =>
  ward(`{ protocol: ${basedOn}, edition: ${edition} }`).replace('protocol: ward', `protocol: ${name}`);

test('three stand one on the other, and a fourth is refused by its own name', () => {
  const more = { region: chain('region', 'hospital', 3), house: chain('house', 'region') };
  expect(told(chain('ward', 'region'), more)).toEqual([]);
  expect(told(chain('ward', 'house'), more)).toEqual(['based_on_too_deep at house']);
  expect(read(chain('ward', 'house'), more).problems[0]?.says).toContain('ward → house → region → hospital');
});

test('a long line of protocols is refused without being read to its end', () => {
  const names = Array.from({ length: 3000 }, (_, index) => `p${index}`);
  const more = Object.fromEntries(names.map((name, index) => [name, chain(name, `p${index + 1}`)]));
  expect(told(chain('ward', 'p0'), more)).toEqual(['based_on_too_deep at p0']);
});

test('a circle is told by each file in it, and above a file as a mistake of that other one', () => {
  const more = { one: chain('one', 'two'), two: chain('two', 'one') };
  expect(told(chain('ward', 'one'), more)).toEqual(['parent_has_errors at one']);
  expect(told(chain('ward', 'two'), { two: chain('two', 'ward') })).toEqual(['based_on_circle at two']);
});

test('a protocol that stands alone must list observations and have rules', () => {
  const alone = hospital.replace(/rules:[\s\S]*/, '').replace(/observations:.*\n/, '');
  const problems = read(alone).problems.map(({ code, says }) => `${code}: ${says}`);
  expect(problems).toEqual([
    'key_missing: "observations" is missing from this protocol.',
    'key_missing: "rules" is missing from this protocol.',
  ]);
});

test('what the check of the parent warns of is not told again, and what the ward adds is', () => {
  const silent = 'when: { skin: { is: mottled }, heart_rate: { known: yes } }';
  const parent = hospital
    .replace('when: { skin: { is: mottled } }', silent)
    .replace('helps: [skin]', 'helps: [skin, heart_rate]');
  expect(told(onHospital(''), { hospital: parent })).toEqual([]);
  const own = onHospital('', `rules:\n${rule('fast', '{ heart_rate: { known: yes, above: 90 } }')}`);
  expect(told(own, { hospital: parent })).toEqual(['known_silences at yes']);
});

test('an overdue review is that of the file itself', () => {
  const overdue = `${hospital}review_by: 2020-01-31\n`;
  expect(read(onHospital(''), { hospital: overdue }, '2026-03-02').problems).toEqual([]);
  const own = read(onHospital('', 'review_by: 2020-01-31\n'), {}, '2026-03-02').problems;
  expect(own.map(({ code }) => code)).toEqual(['review_overdue']);
});
