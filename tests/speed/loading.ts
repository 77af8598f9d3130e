import { readLadder, readProtocol, runCases, type Compiled } from '../../src/index.ts';
import { quickest } from './clock.ts';
import type { Figure } from './run.ts';

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: high }]',
);

const head = `protocol: many
edition: 1
title: Many rules
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, heart_rate] }
rules:
`;

/** A protocol of so many rules, each with thresholds of its own. */
const manyRules = (count: number): string =>
  head +
  Array.from({ length: count }, (_, index) => {
    const when = `{ systolic: { below: ${60 + (index % 100)} }, heart_rate: { above: ${50 + (index % 130)} } }`;
    return `  - { rule: r${index}, when: ${when}, level: high, says: Look., source: [council] }\n`;
  }).join('');

const manyCases = (count: number): string =>
  `protocol: many\ncases:\n${Array.from(
    { length: count },
    (_, index) =>
      `  - { case: c${index}, given: { systolic: ${90 + (index % 70)}, heart_rate: ${45 + (index % 5)} }, expect: { level: { at_least: low } } }\n`,
  ).join('')}`;

function load(text: string): Compiled {
  const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder });
  if (!protocol)
    throw new Error(
      problems
        .map(({ line, says }) => `${line}: ${says}`)
        .join('\n')
        .slice(0, 2000),
    );
  return protocol;
}

const milliseconds = (found: number): string => `${found < 10 ? found.toFixed(1) : Math.round(found)} ms`;

/** How long it takes to load protocols of many rules and to run many cases, after warm-up. */
export function measureLoading(): readonly Figure[] {
  // A text of more rules than about 1,800 such small ones, or cases, is refused before it is read.
  const [few, some, many] = [manyRules(150), manyRules(500), manyRules(1500)];
  const [forFewRules, forSome, forMany] = [few, some, many].map((text) =>
    quickest(() => void load(text)),
  ) as [number, number, number];
  const protocol = load(manyRules(10));
  const run = (text: string): void => {
    const { results, problems } = runCases('cases.yaml', text, protocol);
    if (problems.length > 0 || results.length === 0) throw new Error(problems[0]?.says ?? 'no case was run');
  };
  const [fewCases, manyCasesText] = [manyCases(200), manyCases(2000)];
  const [forFew, forMore] = [quickest(() => run(fewCases)), quickest(() => run(manyCasesText))];
  const within = (what: string, found: number, aim: number): Figure => ({
    what,
    found: milliseconds(found),
    aim: `within ${aim} ms`,
    reached: found <= aim,
  });
  const growth = (what: string, found: number): Figure => ({
    what,
    found: found.toFixed(2),
    aim: 'at most 1.5',
    reached: found <= 1.5,
  });
  return [
    within('loading and checking 500 rules', forSome, 500),
    growth('cost of a rule, among 1,500 to among 150', forMany / forFewRules / 10),
    within('10,000 cases, in five texts of 2,000', 5 * forMore, 1000),
    growth('cost of a case, among 2,000 to among 200', forMore / forFew / 10),
  ];
}
