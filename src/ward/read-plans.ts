import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { nearestOf } from '../protocol/names.ts';
import type { Ladder, ObservationEntry, Source } from '../protocol/protocol.ts';
import { planName } from './own-protocol.ts';
import type { Plan } from './ward.ts';

interface Beside {
  readonly ladder: Ladder;
  readonly sources: ReadonlyMap<string, Source>;
  readonly vocabulary: ReadonlyMap<string, ObservationEntry>;
  readonly report: Report;
}

/** The plans of a ward by the choice of escalation_plan that each is for. */
export function readPlans(
  files: Readonly<Record<string, File.Plan>>,
  beside: Beside,
): ReadonlyMap<string, Plan> {
  return new Map(
    Object.entries(files).map(([name, file]) => [name, readPlan(name, file, ['plans', name], beside)]),
  );
}

function readPlan(
  name: string,
  file: File.Plan,
  path: Path,
  { ladder, sources, vocabulary, report }: Beside,
): Plan {
  const all = vocabulary.get(planName)?.choices ?? [];
  const choices = all.map(({ choice }) => choice);
  const choice = all.find((each) => each.choice === name);
  if (!choice) {
    const facts = { name: planName, choice: name, choices };
    report('unknown_choice', path, facts, { part: 'key', nearMiss: nearestOf(name, choices) });
  }
  const levels = ladder.levels.map((level) => level.name);
  for (const level of Object.keys(file.levels)) {
    if (ladder.levels.length === 0 || levels.includes(level)) continue;
    const nearMiss = nearestOf(level, levels);
    report('unknown_level', [...path, 'levels', level], { name: level, levels }, { part: 'key', nearMiss });
  }
  file.source.forEach((source, index) => {
    if (sources.has(source)) return;
    const nearMiss = nearestOf(source, [...sources.keys()]);
    report('unknown_source', [...path, 'source', index], { name: source }, { nearMiss });
  });
  return {
    plan: name,
    title: choice?.title ?? name,
    says: file.says,
    sources: file.source,
    levels: new Map(Object.entries(file.levels).map(([level, each]) => [level, inPlaceOf(each)])),
  };
}

function inPlaceOf({
  says,
  tell,
  respond,
  reassess,
  if_no_answer: ifNoAnswer,
}: File.PlanLevel): ReturnType<Plan['levels']['get']> & object {
  return {
    ...(says === undefined ? {} : { says }),
    ...(tell ? { tell: tell.map(({ who, from, to }) => ({ who, from: from ?? null, to: to ?? null })) } : {}),
    ...(respond === undefined ? {} : { respond }),
    ...(reassess === undefined ? {} : { reassess }),
    ...(ifNoAnswer ? { ifNoAnswer } : {}),
  };
}
