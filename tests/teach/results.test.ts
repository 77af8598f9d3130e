import fc from 'fast-check';
import { expect, test } from 'vitest';
import { verdicts } from '../../src/teach/judge.ts';
import { csvCell, resultsToCsv } from '../../src/teach/results-to-csv.ts';
import { resultsOf, type Answered } from '../../src/teach/results.ts';

const answered: Answered = {
  at: '2026-03-02T08:00:00+00:00',
  protocol: 'pressure_reading',
  edition: 1,
  case: 'Quiet, and flushed',
  said: 'Look again',
  ruleSays: 'Call the doctor',
  rank: 3,
  verdict: 'too_little',
  showing: 1,
  seen: 3,
  given: 6,
  outputAndVessels: '',
  caseSays: 'The vessels have let go',
};

const ranks = ['Usual round', 'Look again', 'Call the doctor'];
const answers = fc.array(
  fc
    .record({ verdict: fc.constantFrom(...verdicts), rank: fc.nat(2) })
    .map((each): Answered => ({ ...answered, ...each, ruleSays: ranks[each.rank] ?? '' })),
);

test('too little, too much, as the rule says and left open add up to all answers, in all and by level', () => {
  fc.assert(
    fc.property(answers, (all) => {
      const results = resultsOf(all);
      expect(results.answers).toBe(all.length);
      for (const counts of [results, ...results.byLevel]) {
        expect(verdicts.reduce((sum, verdict) => sum + counts[verdict], 0)).toBe(counts.answers);
      }
      expect(results.byLevel.reduce((sum, counts) => sum + counts.answers, 0)).toBe(all.length);
    }),
  );
});

test('too little is counted apart from too much, the highest level first', () => {
  const results = resultsOf([
    answered,
    { ...answered, verdict: 'too_much', ruleSays: 'Look again', rank: 1 },
    { ...answered, verdict: 'too_little' },
  ]);
  expect(results).toMatchObject({ answers: 3, too_little: 2, too_much: 1, as_the_rule_says: 0 });
  expect(results.byLevel.map(({ ruleSays, too_little: little }) => [ruleSays, little])).toEqual([
    ['Call the doctor', 2],
    ['Look again', 0],
  ]);
});

test('the CSV has a line for each answer below the names of the columns', () => {
  const [names, first, ...rest] = resultsToCsv([answered]).split('\r\n');
  expect(names?.split(',')[0]).toBe('time');
  expect(first).toBe(
    '2026-03-02T08:00:00+00:00,pressure_reading,1,"Quiet, and flushed",Look again,Call the doctor,Called too little,1,3,6,,The vessels have let go',
  );
  expect(rest).toEqual(['']);
});

test('what a program for tables would work out stays a text', () => {
  expect(csvCell('=HYPERLINK("http://x")')).toBe(`"'=HYPERLINK(""http://x"")"`);
  expect(['+1', '-1', '@SUM', '\t=1'].map(csvCell)).toEqual([`'+1`, `'-1`, `'@SUM`, `'\t=1`]);
  expect(csvCell('108 with a diastolic of 54')).toBe('108 with a diastolic of 54');
});

/** Reads CSV after RFC 4180, as plainly as can be. */
function readCsv(text: string): string[][] {
  const [rows, row]: [string[][], string[]] = [[], []];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  for (let found = cell.exec(text); found; found = cell.exec(text)) {
    row.push(found[1] === undefined ? (found[2] ?? '') : found[1].replaceAll('""', '"'));
    if (found[3] === '\r\n') rows.push(row.splice(0));
  }
  return rows;
}

test('any text comes back from the CSV, and no cell begins like a formula', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.constantFrom("'=", "''@a", "'", "'a=")),
      fc.string(),
      (name, said) => {
        const rows = readCsv(resultsToCsv([{ ...answered, case: name, said }]));
        expect(rows).toHaveLength(2);
        const [, cells = []] = rows;
        expect(cells.filter((each) => /^[=+\-@\t\r\n]/.test(each))).toEqual([]);
        expect(cells[3]?.replace(/^'(?='*[=+\-@\t\r\n])/, '')).toBe(name);
      },
    ),
  );
});
