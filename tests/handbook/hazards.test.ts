import { expect, test } from 'vitest';
import { handbookToHtml } from '../../src/handbook/handbook.ts';
import { readRequirement } from '../../src/handbook/sentences/requirements.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';
import { unplaced } from '../../src/handbook/sentences/unplaced.ts';
import type { Compiled, Ward } from '../../src/index.ts';
import { proveRequirements } from '../../src/review/requirements/prove.ts';
import { teacherOf } from '../../src/teach/teacher.ts';
import { protocolOf } from '../agreement/kit.ts';
import { ladderText } from '../agreement/protocols.ts';
import { bundledWard } from '../bundled.ts';
import { logicUnder, opened, type Part } from './page.ts';

const pageOf = (reads: Compiled | Ward): Part =>
  opened(
    handbookToHtml({
      reads,
      teacher: teacherOf(reads, null),
      accepted: [],
      proofs: proveRequirements(reads),
      changes: null,
      edition: null,
    }),
  );

const stating = (harm: string, requirements: string): Compiled =>
  protocolOf(
    `protocol: small
edition: 1
title: Small
ladder: made_up_ladder
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, heart_rate] }
rules:
  - { rule: low, title: Low, when: { systolic: { below: 90 }, heart_rate: { below: 150 } }, level: call_now, says: Low., source: [council] }
hazards: { unseen: { harm: ${JSON.stringify(harm)}, severity: life_threatening, owner: The council } }
must_always:
${requirements}
`,
    ladderText,
  );

const broken =
  '  - { requirement: low_calls, where: { systolic: { at_most: 80 } }, level_at_least: call_now, controls: [unseen], because: It is low., source: [council] }';
const held =
  '  - { requirement: low_and_slow_calls, where: { systolic: { at_most: 80 }, heart_rate: { below: 100 } }, level_at_least: call_now, controls: [unseen] }';

const textOf = (part: Part | null): string => (part?.textContent ?? '').replaceAll(/\s+/g, ' ');

test('a requirement that is refuted stands with the set that breaks it, and its hazard with nothing that is proven', () => {
  const page = pageOf(stating('Nobody comes.', broken));
  const section = textOf(page.querySelector('.hazards'));
  expect(section).toContain('Nobody comes. Life-threatening The council low calls: REFUTED');
  expect(section).toContain('Nothing that controls this is proven.');
  expect(section).toContain('True of the rules as written, not of patients.');
  expect(section).toContain('The level of this set is "usual round"; at least "call now" is required.');
  expect(page.querySelector('.hazards pre')?.textContent).toMatch(/given: \{.*heart_rate: 150.*\}/);
  expect(section).toContain('Why: It is low.');
  expect(section).toContain('Sources: Common practice, no published source');
});

test('where one of two is proven, the hazard has something that controls it, and the other is still told', () => {
  const section = textOf(pageOf(stating('Nobody comes.', `${broken}\n${held}`)).querySelector('.hazards'));
  expect(section).not.toContain('Nothing that controls this is proven.');
  expect(section).toContain('low calls: REFUTEDlow and slow calls: proven');
  expect(section).toContain('Proven: no possible set breaks it.');
});

test('what is not settled says so, and proves nothing', () => {
  const ofNoSet =
    '  - { requirement: of_no_set, where: { systolic: { below: 60, above: 80 } }, level_at_least: call_now, controls: [unseen] }';
  const section = textOf(pageOf(stating('Nobody comes.', ofNoSet)).querySelector('.hazards'));
  expect(section).toContain('of no set: NOT SETTLED');
  expect(section).toContain('Nothing that controls this is proven.');
  expect(section).toContain('so it would hold of nothing');
});

test('the digest that was asked is the one on every page', () => {
  const reads = stating('Nobody comes.', held);
  const short = `digest ${reads.protocol.digest.slice(7, 19)}`;
  expect(textOf(pageOf(reads).querySelector('.hazards'))).toContain(`of the rules with the ${short}`);
});

test('what stands on the page reads back to what was asked', () => {
  const reads = stating('Nobody comes.', `${broken}\n${held}`);
  const page = pageOf(reads);
  const speaker = speakerOf(reads.protocol);
  for (const { name, asks, where, limits } of reads.protocol.requirements)
    expect(readRequirement(logicUnder(page, name), speaker)).toEqual({
      asks,
      where: where && unplaced(where, speaker),
      limits,
    });
});

test('where nothing is stated the handbook says that nothing was proven', () => {
  const { hazards, requirements, ...rest } = bundledWard();
  expect([hazards, requirements]).toBeDefined();
  const section = textOf(pageOf({ ...rest, hazards: new Map(), requirements: [] }).querySelector('.hazards'));
  expect(section).toContain('No hazard is stated here');
});

test('a harm that would be markup stays a text', () => {
  const page = pageOf(stating('<script>alert(1)</script>', held));
  expect(page.querySelectorAll('script').length).toBe(0);
  expect(textOf(page.querySelector('.hazards tbody th'))).toBe('<script>alert(1)</script>');
});
