import { expect, test } from 'vitest';
import { readLadder, readProtocol, type Problem } from '../../src/index.ts';

// What grows by naming itself twice is found without being built.

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: high }]',
);
const head = `protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic] }
`;

function read(yaml: string): { steps: number | null; problems: readonly Problem[]; seconds: number } {
  const start = performance.now();
  const { protocol, problems } = readProtocol('small.yaml', head + yaml, { ladder });
  return {
    steps: protocol?.logic.steps.length ?? null,
    problems,
    seconds: (performance.now() - start) / 1000,
  };
}

const rule = (index: number): string => {
  const when =
    index === 0
      ? '{ systolic: { below: 90 } }'
      : `{ any: [{ rule: r${index - 1} }, { rule: r${index - 1} }] }`;
  return `  - { rule: r${index}, when: ${when}, says: It suggests something., source: [council] }`;
};

const rules = (count: number): string =>
  `rules:\n${Array.from({ length: count }, (_, index) => rule(index)).join('\n')}\n`;

test('forty rules, each naming the last one twice, are as long as they are written', () => {
  const [twenty, forty] = [read(rules(20)), read(rules(40))];
  expect(forty.problems).toEqual([]);
  expect(forty.steps).toBeGreaterThan(0);
  expect(forty.steps).toBeLessThanOrEqual(2 * (twenty.steps ?? 0) + 2);
});

test('sixty measures, each squaring the last one, are found to grow past what is exact', () => {
  const measures = Array.from({ length: 60 }, (_, index) =>
    index === 0
      ? '  m0: { formula: systolic * systolic }'
      : `  m${index}: { formula: m${index - 1} * m${index - 1} }`,
  );
  const { problems, seconds } = read(`${rules(1)}measures:\n${measures.join('\n')}\n`);
  expect(problems.map(({ code }) => code)).toContain('number_too_large');
  // What is built on a number that is already too large is not told of again.
  expect(problems.length).toBeLessThan(5);
  expect(seconds).toBeLessThan(5);
});
