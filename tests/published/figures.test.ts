import { describe, expect, test } from 'vitest';
import { ask, protocolOf, testProtocol, withBands } from './kit.ts';
import { protocolNames, works, type Figure, type Work } from './works.ts';

/** What is ordinary, with what a figure gives: in each of its sets where it gives several. */
function setOf({ ordinary = {} }: Work, { given }: Figure): object {
  const { sets } = given;
  if (!Array.isArray(sets)) return { ...ordinary, ...given };
  return { ...given, sets: sets.map((set: object) => ({ ...ordinary, ...set })) };
}

describe.each(works.filter(({ figures }) => figures))('$name', (work) => {
  test.each(work.figures ?? [])('$id', (figure) => {
    const outcome = ask(protocolOf(work), setOf(work, figure));
    const { measures, rules } = outcome;
    for (const [measure, expected] of Object.entries(figure.gives ?? {})) {
      const value = measures[measure]?.value ?? Number.NaN;
      // A little more than what it may be off, because a difference of decimals is not exact in binary.
      expect(Math.abs(value - expected), `${measure} is ${value}`).toBeLessThanOrEqual(
        (figure.off_by ?? 0) + 1e-9,
      );
    }
    const named = (state: string): string[] =>
      rules.filter((each) => each.state === state).map(({ rule }) => rule);
    if (figure.met && work.protocol) {
      expect(named('met').toSorted()).toEqual(figure.met.toSorted());
      expect(named('undecided')).toEqual([]);
    } else {
      expect(named('met')).toEqual(expect.arrayContaining([...(figure.met ?? [])]));
      expect(named('not_met')).toEqual(expect.arrayContaining([...(figure.not_met ?? [])]));
    }
    if (figure.applies) expect(outcome.applies).toBe(figure.applies);
    for (const kind of ['refused', 'questioned'] as const) {
      if (figure[kind]) expect(outcome[kind].map(({ observation }) => observation)).toEqual(figure[kind]);
    }
  });
});

describe.each(works.filter(({ finds }) => finds))('$name, as printed', (work) => {
  test.each(work.finds ?? [])('$id: $problem', (found) => {
    const { line, problems } = withBands(work, found);
    const shown = problems.map(({ code, line: at }) => ({ code, line: at }));
    expect(shown).toEqual(found.problem === 'none' ? [] : [{ code: found.problem, line }]);
    const example = found.problem === 'none' ? [] : [expect.stringContaining(` with ${found.example}.`)];
    expect(problems.map(({ says }) => says)).toEqual(example);
  });
});

const keys = {
  file: ['name', 'protocol', 'bundled', 'sources', 'ordinary', 'figures', 'finds'],
  any: ['id', 'source', 'from_memory', 'note'],
  figure: ['given', 'gives', 'off_by', 'met', 'not_met', 'refused', 'questioned', 'applies'],
  found: ['exactly_one_of', 'problem', 'example'],
};

const notIn = (known: readonly string[], line: object): string[] =>
  Object.keys(line).filter((key) => !known.includes(key));

test('no key is misspelt, and every figure expects something', () => {
  const lines = works.flatMap(({ figures = [] }) => figures);
  const unknown = [
    ...works.flatMap((work) => notIn(keys.file, work)),
    ...lines.flatMap((figure) => notIn([...keys.any, ...keys.figure], figure)),
    ...works
      .flatMap(({ finds = [] }) => finds)
      .flatMap((found) => notIn([...keys.any, ...keys.found], found)),
  ];
  expect(unknown).toEqual([]);
  const expects = ['gives', 'met', 'not_met', 'refused', 'questioned', 'applies'];
  expect(lines.filter((figure) => !expects.some((key) => key in figure))).toEqual([]);
});

test.each(protocolNames)('%s passes the check, and figures are held against all that it says', (name) => {
  const { protocol } = testProtocol(name);
  const held = works.filter((work) => work.protocol === name).flatMap(({ figures }) => figures ?? []);
  const rules = protocol.rules.map(({ name: rule }) => rule);
  const met = new Set(held.flatMap((figure) => figure.met ?? []));
  expect(rules.filter((rule) => !met.has(rule))).toEqual([]);
  // A rule that every figure meets could be anything.
  const always = rules.filter((rule) => held.every((figure) => !figure.met || figure.met.includes(rule)));
  expect(always).toEqual([]);
});
