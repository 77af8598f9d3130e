import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { handbookToHtml } from '../../src/handbook/handbook.ts';
import { readMeasure } from '../../src/handbook/sentences/measures.ts';
import { readRule, ruleLogic } from '../../src/handbook/sentences/rules.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';
import { unplacedMeasure, unplacedRule } from '../../src/handbook/sentences/unplaced.ts';
import { caution, type Compiled, type Ward } from '../../src/index.ts';
import { teacherOf } from '../../src/teach/teacher.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { ladderText } from '../agreement/protocols.ts';
import { protocolOf } from '../agreement/kit.ts';
import { askable, bundledNames, bundledText, bundledWard, lessonNames } from '../bundled.ts';
import { logicUnder, opened, type Part } from './page.ts';

const casesOf = (name: string): ReturnType<typeof yamlToDocument>['document'] =>
  yamlToDocument('cases.yaml', bundledText(`${name}/cases.yaml`)).document;

const pageOf = (reads: Compiled | Ward, name: string | null = null): Part =>
  opened(
    handbookToHtml({
      reads,
      teacher: teacherOf(reads, name === null ? null : casesOf(name)),
      accepted: [],
      proofs: [],
      changes: null,
      edition: null,
    }),
  );

const ward = bundledWard();
let wardPageMade: Part | null = null;

/** The page of the bundled ward policy; made once, as it is long. */
const wardPage = (): Part => (wardPageMade ??= pageOf(ward));

test.each([...bundledNames, ...lessonNames])(
  '%s: what stands on the page reads back to what runs',
  (name) => {
    const compiled = askable(name);
    const page = pageOf(compiled);
    const { protocol } = compiled;
    const speaker = speakerOf(protocol);
    for (const rule of protocol.rules)
      expect(readRule(logicUnder(page, rule.name), speaker)).toEqual(unplacedRule(ruleLogic(rule), speaker));
    for (const measure of protocol.measures.values())
      expect(readMeasure(logicUnder(page, measure.name), speaker)).toEqual(unplacedMeasure(measure, speaker));
  },
);

test('each page carries the digest in short, the edition, and the caution in full', () => {
  const page = pageOf(askable('pressure_reading'));
  const short = `digest ${askable('pressure_reading').protocol.digest.slice(7, 19)}`;
  expect(page.querySelector('.running.top')?.textContent).toContain(short);
  expect(page.querySelector('.running.top')?.textContent).toContain(
    `pressure_reading, edition ${askable('pressure_reading').protocol.edition}`,
  );
  expect(page.querySelector('.running.bottom')?.textContent).toContain(short);
  expect(page.querySelector('.running.bottom')?.textContent).toContain(caution);
  expect(caution).toContain('the paper policy wins');
});

test('a draft says on each page that it is one, and that it is invented where its file does', () => {
  const page = wardPage();
  expect(page.querySelector('.running.top')?.textContent).toMatch(/^\s*DRAFT\./);
  expect(page.querySelector('.status')?.textContent).toContain('Do not act on it');
  expect(page.querySelector('.front')?.textContent).toContain('which is itself invented');
});

test('a ward policy tells of its plans, of each protocol, and has a paper sheet for each', () => {
  const page = wardPage();
  const text = page.querySelector('main')?.textContent ?? '';
  for (const { title } of ward.plans.values()) expect(text).toContain(`Plan for one patient: ${title}`);
  const sheets = [...page.querySelectorAll('.sheet h2')].map(({ textContent }) => textContent);
  expect(sheets).toEqual(ward.members.map(({ protocol }) => `Paper sheet for downtime: ${protocol.title}`));
  expect(page.querySelectorAll('.level .name').length).toBeGreaterThan(ward.members.length);
});

test('each fault of technique of a ward stands once, with its sources', () => {
  const page = wardPage();
  const faults = ward.members[0]?.protocol.faults ?? [];
  expect(faults.length).toBeGreaterThan(0);
  for (const { name } of faults) {
    const found = [...page.querySelectorAll('article code')].filter(
      ({ textContent }) => textContent === name,
    );
    const articles = found.map((each) => each.closest('article'));
    const own = articles.filter((each) =>
      each?.querySelector('ul.logic')?.textContent?.includes('The fault “'),
    );
    expect(own.map((each) => each?.querySelector('.cites')?.textContent?.startsWith('Sources'))).toEqual([
      true,
    ]);
  }
});

