import type { shapeWording } from '../problems/wording/shape.ts';
import type { Kind } from './files.ts';

/** Files that have a problem of shape, and files that are well, for one problem. They are tests and pages at once. */
export interface ShapeExamples {
  readonly code: keyof typeof shapeWording;
  readonly kind: Kind;
  /** Each has the problem, and no other. */
  readonly reject: readonly string[];
  /** Each has no problem at all. */
  readonly accept: readonly string[];
}

/** A whole protocol with a rule, or with something in place of it. */
const protocol = (rules: string, more = ''): string =>
  `protocol: example
edition: 1
title: An example
ladder: alder_ladder
observations: { needs: [systolic] }
rules: ${rules}
${more}`;

const rule = (when: string, more = ''): string =>
  protocol(`\n  - rule: low_pressure\n    when: ${when}\n    says: Low.\n    ${more}`);

const ladder = (levels: string): string => `ladder: alder_ladder\nedition: 1\nlevels: ${levels}`;
const well = rule('{ systolic: { below: 90 } }');

export const shapeExamples: readonly ShapeExamples[] = [
  {
    code: 'wrong_type',
    kind: 'protocol',
    reject: [
      rule('{ systolic: 90 }'),
      rule('{ anny: [{ systolic: { below: 90 } }] }'),
      protocol('none'),
      well.replace('edition: 1', 'edition: 1.5'),
      rule('{ systolic: { below: [90] } }'),
    ],
    accept: [well, rule('{ systolic: { below: "90 mmHg" } }'), rule('{ systolic: { below: 12 kPa } }')],
  },
  {
    code: 'wrong_type',
    kind: 'set',
    reject: ['{"at": 3}', '{"systolic": {"low": "96"}}'],
    accept: ['{"systolic": 104, "skin": "cold", "paced": true}'],
  },
  {
    code: 'value_missing',
    kind: 'protocol',
    reject: [well.replace('title: An example', 'title:'), rule('{ systolic: { below: null } }')],
    accept: [well],
  },
  { code: 'value_missing', kind: 'set', reject: ['{"systolic": null}'], accept: ['{}'] },
  {
    code: 'key_unknown',
    kind: 'protocol',
    reject: [
      rule('{ systolic: { below: 90 } }', 'levle: call_doctor'),
      rule('{ systolic: { bellow: 90, above: 1 } }'),
    ],
    // Any name may stand in a condition: what it means is not a matter of shape.
    accept: [rule('{ systolic: { below: 90 } }', 'level: call_doctor'), rule('{ sistolic: { below: 90 } }')],
  },
  {
    code: 'key_missing',
    kind: 'ladder',
    reject: [
      'ladder: alder_ladder\nlevels: [{ level: a }, { level: b }]',
      ladder('[{ level: a }, { title: B }]'),
    ],
    accept: [ladder('[{ level: a }, { level: b }]')],
  },
  {
    code: 'key_not_formed',
    kind: 'protocol',
    reject: [
      protocol('[]', 'limits: { "Mean floor": { value: 65 } }'),
      protocol('[]', `sources: { ${'a'.repeat(61)}: { cite: x } }`),
    ],
    accept: [
      protocol('[]', 'limits: { mean_floor: { value: 65 } }'),
      protocol('[]', `sources: { ${'a'.repeat(60)}: { cite: x } }`),
    ],
  },
  {
    code: 'word_unknown',
    kind: 'protocol',
    reject: [
      protocol('[]', 'measures: { peak: { highest: systolic, over: 4 h, present_set: includd } }'),
      rule('{ systolic: { known: maybe } }'),
    ],
    accept: [
      protocol('[]', 'measures: { peak: { highest: systolic, over: 4 h, present_set: included } }'),
      rule('{ systolic: { known: yes } }'),
      rule('{ systolic: { known: true } }'),
    ],
  },
  {
    code: 'word_unknown',
    kind: 'dictionary',
    reject: ['dictionary: x\nlanguage: 2\nobservations: {}'],
    accept: ['dictionary: x\nlanguage: 1\nobservations: {}'],
  },
  {
    code: 'name_not_formed',
    kind: 'protocol',
    reject: [
      well.replace('protocol: example', 'protocol: An example'),
      protocol('[]', 'measures: { m: { highest: heart-rate, over: 4 h } }'),
    ],
    accept: [well],
  },
  {
    code: 'text_not_formed',
    kind: 'ladder',
    reject: [
      ladder('[{ level: a }, { level: b, respond: half an hour }]'),
      ladder('[{ level: a }, { level: b, tell: [{ who: x, from: "7:00" }] }]'),
    ],
    accept: [ladder('[{ level: a }, { level: b, respond: 30 min, tell: [{ who: x, from: "07:00" }] }]')],
  },
  {
    code: 'text_without_words',
    kind: 'protocol',
    reject: [well.replace('says: Low.', 'says: ""')],
    accept: [well],
  },
  {
    code: 'text_too_long',
    kind: 'protocol',
    reject: [
      well.replace('says: Low.', `says: ${'x'.repeat(2001)}`),
      protocol('[]', `measures: { m: { formula: ${'1 + '.repeat(125)}1 } }`),
    ],
    // Characters are counted, not the units in which a computer keeps them.
    accept: [well.replace('says: Low.', `says: ${'😀'.repeat(2000)}`)],
  },
  {
    code: 'too_few',
    kind: 'ladder',
    reject: [ladder('[{ level: a }]'), ladder('[]'), ladder('[{ level: a }, { level: b, tell: [] }]')],
    accept: [ladder('[{ level: a }, { level: b }]')],
  },
  {
    code: 'too_few',
    kind: 'protocol',
    reject: [rule('{}'), rule('{ systolic: {} }'), rule('{ all: [] }')],
    accept: [well],
  },
  {
    code: 'too_many',
    kind: 'protocol',
    reject: [
      rule('{ systolic: { between: [1, 2, 3] } }'),
      rule('{ systolic: { below: 90 } }', `ask: [${'x, '.repeat(20)}x]`),
    ],
    accept: [
      rule('{ systolic: { between: [1, 2] } }'),
      rule('{ systolic: { below: 90 } }', `ask: [${'x, '.repeat(19)}x]`),
    ],
  },
  {
    code: 'number_too_low',
    kind: 'protocol',
    reject: [
      well.replace('edition: 1', 'edition: 0'),
      rule('{ at_least_of: { count: 0, of: [{ systolic: { below: 90 } }] } }'),
    ],
    accept: [well],
  },
  {
    code: 'number_too_high',
    kind: 'protocol',
    reject: [well.replace('edition: 1', 'edition: 100001')],
    accept: [well.replace('edition: 1', 'edition: 100000')],
  },
];
