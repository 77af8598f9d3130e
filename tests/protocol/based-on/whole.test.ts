import { expect, test } from 'vitest';
import type { Compiled, Outcome } from '../../../src/index.ts';
import { documentToProtocol } from '../../../src/protocol/document-to-protocol.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import { withoutPart } from '../../../src/document/edit.ts';
import { vitalSigns } from '../../../src/vocabulary/vital-signs.ts';
import { bundledLadder } from '../../bundled.ts';
import { outcome, ruleOf, type Given } from '../../outcome/ask.ts';
import { hospital, onHospital, parentsOf, rule, sound, ward } from './kit.ts';

// What holds in a protocol that is based on another: what the two say together.

const age = { value: 58, unit: 'a' };
const pressure = (systolic: number, more: Given = {}): Given => ({ age, systolic, diastolic: 50, ...more });
const names = ({ protocol }: Compiled): string[] => protocol.rules.map((each) => each.name);

/** How the rules stand and the level, without from where they come. */
const said = ({ level, rules, missing, would_tell_more: more }: Outcome): object => ({
  level,
  missing,
  more,
  rules: rules.map(({ from: _, ...rest }) => rest),
});

test('a ward that changes nothing says of every set what the hospital says', () => {
  const [own, theirs] = [sound(onHospital('')), sound(hospital)];
  for (const set of [
    {},
    { age },
    pressure(85),
    pressure(90, { skin: 'mottled' }),
    { age: { value: 9, unit: 'a' } },
  ])
    expect(said(outcome(own, set))).toEqual(said(outcome(theirs, set)));
  expect(own.protocol.name).toBe('ward');
  expect(own.protocol.digest).not.toBe(theirs.protocol.digest);
});

const adapted = onHospital(
  'limits: { floor: { value: 95, because: They live at high pressures. } }, withdraws: [{ rule: mottled, because: Another chart asks for it. }]',
  `applies_when: { pregnancy: { is: not_pregnant } }
observations: { needs: [heart_rate] }
measures: { index: { formula: heart_rate / systolic } }
rules:
${rule('fast_and_low', '{ rule: low, index: { above: 1 }, gap: { below: 60 } }')}`,
);

