import { expect, test } from 'vitest';
import { readProtocol, runCases } from '../../src/index.ts';
import { bundledLadder, bundledText } from '../bundled.ts';

// A slip of the pen at ten thresholds of the bundled protocols: each is noticed by a case that is named.

const slips = [
  ['pressure_reading', 'when: { systolic: { below: 80 } }', 'when: { systolic: { below: 90 } }'],
  ['pressure_reading', 'heart_rate: { above: 90 }', 'heart_rate: { above: 100 }'],
  ['pressure_reading', 'respiratory_rate: { above: 20 }', 'respiratory_rate: { at_least: 20 }'],
  ['pressure_reading', 'shock_index: { above: 0.9 }', 'shock_index: { above: 1 }'],
  [
    'pressure_reading',
    'below_own_usual_systolic: { at_least: 40 }',
    'below_own_usual_systolic: { at_least: 41 }',
  ],
  ['pressure_reading', 'gap_change: { at_least: 15 }', 'gap_change: { at_least: 20 }'],
  ['early_warning_score', '{ at_most: 24, points: 2 }', '{ at_most: 25, points: 2 }'],
  ['early_warning_score', '{ at_most: 219, points: 0 }', '{ at_most: 220, points: 0 }'],
  ['early_warning_score', '{ at_most: 35.0 °C, points: 3 }', '{ at_most: 35.5 °C, points: 3 }'],
  ['early_warning_score', 'score_total: { at_least: 7 }', 'score_total: { at_least: 8 }'],
] as const;

function redIn(name: string, protocolText: string): string[] {
  const { protocol, problems } = readProtocol('protocol.yaml', protocolText, { ladder: bundledLadder() });
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  const { results } = runCases('cases.yaml', bundledText(`${name}/cases.yaml`), protocol);
  return results.filter(({ differences }) => differences.length > 0).map((each) => each.name);
}

test.each(slips)('%s: %s written as %s turns a named case red', (name, from, to) => {
  const text = bundledText(`${name}/protocol.yaml`);
  // What must always hold says some of them again.
  const asked = text.slice(0, text.indexOf('\nhazards:'));
  expect(asked.split(from)).toHaveLength(2);
  const red = redIn(name, asked.replace(from, to) + text.slice(asked.length));
  expect(red.length).toBeGreaterThan(0);
  expect(red[0]).toMatch(/\w/);
});

test.each(['pressure_reading', 'early_warning_score'])('%s: as it stands no case is red', (name) => {
  expect(redIn(name, bundledText(`${name}/protocol.yaml`))).toEqual([]);
});
