import { yamlToDocument } from '../document/yaml-to-document.ts';
import { documentToCases } from '../cases/document-to-cases.ts';
import { logicToJson } from '../logic/logic-to-json.ts';
import { showProblem } from '../problems/show-problem.ts';
import { hasErrors } from '../problems/problem.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import { findProtocol, readText } from './files.ts';
import { jsonText } from './json-text.ts';
import { loadProtocol, type Loaded } from './load.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/** The stages that can be printed. */
const stages = ['document', 'logic', 'bounds'] as const;

/** Prints one stage of the way of one protocol as JSON; `bounds` are those of each of its cases. */
export async function showStage(stage: string, paths: readonly string[], terminal: Terminal): Promise<Exit> {
  const [asked, ...more] = paths;
  const path = asked === undefined || more.length > 0 ? null : await findProtocol(asked);
  if (!stages.some((each) => each === stage) || path === null) {
    terminal.err(`--show takes ${stages.join(', ')}, and one protocol beside it.\n`);
    return exit.couldNotAsk;
  }
  const loaded = await loadProtocol(path, null);
  for (const problem of loaded.problems) terminal.err(`${showProblem(problem)}\n\n`);
  const shown = stage === 'document' ? loaded.document?.root : await stageOf(stage, loaded);
  if (!shown) return exit.couldNotAsk;
  terminal.out(jsonText(shown));
  return hasErrors(loaded.problems) ? exit.doesNotHold : exit.well;
}

async function stageOf(stage: string, { compiled, casesPath }: Loaded): Promise<unknown> {
  if (!compiled) return null;
  if (stage === 'logic') return logicToJson(compiled.logic, compiled.protocol);
  if (casesPath === null) return [];
  const { file, text } = await readText(casesPath);
  const { document } = yamlToDocument(file, text);
  const { cases } = document ? documentToCases(document, compiled.protocol) : { cases: [] };
  return cases.map(({ name, series }) => {
    const { narrow, wide } = seriesToBounds(compiled.protocol, series);
    const named = (bounds: Float64Array): object =>
      Object.fromEntries(compiled.logic.inputs.map((input, index) => [input.name, bounds[index]]));
    return {
      case: name,
      bounds: named(narrow),
      ...(wide === narrow ? {} : { without_earlier_values: named(wide) }),
    };
  });
}