/** The same, written by hand in one file. */
const byHand = hospital
  .replace('protocol: hospital', 'protocol: ward')
  .replace('edition: 3', 'edition: 1')
  .replace(
    'applies_when: { age: { at_least: 16 y } }',
    'applies_when: { all: [{ age: { at_least: 16 y } }, { pregnancy: { is: not_pregnant } }] }',
  )
  .replace(
    'needs: [systolic, diastolic], helps: [skin]',
    'needs: [systolic, diastolic, heart_rate], helps: []',
  )
  .replace('value: 90', 'value: 95')
  .replace('measures:', 'measures:\n  index: { formula: heart_rate / systolic }')
  .replace(/ {2}- { rule: mottled.*\n/, '')
  .concat(rule('fast_and_low', '{ rule: low, index: { above: 1 }, gap: { below: 60 } }'));

test('the logic is that of the same protocol written in one file, to its digest', () => {
  const [own, hand] = [sound(adapted), sound(byHand)];
  expect(names(own)).toEqual(names(hand));
  expect(own.protocol.logicDigest).toBe(hand.protocol.logicDigest);
  expect(own.protocol.digest).not.toBe(hand.protocol.digest);
  expect(own.logic.steps).toEqual(hand.logic.steps);
});

test('and so is what it says of a set', () => {
  const [own, hand] = [sound(adapted), sound(byHand)];
  for (const systolic of [94, 95, 201])
    for (const more of [{}, { heart_rate: 99 }, { pregnancy: 'not_pregnant' }, { pregnancy: 'pregnant' }]) {
      const set = pressure(systolic, more);
      expect(said(outcome(own, set))).toEqual(said(outcome(hand, set)));
    }
});

test('a changed limit holds from its new value on', () => {
  const own = sound(adapted);
  const set = (systolic: number): Given => pressure(systolic, { heart_rate: 60, pregnancy: 'not_pregnant' });
  expect(ruleOf(outcome(own, set(94)), 'low').state).toBe('met');
  expect(ruleOf(outcome(own, set(95)), 'low').state).toBe('not_met');
  expect(ruleOf(outcome(sound(hospital), pressure(94)), 'low').state).toBe('not_met');
});

test('a patient’s limit is still held to the bounds of the hospital', () => {
  const own = sound(adapted);
  const series = (value: number): Given => ({
    patient: { limits: { floor: { value, by: 'Dr Ash', reason: 'known', until: '2026-03-05T08:00:00Z' } } },
    sets: [{ at: '2026-03-03T09:00:00Z', ...pressure(94) }],
  });
  expect(outcome(own, series(80)).limits).toHaveLength(1);
  expect(outcome(own, series(79)).refused).toHaveLength(1);
});

test('a withdrawn rule is gone, and with it what only that rule read', () => {
  const own = sound(adapted);
  expect(names(own)).not.toContain('mottled');
  expect([...own.protocol.observations.keys()]).not.toContain('skin');
  const made = outcome(own, pressure(120, { skin: 'mottled' }));
  expect(made.unused).toEqual(['skin']);
  expect(outcome(own, pressure(120)).would_tell_more).toEqual([]);
});

test('a needed observation that nothing reads any more is not asked for', () => {
  const parent =
    hospital.replace('systolic, diastolic]', 'systolic, diastolic, temperature]') +
    rule('hot', '{ temperature: { above: 39 } }');
  expect(outcome(sound(onHospital(''), { hospital: parent }), pressure(120)).missing).toEqual([
    'temperature',
  ]);
  const own = sound(onHospital('withdraws: [{ rule: hot, because: As agreed. }]'), { hospital: parent });
  const made = outcome(own, pressure(120, { skin: 'pale' }));
  expect(made.missing).toEqual([]);
  expect(made.level?.settled).toBe(true);
});

test('it stays when the ward reads it', () => {
  const text = onHospital(
    'withdraws: [{ rule: mottled, because: As agreed. }]',
    `rules:\n${rule('pale', '{ skin: { is: pale } }')}`,
  );
  expect(sound(text).protocol.observations.get('skin')?.role).toBe('helps');
});

test('a standing fact and a declared observation go with the only rule that read them', () => {
  const declares =
    'declares: { drain: { title: drain, kind: number, unit: mL/h, step: 1, possible: [0, 100] } }';
  const parent = `${hospital.replace('helps: [skin]', `helps: [skin, drain], ${declares}`).replace('limits:', 'standing: { oxygen_scale: { if_not_stated: scale_1 } }\nlimits:')}${rule('odd', '{ drain: { above: 50 }, oxygen_scale: { is: scale_2 } }')}`;
  const kept = sound(onHospital(''), { hospital: parent }).protocol;
  expect([...kept.observations.keys()]).toEqual(expect.arrayContaining(['drain', 'oxygen_scale']));
  const own = sound(onHospital('withdraws: [{ rule: odd, because: As agreed. }]'), {
    hospital: parent,
  }).protocol;
  expect([...own.observations.keys()]).toEqual(['systolic', 'diastolic', 'skin', 'age']);
  expect(own.vocabulary.has('drain')).toBe(false);
});

test('both scopes must hold', () => {
  const own = sound(adapted);
  const applies = (set: Given): string => outcome(own, set).applies;
  expect(applies({ age, pregnancy: 'not_pregnant' })).toBe('yes');
  expect(applies({ age, pregnancy: 'pregnant' })).toBe('no');
  expect(applies({ age: { value: 9, unit: 'a' }, pregnancy: 'not_pregnant' })).toBe('no');
  expect(applies({ age })).toBe('unsure');
});

test('what else to use is the hospital’s, until the ward says it anew', () => {
  const child = { age: { value: 9, unit: 'a' } };
  expect(outcome(sound(onHospital('')), child).otherwise).toBe('For a child use the chart of the children.');
  const own = sound(onHospital('', 'otherwise: Ask the ward for children.\n'));
  expect(outcome(own, child).otherwise).toBe('Ask the ward for children.');
});

test('title, owners, what it is about and the review are the ward’s own', () => {
  const parent = hospital.replace(
    'ladder:',
    'about: Theirs.\nowners: [Theirs]\nreview_by: 2030-01-01\nladder:',
  );
  const { title, about, owners, reviewBy } = sound(onHospital(''), { hospital: parent }).protocol;
  expect([title, about, owners, reviewBy]).toEqual(['Of the ward', null, [], null]);
});

test('sources, partitions and standing facts are added to the hospital’s', () => {
  const bands = (name: string, at: number): string =>
    `exactly_one_of: { ${name}: [{ systolic: { below: ${at} } }, { systolic: { at_least: ${at} } }] }\n`;
  const text = onHospital(
    '',
    `sources: { board: { cite: "Common practice, no published source" } }
standing: { oxygen_scale: { if_not_stated: scale_1 } }
limits: { roof: { value: 150, unit: mmHg } }
rules:\n${rule('over', '{ systolic: { above: roof }, oxygen_scale: { is: scale_2 } }').replace('[council]', '[board, council]')}${bands('fine', 100)}`,
  );
  const { protocol } = sound(text, { hospital: hospital + bands('coarse', 90) });
  expect([...protocol.sources.keys()]).toEqual(['council', 'board']);
  expect([...protocol.partitions.keys()]).toEqual(['coarse', 'fine']);
  expect([...protocol.limits.keys()]).toEqual(['floor', 'fixed', 'roof']);
  expect(protocol.observations.get('oxygen_scale')?.ifNotStated).toBe('scale_1');
});

const region = onHospital(
  'limits: { floor: { value: 85, because: Of the region. } }',
  `rules:\n${rule('wide', '{ gap: { above: 90 } }')}`,
)
  .replace('protocol: ward', 'protocol: region')
  .replace('edition: 1', 'edition: 7');
const ofRegion = ward(
  '{ protocol: region, edition: 7, limits: { floor: { value: 100, because: Of the ward. } }, withdraws: [{ rule: mottled, because: As agreed. }] }',
  `rules:\n${rule('own', '{ rule: wide, systolic: { above: 150 } }')}`,
);

test('the outcome says of each rule from where it is, and what was changed on the way', () => {
  const made = outcome(sound(ofRegion, { region }), pressure(120));
  const hospital3 = { protocol: 'hospital', edition: 3 };
  expect(made.rules.map(({ rule: name, from }) => [name, from])).toEqual([
    ['low', hospital3],
    ['high', hospital3],
    ['low_and_narrow', hospital3],
    ['wide', { protocol: 'region', edition: 7 }],
    ['own', undefined],
  ]);
  const limit = { limit: 'floor', unit: 'mm[Hg]' };
  expect(made.based_on?.map(({ digest: _, ...rest }) => rest)).toEqual([
    {
      protocol: 'region',
      edition: 7,
      title: 'Of the ward',
      limits: [{ ...limit, value: 100, instead_of: 85, because: 'Of the ward.' }],
      withdrawn: [{ rule: 'mottled', title: 'mottled', because: 'As agreed.' }],
    },
    {
      protocol: 'hospital',
      edition: 3,
      title: 'Of the hospital',
      limits: [{ ...limit, value: 85, instead_of: 90, because: 'Of the region.' }],
      withdrawn: [],
    },
  ]);
  expect(made.based_on?.map(({ digest }) => digest)).toEqual([
    sound(region).protocol.digest,
    sound(hospital).protocol.digest,
  ]);
});

test('a protocol that stands alone says nothing of this', () => {
  const made = outcome(sound(hospital), pressure(120));
  expect('based_on' in made).toBe(false);
  expect(made.rules.some((each) => 'from' in each)).toBe(false);
});

test('a word changed in the parent changes the digest, and not that of the logic', () => {
  const before = sound(onHospital('')).protocol;
  const after = sound(onHospital(''), {
    hospital: hospital.replace('Of the hospital', 'Of our hospital'),
  }).protocol;
  expect(after.digest).not.toBe(before.digest);
  expect(after.logicDigest).toBe(before.logicDigest);
  const other = sound(onHospital(''), { hospital: hospital.replace('value: 90', 'value: 91') }).protocol;
  expect(other.logicDigest).not.toBe(before.logicDigest);
});

test('a small change of the whole is read again without its parent, and says which parts came from it', () => {
  const surroundings = { dictionary: vitalSigns, ladder: bundledLadder(), today: null };
  const { document } = yamlToDocument('ward.yaml', adapted);
  if (!document) throw new Error('the ward has no document');
  const read = documentToProtocol(document, { ...surroundings, parents: parentsOf({ hospital }) });
  const lacking = withoutPart(read.document, ['rules', 3, 'when', 'gap']);
  const again = documentToProtocol(lacking, surroundings);
  expect(again.problems).toEqual([]);
  expect(again.protocol?.basedOn).toEqual(read.protocol?.basedOn);
  expect(again.protocol?.logicDigest).not.toBe(read.protocol?.logicDigest);
});
