import { expect, test } from 'vitest';
import { documentToCases } from '../../../src/cases/document-to-cases.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import { seriesToBounds } from '../../../src/series/series-to-bounds.ts';
import { not } from '../../../src/logic/operators.ts';
import { questionToSmt } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets, type AskedSets } from '../../../src/targets/smt-lib/sets.ts';
import { boundsOf, protocolOf } from '../../agreement/kit.ts';
import { askable, bundledNames, bundledText, lessonNames } from '../../bundled.ts';
import { apart, scriptFor } from './held.ts';
import { judges } from './judges.ts';

const anything: AskedSets = { given: 'any', limits: 'within_bounds' };

/** So many cases of a protocol, from all over it. */
const casesEach = 6;

/** The readings of cases of a protocol: two of a case with earlier values or faults of technique. */
function casesOf(name: string): {
  readonly compiled: Compiled;
  readonly all: readonly Float64Array[];
  readonly told: readonly string[];
} {
  const compiled = askable(name);
  const { document } = yamlToDocument('cases.yaml', bundledText(`${name}/cases.yaml`));
  const cases = document ? documentToCases(document, compiled.protocol).cases : [];
  const step = Math.ceil(cases.length / casesEach);
  const read = cases
    .filter((_, index) => index % step === 0)
    .flatMap((each) => {
      const { narrow, wide } = seriesToBounds(compiled.protocol, each.series);
      const told = `${name}: ${each.name}`;
      return narrow === wide
        ? [{ told, inputs: narrow }]
        : [narrow, wide].map((inputs) => ({ told, inputs }));
    });
  return { compiled, all: read.map(({ inputs }) => inputs), told: read.map(({ told }) => told) };
}

const bundled = [...bundledNames, ...lessonNames].map(casesOf);

test.for(judges)(
  'cases of the bundled protocols are among the sets, and are answered alike ($name)',
  ({ ask }, context) => {
    const told = bundled.flatMap((each) => each.told);
    expect(told.length).toBeGreaterThan(60);
    const answers = ask(
      bundled.map(({ compiled, all }) => scriptFor(compiled, anything, all)),
      context,
    );
    expect(apart(answers).map((index) => told[index])).toEqual([]);
  },
);

const ladder = `ladder: bands_ladder
edition: 1
title: Two levels
levels:
  - { level: usual_round, title: Usual round, reassess: 12 h }
  - { level: call_now, title: Call now, tell: [{ who: Nurse in charge }], respond: 15 min, reassess: 1 h }
`;

/** A number whose possible range has three bands of ages, read with the age or without it. */
const banded = (age: boolean): string => `protocol: bands
edition: 1
title: Bands of ages
ladder: bands_ladder
sources: { council: { cite: "Common practice, no published source" } }
observations:
  needs: [${age ? 'age, ' : ''}strength]
  declares:
    strength:
      title: strength
      kind: number
      unit: points
      step: 1
      possible: [{ age_below: 1 y, from: 0, to: 9 }, { age_below: 12 y, from: 5, to: 30 }, { from: 20, to: 90 }]
rules:
  - { rule: strong, title: Strong, when: { strength: { at_least: 10 } }, level: call_now, says: It suggests something., source: [council] }
${age ? '  - { rule: small, title: Small, when: { age: { below: 1 y } }, level: call_now, says: It suggests something., source: [council] }' : ''}
`;

/** Ages in months, and a range of them, that touch one band, two and all; with and without the strength. */
const sets = ['3 mo', '11 mo', '12 mo', '100 mo', '144 mo', '200 mo', null].flatMap((age) =>
  [null, 0, 9, 12, 30, 60].map((strength) =>
    JSON.stringify({
      ...(age === null ? {} : { age: { value: Number(age.split(' ')[0]), unit: 'mo' } }),
      ...(strength === null ? {} : { strength }),
    }),
  ),
);

test.for(judges)('what is possible is what is possible at the age ($name)', ({ ask }, context) => {
  const compiled = [true, false].map((age) => protocolOf(banded(age), ladder));
  const scripts = compiled.map((each) =>
    scriptFor(
      each,
      anything,
      sets.flatMap((set) => {
        const { narrow, wide } = boundsOf(each, set);
        return [narrow, wide];
      }),
    ),
  );
  expect(apart(ask(scripts, context))).toEqual([]);
});

test.for(judges)('a missing number is not taken for possible at another age ($name)', ({ ask }, context) => {
  const compiled = protocolOf(banded(true), ladder);
  const rule = (name: string, part: 'certain' | 'possible'): ReturnType<typeof not> =>
    compiled.logic.rules.find((each) => each.rule === name)?.[part] ?? false;
  const asked = (sets_: Partial<AskedSets>, holds: ReturnType<typeof not>): string =>
    questionToSmt({ ...compiled, sets: { ...completeSets, ...sets_ }, holds, says: '' });
  const missing = new Map([['strength', 'missing']] as const);
  const years = (from: number, to: number): NonNullable<AskedSets['ranges']> =>
    new Map([['age', [from * 5844, to * 5844]]]);
  const answers = ask(
    [
      asked({ absent: missing, ranges: years(12, 80) }, not(rule('strong', 'certain'))),
      asked({ absent: missing, ranges: years(11, 80) }, not(rule('strong', 'certain'))),
      asked({ absent: missing, ranges: years(0, 0.5) }, rule('strong', 'possible')),
      asked({ absent: missing, ranges: years(0, 1) }, rule('strong', 'possible')),
      asked({ ranges: new Map([['strength', [31, 90]]]) }, rule('small', 'possible')),
    ],
    context,
  );
  expect(answers).toEqual(['unsat', 'sat', 'unsat', 'sat', 'unsat']);
});
