import type { Compiled } from '../outcome/compile.ts';
import { logicToSmt } from '../targets/smt-lib/logic-to-smt.ts';
import { questionToSmt } from '../targets/smt-lib/question-to-smt.ts';
import { completeSets, type AskedSets } from '../targets/smt-lib/sets.ts';
import { readAsk, type Unreadable } from './smt-question.ts';
import { readWhere } from './smt-where.ts';

/** What `build --to smt-lib` may be asked beside the protocol. */
export interface BuildOptions {
  readonly ask?: string | boolean | undefined;
  readonly where: readonly string[];
  readonly sets?: string | boolean | undefined;
  readonly limits?: string | boolean | undefined;
}

/** A protocol as SMT-LIB, with the question of `--ask` where there is one; or why what was asked cannot be read. */
export function writeSmt(compiled: Compiled, options: BuildOptions): string | Unreadable {
  const sets = readSets(compiled, options);
  if ('why' in sets) return sets;
  if (options.ask === undefined) return logicToSmt(compiled.logic, compiled.protocol, sets);
  const asked = readAsk(String(options.ask), compiled);
  if ('why' in asked) return asked;
  const where = options.where.length === 0 ? '' : `, where ${options.where.join(' and ')}`;
  return questionToSmt({ ...compiled, sets, holds: asked.holds, says: `${asked.says}${where}` });
}

function readSets({ protocol }: Compiled, options: BuildOptions): AskedSets | Unreadable {
  const { sets: given = completeSets.given, limits = completeSets.limits } = options;
  if (given !== 'complete' && given !== 'partial' && given !== 'any')
    return { why: `--sets takes complete, partial or any, not "${given}"` };
  if (limits !== 'as_written' && limits !== 'within_bounds')
    return { why: `--limits takes as_written or within_bounds, not "${limits}"` };
  const narrowed = readWhere(options.where, protocol);
  return 'why' in narrowed ? narrowed : { given, limits, ...narrowed };
}
