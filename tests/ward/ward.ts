import {
  readLadder,
  readProtocol,
  readSet,
  readWard,
  evaluateWard,
  type Ward,
  type WardOutcome,
} from '../../src/index.ts';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect } from 'vitest';
import { files } from '../schema/schemas.ts';
import type { Given } from '../outcome/ask.ts';

const ladderText = `
ladder: small_ladder
edition: 1
levels:
  - { level: round, reassess: 12 h }
  - { level: look, tell: [{ who: Nurse }], respond: 1 h, reassess: 4 h, step_down: { sets_in_a_row: 1, over: 4 h, agreed_by: Nurse } }
  - { level: call, tell: [{ who: Day doctor, from: "08:00", to: "20:00" }, { who: Night doctor, from: "20:00", to: "08:00" }, { who: Nurse in charge }], respond: 30 min, reassess: 30 min, if_no_answer: { after: 15 min, tell: Registrar }, step_down: { sets_in_a_row: 2, over: 1 h, agreed_by: Day doctor } }
`;

const ladder = readLadder('ladder.yaml', ladderText).ladder;

/** A protocol on the small ladder: its parts in YAML below a heading. It must pass the check. */
function member(name: string, parts: string): NonNullable<ReturnType<typeof readProtocol>['protocol']> {
  const heading = `protocol: ${name}\nedition: 1\ntitle: The ${name}\nladder: small_ladder\nsources: { test: { cite: "Common practice, no published source" } }\n`;
  const { protocol, problems } = readProtocol(`${name}.yaml`, heading + parts, { ladder });
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  return protocol;
}

export const pressure = member(
  'pressure',
  `observations: { needs: [systolic] }
rules:
  - { rule: low, when: { systolic: { at_most: 90 } }, level: call, says: It suggests a low pressure., because: Little is left., ask: [How do the hands feel?], do: [{ id: again, text: Take it again by hand }], source: [test] }
  - { rule: lowish, when: { systolic: { at_most: 100 } }, level: look, says: It suggests a soft sign., do: [{ id: again, text: Take it again by hand }, { id: set, text: Take a full set }], source: [test] }
`,
);
export const rate = member(
  'rate',
  `observations: { needs: [heart_rate], helps: [paced] }
applies_when: { age: { at_least: 16 y } }
otherwise: Use the children's chart.
rules:
  - { rule: fast, when: { heart_rate: { above: 100 } }, level: look, says: It suggests a fast rate., ask: [How do the hands feel?], do: [{ id: set, text: Take a full set }], source: [test] }
  - { rule: paced, when: { paced: { is: yes } }, says: The pacemaker sets the rate., source: [test] }
`,
);
export const technique = member(
  'technique',
  `observations: { needs: [technique_faults], helps: [systolic] }
faults:
  - { fault: arm_hangs, title: Arm hangs, when: { technique_faults: { one_of: [arm_below_heart] } }, reads_high: { systolic: 10 }, says: It reads too high., source: [test] }
rules:
  - { rule: told, when: { technique_faults: { one_of: [arm_below_heart] } }, says: Take it again., source: [test] }
  - { rule: beyond, when: { systolic: { at_least: 260 } }, level: look, says: It suggests a fault., source: [test] }
`,
);

/** A ward policy from what stands below its heading; it must pass the check. */
export function ward(parts: string, members = [pressure, rate]): Ward {
  const protocols = new Map(members.map((each) => [each.protocol.name, each]));
  const heading =
    'ward: small_ward\nedition: 1\ntitle: A small ward\nladder: small_ladder\nsources: { test: { cite: "Common practice, no published source" } }\n';
  const read = readWard('ward.yaml', heading + parts, { ladder, protocols });
  if (!read.ward) throw new Error(read.problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  return read.ward;
}

export const both = 'reads_with: [{ protocol: pressure, edition: 1 }, { protocol: rate, edition: 1 }]\n';

const checker = new Ajv2020({ schemas: files.map(({ schema }) => schema), allowUnionTypes: true });
const hasShape = checker.getSchema('ward_outcome.schema.json');

/** The outcome of a ward policy. Whatever is asked, it has the shape of schema/ward_outcome.schema.json. */
export function wardOutcome(of: Ward, set: Given): WardOutcome {
  const { series, problems } = readSet('set.json', JSON.stringify(set), of);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  const made = evaluateWard(of, series);
  const isValid = hasShape?.(JSON.parse(JSON.stringify(made)));
  expect(isValid, JSON.stringify(hasShape?.errors)).toBe(true);
  return made;
}
