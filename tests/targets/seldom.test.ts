import jsonLogic from 'json-logic-js';
import { expect, test } from 'vitest';
import { readProtocol, readSet } from '../../src/index.ts';
import { answersOf as kitAnswers } from '../../src/outcome/answers.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import type { LogicFile } from '../../src/shape/generated/types.ts';
import { logicToArtefact } from '../../src/targets/json-logic/logic-to-artefact.ts';
import { answersOf, setToInputs, type Apply } from '../../src/targets/json-logic/reader.mjs';
import { bundledLadder } from '../bundled.ts';
import { loadModule } from './typescript/load-module.ts';

// What seldom comes together: a fact that is assumed and was refused, a number in the middle between two steps, a pair that contradicts.

const read = readProtocol(
  'seldom.yaml',
  `protocol: seldom
edition: 1
title: What is seldom
ladder: alder_ladder
sources: { council: { cite: "Common practice, no published source" } }
observations:
  needs: [systolic, diastolic, fine]
  helps: [technique_faults]
  declares:
    fine: { title: fine, kind: number, unit: points, step: 0.01, possible: [0, 20] }
standing:
  usual_systolic: { set_by: prescriber, if_not_stated: 120 }
faults:
  - fault: cuff_too_small
    when: { technique_faults: { one_of: [cuff_too_small] } }
    reads_high: { systolic: 30, diastolic: 10 }
    says: The truth may be lower.
    source: [council]
  - fault: cuff_off_artery
    when: { technique_faults: { one_of: [cuff_off_artery] }, systolic: { above: 100 } }
    reads_high: { systolic: 20 }
    reads_low: { systolic: 250 }
    says: The truth may be either way.
    source: [council]
rules:
  - { rule: fine_high, title: Fine, when: { fine: { at_least: 1.01 } }, level: look_again, says: It suggests something., source: [council] }
  - { rule: usual_high, title: Usual, when: { usual_systolic: { above: 150 } }, level: look_again, says: It suggests something., source: [council] }
  - { rule: low, title: Low, when: { systolic: { below: 90 }, diastolic: { below: 60 } }, level: call_doctor, says: It suggests something., source: [council] }
`,
  { ladder: bundledLadder() },
);
if (!read.protocol) throw new Error(read.problems.map(({ says }) => says).join('\n'));
const compiled = read.protocol;
const file = JSON.parse(logicToArtefact(compiled.logic, compiled.protocol)) as LogicFile;
const choices = (compiled.protocol.vocabulary.get('technique_faults')?.choices ?? []).map(
  ({ choice }) => choice,
);
const module = await loadModule(compiled);
const apply = jsonLogic.apply.bind(jsonLogic) as Apply;

interface Given {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly fine: number | null;
  readonly usual_systolic: number | null;

  readonly technique_faults: readonly string[] | null;
}
const small = ['cuff_too_small'];
const both = ['cuff_too_small', 'cuff_off_artery'];
const quiet: Given = { systolic: 120, diastolic: 80, fine: 0.5, usual_systolic: 130, technique_faults: [] };

/** What the kit says: the states of the rules, and what was refused. */
function kit(set: Given): { rules: object; refused: readonly string[]; could_be: string | undefined } {
  const told = Object.fromEntries(Object.entries(set).filter(([, value]) => value !== null));
  const { series } = readSet('set.json', JSON.stringify(told), compiled);
  if (!series) throw new Error('the set cannot be read');
  const bounds = seriesToBounds(compiled.protocol, series);
  const { rules, level } = kitAnswers(compiled, bounds);
  return {
    rules: Object.fromEntries(rules.map(({ rule, state }) => [rule.name, state])),
    refused: [...new Set(bounds.facts.refused.map(({ observation }) => observation))].sort(),
    could_be: compiled.protocol.ladder.levels[level?.couldBe ?? -1]?.name,
  };
}

test.each<[string, Given, object]>([
  ['a number below the middle', { ...quiet, fine: 1.0049 }, { fine_high: 'not_met' }],
  // In binary 1.005 times 100 is a little less than 100.5.
  ['a number in the middle', { ...quiet, fine: 1.005 }, { fine_high: 'met' }],
  ['a fact that nobody stated', { ...quiet, usual_systolic: null }, { usual_high: 'not_met' }],
  ['a fact that was refused', { ...quiet, usual_systolic: 9000 }, { usual_high: 'undecided' }],
  ['a pair that is equal', { ...quiet, systolic: 80, diastolic: 80 }, { low: 'undecided' }],
  ['a pair that is as close as can be', { ...quiet, systolic: 81, diastolic: 80 }, { low: 'not_met' }],
  ['a pair the wrong way round', { ...quiet, systolic: 50, diastolic: 55 }, { low: 'undecided' }],
  ['an impossible number', { ...quiet, systolic: 9000 }, { low: 'not_met' }],
  [
    'nothing',
    { systolic: null, diastolic: null, fine: null, usual_systolic: null, technique_faults: null },
    { low: 'undecided' },
  ],
  [
    'a fault that may hide what is low',
    { ...quiet, diastolic: 60, technique_faults: small },
    { low: 'not_met' },
  ],
  [
    'a fault that hides it',
    { ...quiet, systolic: 119, diastolic: 69, technique_faults: small },
    { low: 'undecided' },
  ],
  [
    'a fault just too small for that',
    { ...quiet, diastolic: 69, technique_faults: small },
    { low: 'not_met' },
  ],
  ['a fault beside a gap', { ...quiet, diastolic: null, technique_faults: small }, { low: 'not_met' }],
  ['two faults', { ...quiet, systolic: 139, diastolic: 69, technique_faults: both }, { low: 'undecided' }],
  [
    'two faults, just too small',
    { ...quiet, systolic: 140, diastolic: 69, technique_faults: both },
    { low: 'not_met' },
  ],
  ['a fault whose condition is not known', { ...quiet, technique_faults: null }, { low: 'not_met' }],
  [
    'what was read is low, and unsure',
    { ...quiet, systolic: 89, diastolic: 59, technique_faults: small },
    { low: 'met' },
  ],
])('%s: kit, JSON Logic, module and columns say the same', (_, set, states) => {
  const said = kit(set);
  expect(said.rules).toMatchObject(states);
  const { inputs, refused } = setToInputs(file, apply, { ...set });
  const library = answersOf(file, apply, inputs);
  expect({ rules: library.rules, refused: [...refused].sort(), could_be: library.level?.could_be }).toEqual(
    said,
  );
  const outcome = module.evaluate({ ...set });
  expect({
    rules: outcome.rules,
    refused: [...outcome.refused].sort(),
    could_be: outcome.level?.could_be,
  }).toEqual(said);
  const column = (value: number | null): number[] => [value ?? -32_768];
  const row = module.packColumns(
    {
      systolic: column(set.systolic),
      diastolic: column(set.diastolic),
      fine: column(set.fine === null ? null : (inputs['fine:low'] ?? null)),
      usual_systolic: column(set.usual_systolic),
      technique_faults: [
        set.technique_faults?.reduce((mask, each) => mask + 2 ** choices.indexOf(each), 0) ?? -2_147_483_648,
      ],
    },
    1,
  );
  const { rules, level } = module.unpack(row, 0);
  expect({ rules, could_be: level?.could_be }).toEqual({ rules: said.rules, could_be: said.could_be });
  expect(((row[0] ?? 0) & (1 << 19)) !== 0).toBe(said.refused.length > 0);
});
