import { expect, test } from 'vitest';
import { proveRequirements, runCases } from '../../src/index.ts';
import { seriesToOutcome } from '../../src/outcome/series-to-outcome.ts';
import { textToSeries } from '../../src/series/text-to-series.ts';
import { setVocabularyOf } from '../../src/series/set-reading.ts';
import type { Compiled } from '../../src/outcome/compile.ts';
import type { Proof } from '../../src/review/requirements/proof.ts';
import { askable, bundledNames, lessonNames } from '../bundled.ts';
import { guarded } from './kit.ts';

const head = 'hazards: { h: { harm: Harm., severity: serious, owner: The council } }\nmust_always:\n';

/** What became of one requirement of a small protocol; its words stand after its name. */
function verdict(rules: string, asks: string): Proof {
  const { compiled } = guarded(
    `${rules}\n${head}  - { requirement: r, ${asks}, controls: [h] }\n`,
    'cases: []\n',
  );
  const [proof] = proveRequirements(compiled);
  if (!proof) throw new Error('nothing was asked');
  return proof;
}

const two = `observations:
  declares:
    a: { title: a, kind: number, unit: mmHg, step: 1, possible: [0, 12], ordinary: 6 }
    b: { title: b, kind: number, unit: mmHg, step: 1, possible: [0, 12], ordinary: 6 }
    k: { title: k, kind: choice, choices: [{ choice: calm, title: calm }, { choice: worse, title: worse }, { choice: worst, title: worst }], ordinary: calm }
  needs: [a, b, k]
measures:
  sum: { formula: a + 2 * b, unit: mmHg }
`;

const rulesOf = (whens: readonly (readonly [string, string])[]): string =>
  `${two}rules:\n${whens
    .map(
      ([when, level], index) =>
        `  - { rule: r${index}, when: ${when}, level: ${level}, says: It suggests something., source: [council] }`,
    )
    .join('\n')}`;

const levels = ['usual_round', 'look_again', 'call_doctor'];

function levelOf(compiled: Compiled, set: object): number {
  const { series } = textToSeries('set', JSON.stringify(set), setVocabularyOf(compiled.protocol));
  const level = series && seriesToOutcome(compiled, series).level;
  return levels.indexOf(level?.at_least ?? 'usual_round');
}

const every = (): { a: number; b: number; k: string }[] =>
  Array.from({ length: 13 }, (_, a) => a).flatMap((a) =>
    Array.from({ length: 13 }, (_, b) => b).flatMap((b) =>
      ['calm', 'worse', 'worst'].map((k) => ({ a, b, k })),
    ),
  );

/** Small protocols, some of which break what is asked of them. */
const protocols = [
  [
    ['{ sum: { at_least: 20 } }', 'call_doctor'],
    ['{ a: { at_most: 3 }, none: [{ k: { is: worst } }] }', 'look_again'],
  ],
  [
    ['{ sum: { below: 9 } }', 'call_doctor'],
    ['{ a: { between: [4, 6] }, k: { is: worse } }', 'look_again'],
  ],
  [
    ['{ any: [{ a: { above: 9 } }, { k: { is: worst } }] }', 'call_doctor'],
    ['{ none: [{ k: { is: calm } }] }', 'look_again'],
  ],
  [
    ['{ a: { above: 5 }, b: { at_most: 7 } }', 'call_doctor'],
    ['{ a: { above: 6 }, b: { above: 7 }, k: { is: calm } }', 'look_again'],
  ],
] as const;

