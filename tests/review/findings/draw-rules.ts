/** A whole number below another, from a row of numbers that is always the same for one seed. */
function drawing(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

type Draw = ReturnType<typeof drawing>;

const pick = <T>(draw: Draw, all: readonly T[]): T => all[draw(all.length)] as T;

function comparison(draw: Draw): object {
  const number = (): object => ({ [pick(draw, ['below', 'above', 'at_most', 'at_least'])]: draw(5) + 1 });
  return pick<() => object>(draw, [
    () => ({ pulse_a: number() }),
    () => ({ pulse_b: number() }),
    () => ({ gap: number() }),
    () => ({ points: number() }),
    () => ({ pulse_a: { [pick(draw, ['below', 'at_least'])]: 'pulse_b' } }),
    () => ({ colour: { is: pick(draw, ['pink', 'pale', 'blue']) } }),
    () => ({ told: { is: pick(draw, [true, false]) } }),
    () => ({ pulse_a: { unobtainable: true } }),
    () => ({ told: { known: pick(draw, [true, false]) } }),
  ])();
}

function condition(draw: Draw, depth: number, names: readonly string[]): object {
  if (depth === 0 || draw(3) === 0) return comparison(draw);
  const parts = [...Array(2 + draw(2))].map(() => condition(draw, depth - 1, names));
  if (names.length > 0 && draw(3) === 0) parts.push({ rule: pick(draw, names) });
  const kind = pick(draw, ['all', 'any', 'none', 'at_least_of']);
  return kind === 'at_least_of' ? { at_least_of: { count: 2, of: parts } } : { [kind]: parts };
}

/** Some rules, each of which may name those before it. */
export function drawRules(seed: number, levels: readonly string[]): object[] {
  const draw = drawing(seed);
  const names: string[] = [];
  const drawn = [...Array(5).keys()].map((index) => {
    const rule = {
      rule: `rule_${index + 1}`,
      when: condition(draw, 2, names),
      ...(draw(4) === 0
        ? { unless: { when: comparison(draw), says: 'It is otherwise explained.', accepted: 'Agreed.' } }
        : {}),
      ...(draw(4) === 0
        ? { explained_by: { when: comparison(draw), says: 'This can explain it.', level: levels[1] } }
        : {}),
      level: draw(8) === 0 ? undefined : levels[draw(3) + 1],
      says: 'It suggests something.',
      do: [
        { id: `act_${index + 1}`, text: 'Do this', ...(index === 2 ? { excludes: ['act_1', 'act_4'] } : {}) },
      ],
      source: ['council'],
    };
    if (rule.level !== levels[3]) delete (rule as { explained_by?: unknown }).explained_by;
    names.push(rule.rule);
    return rule;
  });
  // Now and then two rules say the same in other words.
  const again = {
    ...drawn[4],
    when: { all: [drawn[1]?.when ?? {}] },
    unless: drawn[1]?.unless,
  } as (typeof drawn)[number];
  return [...(seed % 4 === 0 ? [...drawn.slice(0, 4), again] : drawn), readsAll];
}

/** Reads every observation, because one that nothing reads may not be listed. */
const readsAll = {
  rule: 'reads_all',
  when: { told: { is: true }, pulse_a: { above: 4 }, pulse_b: { above: 3 }, colour: { is: 'blue' } },
  says: 'It suggests something.',
  source: ['council'],
};