test('the cases stand with what the rules say of them, and one that does not come out so is named', () => {
  const compiled = askable('lessons/one_threshold');
  const page = pageOf(compiled, 'lessons/one_threshold');
  const names = [...page.querySelectorAll('.case-list tbody th')].map(({ textContent }) =>
    textContent?.trim(),
  );
  expect(names.length).toBeGreaterThan(1);
  expect(page.querySelector('.cases .lacking')).toBeNull();
  const wrong = bundledText('lessons/one_threshold/cases.yaml').replace(
    /at_least: (?!usual_round)\w+/,
    'at_least: usual_round',
  );
  const teacher = teacherOf(compiled, yamlToDocument('cases.yaml', wrong).document);
  const other = opened(
    handbookToHtml({ reads: compiled, teacher, accepted: [], proofs: [], changes: null, edition: null }),
  );
  expect(teacher.lessons.leftOut.length).toBeGreaterThan(0);
  expect(other.querySelector('.cases .lacking')?.textContent).toContain(teacher.lessons.leftOut[0]);
});

test('the style is the one thing that the page allows itself, by its digest', () => {
  const page = pageOf(askable('pressure_reading'));
  const policy =
    page.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content') ?? '';
  const digest = createHash('sha256')
    .update(page.querySelector('style')?.textContent ?? '')
    .digest('base64');
  expect(policy).toBe(
    `default-src 'none'; style-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'`,
  );
  expect(page.querySelectorAll('[style]').length).toBe(0);
});

const hostile = `</style></title><script>alert(1)</script><img src=x onerror=alert(1)>"'&amp;\`\${1}`;

/** A small protocol in which every text that somebody writes is this one. */
const saying = (text: string): Compiled => {
  const said = JSON.stringify(text);
  return protocolOf(
    `protocol: small
edition: 1
title: ${said}
about: ${said}
otherwise: ${said}
owners: [${said}]
ladder: made_up_ladder
applies_when: { age: { at_least: 16 y } }
sources: { council: { cite: ${said} } }
observations:
  needs: [systolic, diastolic, own_choice]
  declares:
    own_choice: { title: ${said}, short: ${said}, kind: choice, choices: [{ choice: one, title: ${said} }, { choice: two, title: two }] }
limits: { floor: { title: ${said}, value: 90, unit: mmHg, between: [80, 100], set_by: ${said} } }
measures: { gap: { title: ${said}, meaning: ${said}, formula: systolic - diastolic, unit: mmHg } }
rules:
  - rule: low
    title: ${said}
    when: { systolic: { below: floor }, gap: { below: 30 } }
    unless: { when: { own_choice: { is: one } }, says: ${said}, accepted: ${said} }
    level: call_now
    says: ${said}
    because: ${said}
    ask: [${said}]
    do: [{ id: act, text: ${said}, under: ${said} }]
    source: [council]
`,
    ladderText.replaceAll('Nurse in charge', JSON.stringify(text)),
  );
};

const skeleton = (page: Part): string[] =>
  [...page.querySelectorAll('*')].map((each) => `${each.nodeName} ${each.getAttributeNames().join(' ')}`);

test('a text that would be markup stays a text, wherever it stands', () => {
  const risk = { of: hostile, what: hostile, because: hostile };
  const page = (text: string): Part => {
    const reads = saying(text);
    return opened(
      handbookToHtml({
        reads,
        teacher: teacherOf(reads, null),
        accepted: [{ ...risk, what: text }],
        proofs: [],
        changes: null,
        edition: null,
      }),
    );
  };
  const [bad, plain] = [page(hostile), page('plain words')];
  expect(skeleton(bad)).toEqual(skeleton(plain));
  expect(bad.querySelectorAll('script, img, iframe, object, embed, link, base, form, a').length).toBe(0);
  expect(bad.querySelector('h1')?.textContent).toBe(hostile);
});

test('no page has anything that runs or loads', () => {
  const page = wardPage();
  expect(page.querySelectorAll('script, link, iframe, object, embed, base, form, [src], [href]').length).toBe(
    0,
  );
  const names = [...page.querySelectorAll('*')].flatMap((each) => each.getAttributeNames());
  expect(names.filter((name) => name.startsWith('on'))).toEqual([]);
  const ids = [...page.querySelectorAll('[id]')].map((each) => each.id);
  expect(new Set(ids).size).toBe(ids.length);
});
