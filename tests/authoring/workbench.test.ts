import { expect, test } from 'vitest';
import { Workbench, readProtocol, runCases, vitalSigns, type Written } from '../../src/index.ts';
import { bundledLadder, bundledNames, bundledText, lessonNames } from '../bundled.ts';

const ladder = bundledLadder();
const parents = new Map(
  [...bundledNames, ...lessonNames].map((name) => [
    name.replace('lessons/', ''),
    { file: `${name}/protocol.yaml`, text: bundledText(`${name}/protocol.yaml`) },
  ]),
);
const around = { dictionary: vitalSigns, ladder, today: null, parents };

interface Texts {
  readonly protocol: string;
  readonly cases: string;
}

const write = (bench: Workbench, { protocol, cases }: Texts): Written =>
  bench.check(
    { protocol: { file: 'protocol.yaml', text: protocol }, cases: { file: 'cases.yaml', text: cases } },
    around,
  );

/** Asks one bench about texts after texts, and a new reading of the same about each. */
function expectAsRead(steps: readonly Texts[]): void {
  const bench = new Workbench();
  for (const texts of steps) {
    const written = write(bench, texts);
    const { protocol, problems } = readProtocol('protocol.yaml', texts.protocol, { ladder, parents });
    expect(written.problems.protocol).toEqual(problems);
    expect(written.compiled === null).toBe(protocol === null);
    if (!protocol) continue;
    const ran = runCases('cases.yaml', texts.cases, protocol);
    expect(written.problems.cases).toEqual(ran.problems);
    expect(written.cases.map(({ name, passes }) => [name, passes])).toEqual(
      ran.results.map(({ name, differences }) => [name, differences.length === 0]),
    );
  }
}

test.each(['reading_technique', 'early_warning_score', ...lessonNames])(
  '%s while it is changed is always what a new reading finds',
  (name) => {
    const protocol = bundledText(`${name}/protocol.yaml`);
    const cases = bundledText(`${name}/cases.yaml`);
    const number = /(at_least|below|above|at_most|value): (\d+)/;
    expectAsRead([
      { protocol, cases },
      { protocol: protocol.replace('says: ', 'says: Now '), cases },
      { protocol: protocol.replace(number, '$1: 1$2'), cases },
      { protocol: protocol.replace(/\n {4}title: /, '\n    title: Another '), cases },
      { protocol: protocol.replace('rules:', 'rulez:'), cases },
      { protocol: `${protocol}\n  - rule: [`, cases },
      { protocol, cases: cases.replace(/at_least: usual_round/, 'at_least: call_doctor') },
      { protocol, cases: cases.replace('expect:', 'expekt:') },
      { protocol, cases: cases.replace(/- case: (.*)\n/, '- case: $1 again\n') },
      { protocol: protocol.replaceAll('\n', '\r\n'), cases: cases.replaceAll('\n', '\r\n') },
      { protocol, cases: ''.padEnd(3) + cases },
      { protocol, cases },
    ]);
  },
);

test('a protocol with problems has no answers, not even those from before', () => {
  const bench = new Workbench();
  const protocol = bundledText('lessons/one_threshold/protocol.yaml');
  const cases = bundledText('lessons/one_threshold/cases.yaml');
  expect(write(bench, { protocol, cases }).cases.length).toBeGreaterThan(3);
  expect(write(bench, { protocol: protocol.replace('level: ', 'levle: '), cases }).cases).toEqual([]);
});
