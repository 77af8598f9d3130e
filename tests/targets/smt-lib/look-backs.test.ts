import fc from 'fast-check';
import { expect, test } from 'vitest';
import { and, type Logical } from '../../../src/logic/operators.ts';
import { ruleIs } from '../../../src/targets/smt-lib/answers.ts';
import { questionToSmt } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets, type AskedSets } from '../../../src/targets/smt-lib/sets.ts';
import { boundsOf, protocolOf } from '../../agreement/kit.ts';
import { ladderText } from '../../agreement/protocols.ts';
import { seed } from '../../agreement/settings.ts';
import { apart, scriptFor } from './held.ts';
import { judges } from './judges.ts';

// Look backs over one observation in one window: what is said of two of them at once must hold of every series.

const values = ['highest', 'lowest', 'average', 'earliest', 'latest', 'change', 'count'] as const;

const rule = (name: string, when: string): string =>
  `  - { rule: ${name}, title: ${name}, when: ${when}, level: call_now, says: It suggests something., source: [council] }`;

/** A protocol with each look back over all sets, and over those in which the wrapping was large. */
const text = `protocol: looking_back
edition: 1
title: Looking back
ladder: made_up_ladder
sources: { council: { cite: "Common practice, no published source" } }
observations:
  needs: [number, wrapping]
  declares:
    number: { title: number, kind: number, unit: points, step: 1, possible: [-20, 60] }
    wrapping: { title: wrapping, kind: choice, choices: [{ choice: large, title: Large }, { choice: small, title: Small }] }
measures:
${values.map((kind) => `  any_${kind}: { ${kind}: number, over: 4 h, unit: points }`).join('\n')}
${values.map((kind) => `  large_${kind}: { ${kind}: number, over: 4 h, where: { wrapping: { is: large } }, unit: points }`).join('\n')}
  since: { minutes_since: number, over: 2 h, unit: min }
  held: { held: { number: { at_least: 5 } }, over: 4 h, unit: min }
rules:
${[
  rule('lowest_high', '{ any_lowest: { above: 30 } }'),
  rule('average_low', '{ any_average: { below: 30 } }'),
  rule('average_high', '{ any_average: { above: 40 } }'),
  rule('highest_low', '{ any_highest: { below: 40 } }'),
  rule('latest_high', '{ any_latest: { above: 50 } }'),
  rule('earliest_low', '{ any_earliest: { below: 10 } }'),
  rule('little_changed', '{ any_change: { between: [-5, 5] } }'),
  rule('none_counted', '{ any_count: { below: 1 } }'),
  rule('large_lowest_high', '{ large_lowest: { above: 30 } }'),
  rule('large_latest_low', '{ large_latest: { below: 30 } }'),
  rule('long_held', '{ held: { above: 250 min } }'),
  rule('long_since', '{ since: { at_least: 120 min } }'),
  rule('since_its_beginning', '{ since: { between: [120 min, 121 min] } }'),
  rule(
    'others',
    `{ any: [${values
      .slice(3)
      .map((kind) => `{ large_${kind}: { above: 3 } }`)
      .join(', ')}, { large_highest: { above: 3 } }, { large_average: { above: 3 } }] }`,
  ),
].join('\n')}
`;

const compiled = protocolOf(text, ladderText);

const given = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: -20, max: 60 }) },
  fc
    .tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 20, max: 60 }))
    .map(([low, high]) => ({ low, high })),
  fc.constant(undefined),
);
const set = fc.record({ number: given, wrapping: fc.constantFrom('large', 'small', undefined) });
const series = fc.array(set, { minLength: 1, maxLength: 5 }).map((sets) =>
  JSON.stringify({
    sets: sets.map((each, index) => ({
      at: `2026-03-02T${String(8 + index).padStart(2, '0')}:00:00Z`,
      ...each,
    })),
  }),
);

test.for(judges)('what is said of look backs holds of every series ($name)', ({ ask }, context) => {
  const all = fc.sample(series, { numRuns: 60, seed });
  const inputs = all.map((each) => boundsOf(compiled, each).narrow);
  const answers = ask([scriptFor(compiled, { given: 'any', limits: 'as_written' }, inputs)], context);
  expect(apart(answers).map((index) => all[index])).toEqual([]);
});

test.for(judges)('complete series are among the complete sets ($name)', ({ ask }, context) => {
  const complete = fc
    .sample(series, { numRuns: 200, seed })
    .filter(
      (each) =>
        !each.includes('low"') &&
        each.split('number').length === each.split('at"').length &&
        each.split('wrapping').length === each.split('at"').length,
    );
  expect(complete.length).toBeGreaterThan(20);
  const inputs = complete.slice(0, 40).map((each) => boundsOf(compiled, each).narrow);
  expect(
    apart(ask([scriptFor(compiled, completeSets, inputs)], context)).map((index) => complete[index]),
  ).toEqual([]);
});

const met = (name: string): Logical => ruleIs(compiled.logic, name, 'met');

/** What can be at once, and what cannot, whatever the earlier sets were. */
const rows: readonly (readonly [
  rules: readonly string[],
  answer: 'sat' | 'unsat',
  given?: AskedSets['given'],
])[] = [
  [['lowest_high', 'average_high'], 'sat'],
  [['lowest_high', 'average_low'], 'unsat'],
  [['average_high', 'highest_low'], 'unsat'],
  [['highest_low', 'latest_high'], 'unsat', 'any'],
  [['latest_high', 'earliest_low'], 'sat'],
  [['latest_high', 'earliest_low', 'little_changed'], 'unsat', 'any'],
  [['none_counted', 'latest_high'], 'unsat', 'any'],
  [['large_lowest_high', 'large_latest_low'], 'unsat', 'any'],
  // The large ones are other sets than all of them.
  [['lowest_high', 'large_latest_low'], 'sat'],
  // Longer ago than its window is never.
  [['long_held'], 'unsat', 'any'],
  [['long_since'], 'sat'],
  [['since_its_beginning'], 'unsat', 'any'],
];

test.for(judges)('look backs that exclude each other are never both found ($name)', ({ ask }, context) => {
  const scripts = rows.map(([rules, , given_ = 'complete']) =>
    questionToSmt({
      ...compiled,
      sets: { ...completeSets, given: given_ },
      holds: and(...rules.map(met)),
      says: rules.join(' and '),
    }),
  );
  const answers = ask(scripts, context);
  expect(rows.map(([rules], index) => [...rules, answers[index]])).toEqual(
    rows.map(([rules, answer]) => [...rules, answer]),
  );
});