test.each(protocols.map((whens, index) => [index, whens] as const))(
  'small protocol %i: each verdict is that of asking every set',
  (_, whens) => {
    const rules = rulesOf(whens);
    const { compiled } = guarded(rules, 'cases: []\n');
    const level = new Map(every().map((set) => [JSON.stringify(set), levelOf(compiled, set)]));
    const at = (set: object): number => level.get(JSON.stringify(set)) as number;
    const away = ({ a, b, k }: { a: number; b: number; k: string }): [number, number] => [
      Number(a !== 6) + Number(b !== 6) + Number(k !== 'calm'),
      Math.abs(a - 6) + Math.abs(b - 6) + Number(k !== 'calm'),
    ];
    const plainest = (broken: ReturnType<typeof every>): [number, number] | null =>
      broken.map(away).sort((left, right) => left[0] - right[0] || left[1] - right[1])[0] ?? null;
    const questions = [
      [
        'where: { a: { at_most: 3 } }, level_at_least: look_again',
        every().filter((set) => set.a <= 3 && at(set) < 1),
      ],
      [
        'where: { k: { is: worst } }, level_at_least: call_doctor',
        every().filter((set) => set.k === 'worst' && at(set) < 2),
      ],
      [
        'where: { sum: { at_least: 21 } }, level_at_most: look_again',
        every().filter((set) => set.a + 2 * set.b >= 21 && at(set) > 1),
      ],
      [
        'getting_worse_never_lowers: { observation: a, going: up, between: [2, 11] }',
        every().filter((set) => set.a >= 2 && set.a < 11 && at({ ...set, a: set.a + 1 }) < at(set)),
      ],
      [
        'getting_worse_never_lowers: { observation: b, going: down }',
        every().filter((set) => set.b > 0 && at({ ...set, b: set.b - 1 }) < at(set)),
      ],
      [
        'getting_worse_never_lowers: { observation: k, through: [calm, worse, worst] }',
        every().filter(
          (set) => set.k !== 'worst' && at({ ...set, k: set.k === 'calm' ? 'worse' : 'worst' }) < at(set),
        ),
      ],
    ] as const;
    for (const [asks, broken] of questions) {
      const proof = verdict(rules, asks);
      expect([asks, proof.verdict]).toEqual([asks, broken.length === 0 ? 'proven' : 'refuted']);
      if (proof.verdict !== 'refuted') continue;
      const given = /given: \{ a: (\d+), b: (\d+), k: (\w+) \}/.exec(proof.example.yaml);
      const set = { a: Number(given?.[1]), b: Number(given?.[2]), k: given?.[3] ?? '' };
      expect(broken).toContainEqual(set);
      expect([asks, away(set)]).toEqual([asks, plainest(broken)]);
    }
  },
);

test('what a limit may be changed to is part of it, unless it is asked as written', () => {
  const rules = `observations: { needs: [systolic] }
limits: { floor: { value: 90, unit: mmHg, between: [80, 100], set_by: prescriber } }
rules: [{ rule: low, when: { systolic: { at_most: floor } }, level: call_doctor, says: It suggests something., source: [council] }]`;
  const asks = 'where: { systolic: { at_most: 85 } }, level_at_least: call_doctor';
  const proof = verdict(rules, asks);
  expect(proof.verdict).toBe('refuted');
  expect(proof.verdict === 'refuted' && proof.example.yaml).toContain('floor: { value: 84');
  expect(verdict(rules, `${asks}, limits: as_written`).verdict).toBe('proven');
});

test('a rule that is silent while something is not known is found', () => {
  const rules = `observations: { needs: [systolic, heart_rate] }
rules:
  - rule: low
    when: { systolic: { at_most: 90 }, heart_rate: { known: yes, accepted: The council says so. } }
    level: call_doctor
    says: It suggests something.
    source: [council]`;
  const proof = verdict(rules, 'nothing_hides: {}');
  expect(proof.verdict === 'refuted' && proof.example.yaml.match(/given: .*/g)).toEqual([
    'given: { systolic: 90, heart_rate: 72 }',
    'given: { systolic: 90 }',
  ]);
  const excepted = verdict(rules, 'nothing_hides: { except: [heart_rate] }');
  expect(excepted.verdict === 'proven' && excepted.excepted.map(({ worst }) => worst !== null)).toEqual([
    true,
  ]);
});

test('a requirement about no set at all is not proven', () => {
  const rules = `observations: { needs: [systolic] }
rules: [{ rule: low, when: { systolic: { at_most: 90 } }, level: call_doctor, says: It suggests something., source: [council] }]`;
  const proof = verdict(rules, 'where: { systolic: { below: 90, above: 95 } }, level_at_least: call_doctor');
  expect(proof).toMatchObject({ verdict: 'not_settled', because: 'about_no_set' });
});

