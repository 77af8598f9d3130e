import { expect, test } from 'vitest';
import { readsOf, type Reads } from '../../../src/review/requirements/asked.ts';
import type { Box } from '../../../src/review/requirements/box.ts';
import { breaking } from '../../../src/review/requirements/confirm.ts';
import { enterOf } from '../../../src/review/requirements/enter.ts';
import { questionOf } from '../../../src/review/requirements/questions-of.ts';
import type { Question } from '../../../src/review/requirements/question.ts';
import type { Variable } from '../../../src/review/requirements/space.ts';
import { startOf } from '../../../src/review/requirements/start-of.ts';
import { subjectOfProtocol } from '../../../src/review/requirements/subject.ts';
import { Twin } from '../../../src/review/requirements/twin.ts';
import { givensOf } from '../../../src/review/requirements/witness.ts';
import type { Requirement } from '../../../src/protocol/requirements/requirement.ts';
import { askable, bundledNames } from '../../bundled.ts';
import { guarded } from '../kit.ts';

/** So many sets, or pairs of sets, are put to the evaluator for each requirement. `SETS=100000` asks as many as a council may want. */
const sets = Number(process.env.SETS ?? 60);

/** Numbers from 0 up to below 1, the same in every run. */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A value of a variable: ordinary, at an edge or a step beside it, or any. */
function valueOf({ of, ordinary, cuts }: Variable, low: number, high: number, random: () => number): number {
  const inside = (value: number): number => Math.min(high, Math.max(low, value));
  const kind = random();
  if (kind < (of === 'look_back' ? 0.9 : 0.35) && ordinary !== null) return inside(ordinary);
  const cut = cuts[Math.floor(random() * cuts.length)];
  if (kind < 0.8 && cut !== undefined) return inside(cut + Math.floor(random() * 3) - 1);
  return low + Math.floor(random() * (high - low + 1));
}

interface Tried {
  /** How many sets were as the requirement says, and were put to the evaluator. */
  readonly asked: number;
  readonly broken: number;
}

function tried(requirement: Requirement, reads: Reads, seed: number, many = sets): Tried {
  const [member] = reads.members;
  if (!member) throw new Error('nothing is read');
  const subject = subjectOfProtocol(member.protocol, requirement.limits);
  const question = questionOf({ subject, requirement });
  const isAbout = aboutOf(question);
  const start = startOf(question);
  const random = seeded(seed);
  let [asked, broken] = [0, 0];
  for (let at = 0; at < many * 60 && asked < many; at += 1) {
    const point = Float64Array.from(question.space.variables, (variable, index) =>
      valueOf(variable, start.low[index] as number, start.high[index] as number, random),
    );
    const box = { low: point, high: point };
    if (!isAbout(box)) continue;
    asked += 1;
    if (breaking(requirement, reads, givensOf(box, question, subject))) broken += 1;
  }
  return { asked, broken };
}

function aboutOf({ program, about, space, seconds }: Question): (box: Box) => boolean {
  const twin = new Twin(program, [about.first, about.second]);
  return (box) => {
    twin.run(enterOf(box, space, seconds), new Map(), new Map());
    // What earlier sets then say of the second set is for the evaluator to say.
    return twin.known.low[about.first] === 1 && twin.known.secondHigh[about.second] === 1;
  };
}

const stated = bundledNames.flatMap((name) =>
  askable(name).protocol.requirements.map((requirement) => [name, requirement.name, requirement] as const),
);

test.each(stated)('%s: %s holds of sets that are drawn', (name, _, requirement) => {
  const { asked, broken } = tried(requirement, readsOf(askable(name)), stated.length + name.length);
  expect(broken).toBe(0);
  expect(asked).toBeGreaterThan(0);
});

test('sets that are drawn find what does not hold', () => {
  const { compiled } = guarded(
    `observations: { needs: [systolic, heart_rate] }
rules: [{ rule: low, when: { systolic: { at_most: 90 }, heart_rate: { above: 90 } }, level: call_doctor, says: It suggests something., source: [council] }]
hazards: { h: { harm: Harm., severity: serious, owner: The council } }
must_always:
  - { requirement: low, where: { systolic: { at_most: 90 } }, level_at_least: call_doctor, controls: [h] }
  - { requirement: way, getting_worse_never_lowers: { observation: heart_rate, going: down }, controls: [h] }
`,
    'cases: []\n',
  );
  const reads = readsOf(compiled);
  for (const requirement of reads.requirements)
    expect(tried(requirement, reads, 1, 600).broken).toBeGreaterThan(0);
});
