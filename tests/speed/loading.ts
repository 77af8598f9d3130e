import { documentToCases } from '../../src/cases/document-to-cases.ts';
import { runCase } from '../../src/cases/run-case.ts';
import type { Document } from '../../src/document/document.ts';
import { jsonToDocument } from '../../src/document/json-to-document.ts';
import { documentToChecked } from '../../src/review/document-to-checked.ts';
import { vitalSigns } from '../../src/vocabulary/vital-signs.ts';
import { readLadder, readProtocol, runCases, type Compiled } from '../../src/index.ts';
import { quickest } from './clock.ts';
import type { Figure } from './figure.ts';

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

/** The same as JSON: of a YAML text more than about 1,800 such small rules, or 2,000 such cases, are refused unread. */
const rulesAsJson = (count: number): string =>
  JSON.stringify({
    protocol: 'many',
    edition: 1,
    title: 'Many rules',
    ladder: 'small',
    sources: { council: { cite: 'Common practice, no published source' } },
    observations: { needs: ['systolic', 'heart_rate'] },
    rules: Array.from({ length: count }, (_, index) => ({
      rule: `r${index}`,
      when: { systolic: { below: 60 + (index % 100) }, heart_rate: { above: 50 + (index % 130) } },
      level: 'high',
      says: 'Look.',
      source: ['council'],
    })),
  });

const casesAsJson = (count: number): string =>
  JSON.stringify({
    protocol: 'many',
    cases: Array.from({ length: count }, (_, index) => ({
      case: `c${index}`,
      given: { systolic: 90 + (index % 70), heart_rate: 45 + (index % 5) },
      expect: { level: { at_least: 'low' } },
    })),
  });

function documentOf(text: string): Document {
  const { document, problems } = jsonToDocument('many.json', text);
  if (!document) throw new Error(problems[0]?.says ?? 'a text cannot be read');
  return document;
}

function loadJson(text: string): void {
  const { compiled, problems } = documentToChecked(documentOf(text), {
    dictionary: vitalSigns,
    ladder,
    today: null,
  });
  if (!compiled) throw new Error(problems[0]?.says ?? 'a protocol cannot be read');
}

function runJson(text: string, protocol: Compiled): void {
  const { cases, problems } = documentToCases(documentOf(text), protocol.protocol);
  const results = cases.map((each) => runCase(protocol, each));
  if (problems.length > 0 || results.some(({ differences }) => differences.length > 0))
    throw new Error(problems[0]?.says ?? 'a case did not come out');
}

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
  const some = manyRules(500);
  const forSome = quickest(() => void load(some));
  const [rules500, rules5000] = [rulesAsJson(500), rulesAsJson(5000)];
  const forFewRules = quickest(() => loadJson(rules500));
  const forManyRules = quickest(() => loadJson(rules5000), 3);
  const protocol = load(manyRules(10));
  const run = (text: string): void => {
    const { results, problems } = runCases('cases.yaml', text, protocol);
    if (problems.length > 0 || results.length === 0) throw new Error(problems[0]?.says ?? 'no case was run');
  };
  const yamlCases = manyCases(2000);
  const forYaml = quickest(() => run(yamlCases));
  const [cases1000, cases10000] = [casesAsJson(1000), casesAsJson(10_000)];
  const forFew = quickest(() => runJson(cases1000, protocol));
  const forMany = quickest(() => runJson(cases10000, protocol), 3);
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
    growth('cost of a rule, among 5,000 to among 500, as JSON', forManyRules / forFewRules / 10),
    within('10,000 cases, in five YAML texts of 2,000', 5 * forYaml, 1000),
    within('10,000 cases, in one JSON text', forMany, 1000),
    growth('cost of a case, among 10,000 to among 1,000, as JSON', forMany / forFew / 10),
  ];
}
