import type * as File from '../shape/generated/types.ts';
import type { Report } from '../problems/problem.ts';
import { parseDuration } from '../vocabulary/quantity.ts';
import type { Ladder, Level } from './protocol.ts';
import { plainWords } from './words.ts';

/** Reads a ladder: levels lowest first, each named once, a higher one never later than a lower one. */
export function readLadder(file: File.LadderFile, report: Report): Ladder {
  const seen = new Set<string>();
  const latest = { respond: null as File.Level | null, reassess: null as File.Level | null };
  file.levels.forEach((level, index) => {
    if (seen.has(level.level)) report('level_twice', ['levels', index, 'level'], { level: level.level });
    seen.add(level.level);
    for (const key of ['respond', 'reassess'] as const) {
      const before = latest[key];
      const written = level[key];
      if (written === undefined) continue;
      const later = (parseDuration(written) ?? 0) > (parseDuration(before?.[key] ?? '') ?? Infinity);
      if (before && later) {
        const facts = {
          level: level.level,
          time: written,
          lower: before.level,
          lowerTime: String(before[key]),
        };
        report(
          key === 'respond' ? 'higher_level_answers_later' : 'higher_level_reassesses_later',
          ['levels', index, key],
          facts,
        );
      }
      latest[key] = level;
    }
  });
  return {
    name: file.ladder,
    edition: file.edition,
    title: file.title ?? plainWords(file.ladder),
    levels: file.levels.map(readLevel),
    ...statesOf(file),
  };
}

/** A ladder without either stays the one that it was, with the same digest. */
function statesOf({ hazards, must_always: asked }: File.LadderFile): Pick<Ladder, 'states'> {
  if (!hazards && !asked) return {};
  return { states: { ...(hazards ? { hazards } : {}), ...(asked ? { must_always: asked } : {}) } };
}

function readLevel(file: File.Level): Level {
  return {
    name: file.level,
    title: file.title ?? plainWords(file.level),
    says: file.says ?? null,
    tell: (file.tell ?? []).map(({ who, from, to }) => ({ who, from: from ?? null, to: to ?? null })),
    respond: file.respond ?? null,
    reassess: file.reassess ?? null,
    ifNoAnswer: file.if_no_answer ? { ...file.if_no_answer } : null,
    stepDown: file.step_down
      ? {
          setsInARow: file.step_down.sets_in_a_row,
          over: file.step_down.over,
          agreedBy: file.step_down.agreed_by,
        }
      : null,
  };
}
