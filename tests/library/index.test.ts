import { expect, test } from 'vitest';
import { evaluate, readLadder, readProtocol, readSet, runCases, showProblem } from '../../src/index.ts';
import { bundledText } from '../bundled.ts';

// The examples of the docstrings in src/index.ts, run.

const lesson = 'lessons/one_threshold';
const { ladder } = readLadder('ladder.yaml', bundledText('alder_ladder/ladder.yaml'));
const { protocol } = readProtocol('protocol.yaml', bundledText(`${lesson}/protocol.yaml`), { ladder });
if (!protocol) throw new Error('the lesson has problems');

test('text in, an explained outcome out', () => {
  const { series } = readSet('set.json', '{ "systolic": 88 }', protocol);
  if (!series) throw new Error('the set has problems');
  const outcome = evaluate(protocol, series);
  expect(outcome.level).toEqual({ at_least: 'call_doctor', could_be: 'call_doctor', settled: true });
  expect(outcome.rules[0]?.decided_by).toEqual([
    'systolic pressure 88 mmHg is 2 below 90; the rule asks for 90 or less',
  ]);
});

test('of an empty set the level is null: missing is never normal', () => {
  const { series } = readSet('set.json', '{}', protocol);
  expect(series && evaluate(protocol, series).level?.at_least).toBeNull();
});

test('the lowest level of the ladder is the first', () => {
  expect(ladder?.levels[0]?.name).toBe('usual_round');
});

test('a protocol that lacks nearly everything is refused at its first line', () => {
  const { protocol: none, problems } = readProtocol('protocol.yaml', 'protocol: x', { ladder });
  expect(none).toBeNull();
  expect(problems[0]?.line).toBe(1);
  expect(showProblem(problems[0] as NonNullable<(typeof problems)[0]>)).toContain('protocol.yaml:1:');
});

test('a key that stands twice in a set is a problem', () => {
  const { series, problems } = readSet('set.json', '{ "systolic": 104, "systolic": 48 }', protocol);
  expect(series).toBeNull();
  expect(problems[0]?.code).toBe('key_twice');
});

test('cases come out as expected', () => {
  const { results } = runCases('cases.yaml', bundledText(`${lesson}/cases.yaml`), protocol);
  expect(results.length).toBeGreaterThan(0);
  expect(results.every(({ differences }) => differences.length === 0)).toBe(true);
});

test('an overdue review is a warning, and the protocol still answers', () => {
  const text = `${bundledText(`${lesson}/protocol.yaml`)}review_by: 2020-01-31\n`;
  const { protocol: read, problems } = readProtocol('protocol.yaml', text, { ladder, today: '2026-03-02' });
  expect(read).not.toBeNull();
  expect(problems.map(({ code }) => code)).toEqual(['review_overdue']);
});