const lookingBack = (measure: string, when: string): string => `observations: { needs: [systolic] }
measures: { back: ${measure} }
rules: [{ rule: looks_back, title: Back, when: { back: ${when} }, level: call_doctor, says: It suggests something., source: [council] }]`;

const mostLevel = 'where: { systolic: { above: 100 } }, level_at_most: look_again';

test.each([
  ['{ lowest: systolic, over: 4 h, present_set: included, unit: mmHg }', '{ at_most: 80 }', 2],
  ['{ highest: systolic, over: 4 h, present_set: left_out, unit: mmHg }', '{ at_least: 200 }', 2],
  ['{ average: systolic, over: 4 h, present_set: left_out, unit: mmHg }', '{ at_most: 80 }', 2],
  ['{ earliest: systolic, over: 4 h, present_set: included, unit: mmHg }', '{ at_most: 80 }', 2],
  ['{ latest: systolic, over: 4 h, present_set: left_out, unit: mmHg }', '{ at_most: 80 }', 2],
  ['{ change: systolic, over: 4 h, present_set: included, unit: mmHg }', '{ at_most: -20 }', 2],
  ['{ change: systolic, over: 4 h, present_set: left_out, unit: mmHg }', '{ at_most: -20 }', 3],
  ['{ count: systolic, over: 4 h, present_set: included }', '{ at_least: 4 }', 4],
  ['{ minutes_since: systolic, over: 4 h, present_set: left_out, unit: min }', '{ between: [60, 120] }', 2],
  ['{ held: { systolic: { above: 100 } }, over: 24 h, longest_gap: 4 h, unit: min }', '{ at_least: 600 }', 4],
])('a refutation over earlier sets is a series that the evaluator replays: %s', (measure, when, sets) => {
  const rules = lookingBack(measure, when);
  const proof = verdict(rules, mostLevel);
  if (proof.verdict !== 'refuted') throw new Error(JSON.stringify(proof));
  expect(proof.example.yaml.match(/- \{ at: /g)).toHaveLength(sets);
  const cases = `protocol: example\ncases:\n${proof.example.yaml}`;
  const { results, problems } = runCases('cases.yaml', cases, guarded(rules, 'cases: []\n').compiled);
  expect(problems).toEqual([]);
  expect(results).toHaveLength(1);
});

test('what only earlier sets could show, and no series that is tried does, is not settled', () => {
  const measure =
    '{ lowest: systolic, over: 4 h, where: { systolic: { above: 300 } }, present_set: left_out, unit: mmHg }';
  expect(verdict(lookingBack(measure, '{ at_most: 80 }'), mostLevel)).toMatchObject({
    verdict: 'not_settled',
    because: 'earlier_sets',
  });
});

const all = [...bundledNames, ...lessonNames];
const stating = all.filter((name) => askable(name).protocol.requirements.length > 0);

test('an average may lie between two steps, where no whole number shows what a rule says', () => {
  const averaged = (when: string): string => `observations:
  declares:
    a: { title: a, kind: number, unit: mmHg, step: 1, possible: [0, 12], ordinary: 6 }
  needs: [a]
measures: { mean_a: { average: a, over: 4 h, present_set: included, unit: mmHg } }
rules: [{ rule: odd, when: { mean_a: ${when} }, level: call_doctor, says: It suggests something., source: [council] }]`;
  const quiet = 'where: { a: { at_least: 0 } }, level_at_most: usual_round';
  const proof = verdict(averaged('{ above: 5, below: 6 }'), quiet);
  expect(proof).toMatchObject({ verdict: 'not_settled', because: 'average' });
  expect(verdict(averaged('{ at_most: 5 }'), quiet).verdict).not.toBe('proven');
});

test('protocols state what must always hold', () => {
  expect(stating.length).toBeGreaterThan(4);
});

test.each(stating)('%s: everything that must always hold is proven', (name) => {
  const proofs = proveRequirements(askable(name));
  expect(proofs.length).toBeGreaterThanOrEqual(5);
  expect(proofs.filter(({ verdict: each }) => each !== 'proven')).toEqual([]);
});
