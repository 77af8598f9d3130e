import { expect, test } from 'vitest';
import { proveRequirements, readLadder, readProtocol, type Compiled, type Ladder } from '../../src/index.ts';

const levels = `ladder: stairs
edition: 1
levels: [{ level: quiet }, { level: told }, { level: called }]
`;

const states = `hazards: { h: { harm: Harm., severity: serious, owner: The council } }
must_always:
  - { requirement: low_is_told, where: { systolic: { at_most: 90 } }, level_at_least: told, controls: [h] }
  - { requirement: faster_is_never_calmer, getting_worse_never_lowers: { observation: heart_rate, going: up }, controls: [h] }
  - { requirement: a_fault_is_never_calmer, fault_never_lowers: yes, controls: [h] }
  - { requirement: nothing_hides_here, nothing_hides: {}, controls: [h] }
`;

function ladderOf(text: string): Ladder {
  const { ladder, problems } = readLadder('ladder.yaml', text);
  if (!ladder) throw new Error(problems.map(({ says }) => says).join('\n'));
  return ladder;
}

function standing(ladder: Ladder, when: string, more = ''): Compiled {
  const observation = /^\{ (\w+)/.exec(when)?.[1] ?? '';
  const text = `protocol: example
edition: 1
title: An example
ladder: stairs
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [${observation}] }
rules: [{ rule: low, when: ${when}, level: called, says: It suggests something., source: [council] }]
${more}`;
  const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder });
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  return protocol;
}

const verdicts = (compiled: Compiled): unknown[] =>
  proveRequirements(compiled).map(({ requirement, verdict }) => [
    requirement.from,
    requirement.name,
    verdict,
  ]);

test('what a ladder states is asked of each protocol that reads what it names', () => {
  const ladder = ladderOf(levels + states);
  expect(verdicts(standing(ladder, '{ systolic: { at_most: 90 } }'))).toEqual([
    ['stairs', 'low_is_told', 'proven'],
    ['stairs', 'nothing_hides_here', 'proven'],
  ]);
  expect(verdicts(standing(ladder, '{ systolic: { at_most: 89 } }'))).toEqual([
    ['stairs', 'low_is_told', 'refuted'],
    ['stairs', 'nothing_hides_here', 'proven'],
  ]);
  expect(verdicts(standing(ladder, '{ heart_rate: { at_most: 40 } }'))).toEqual([
    ['stairs', 'faster_is_never_calmer', 'refuted'],
    ['stairs', 'nothing_hides_here', 'proven'],
  ]);
});

test('a file may state the same name, with a hazard of the same name, and both are asked', () => {
  const own = `hazards: { h: { harm: Another harm., severity: slight, owner: Somebody } }
must_always: [{ requirement: low_is_told, where: { systolic: { at_most: 80 } }, level_at_least: called, controls: [h] }]
`;
  const compiled = standing(ladderOf(levels + states), '{ systolic: { at_most: 85 } }', own);
  expect(verdicts(compiled)).toEqual([
    [null, 'low_is_told', 'proven'],
    ['stairs', 'low_is_told', 'refuted'],
    ['stairs', 'nothing_hides_here', 'proven'],
  ]);
  const { hazards, requirements } = compiled.protocol;
  const harms = requirements.map(({ controls }) => controls.map((name) => hazards.get(name)?.harm));
  expect(harms).toEqual([['Another harm.'], ['Harm.'], ['Harm.']]);
});

test('what a ladder states changes no digest of what stands on it', () => {
  const [without, stating] = [ladderOf(levels), ladderOf(levels + states)];
  expect(without).not.toHaveProperty('states');
  const [before, after] = [without, stating].map(
    (ladder) => standing(ladder, '{ systolic: { at_most: 90 } }').protocol,
  );
  expect(after?.logicDigest).toBe(before?.logicDigest);
  expect(after?.digest).toBe(before?.digest);
  expect(after?.ladder.states).toBeDefined();
});

test.each([
  ['systolic: { at_most', 'sistolic: { at_most', /sistolic/, 6],
  ['level_at_least: told', 'level_at_least: tolt', /tolt/, 6],
  ['controls: [h] }\n  - { requirement: faster', 'controls: [g] }\n  - { requirement: faster', /g/, 6],
  ['fault_never_lowers: yes, ', '', /a_fault_is_never_calmer/, 8],
  ['level_at_least: told', 'rule_met: low', /rule_met/, 6],
])('what cannot be read in a ladder is refused at its place: %s', (part, by, says, line) => {
  expect(levels + states).toContain(part);
  const { ladder, problems } = readLadder('ladder.yaml', (levels + states).replace(part, by));
  expect(ladder).toBeNull();
  expect(problems.some((each) => says.test(each.says) && each.line === line)).toBe(true);
});
