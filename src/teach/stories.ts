import { documentToCases, readStory } from '../cases/document-to-cases.ts';
import { runCase } from '../cases/run-case.ts';
import { runWardCases } from '../cases/ward-cases.ts';
import type { Document } from '../document/document.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Problem } from '../problems/problem.ts';
import type { Source } from '../protocol/protocol.ts';
import type { Series } from '../series/series.ts';
import { checkShape } from '../shape/check-shape.ts';
import type { Teach } from '../shape/generated/types.ts';
import type { Ward } from '../ward/ward.ts';

/** A case as it is taught. */
export interface Story {
  readonly name: string;
  readonly story: string | null;
  readonly series: Series;
  /** Null: the case says nothing for the drill, and is there to hold a rule in place. */
  readonly teach: Teach | null;
  /** The source of what is expected, as it is cited; null when the case names none. */
  readonly source: string | null;
}

/** The cases of a file that can be taught, the names of those that do not come out as expected, and the problems of the others. */
export interface Stories {
  readonly stories: readonly Story[];
  readonly leftOut: readonly string[];
  readonly problems: readonly Problem[];
}

/** A case that could not be read, or that does not come out as the council expects, is not taught from. */
export function storiesOf(document: Document, reads: Compiled | Ward): Stories {
  return 'members' in reads ? ofWard(document, reads) : ofProtocol(document, reads);
}

interface FileCase {
  readonly story?: string;
  readonly source?: string;
  readonly teach?: Teach;
}

function storyOf(
  name: string,
  series: Series,
  file: FileCase | undefined,
  sources: ReadonlyMap<string, Source>,
): Story {
  return {
    name,
    story: file?.story ?? null,
    series,
    teach: file?.teach ?? null,
    source: sources.get(file?.source ?? '')?.cite ?? null,
  };
}

function ofProtocol(document: Document, compiled: Compiled): Stories {
  const { cases, problems } = documentToCases(document, compiled.protocol);
  const file = checkShape('cases', document).value;
  const results = cases.map((each) => runCase(compiled, each));
  const passing = cases.filter((_, index) => results[index]?.differences.length === 0);
  return {
    stories: passing.map(({ name, series, path }) =>
      storyOf(name, series, file?.cases[Number(path[1])], compiled.protocol.sources),
    ),
    leftOut: results.filter(({ differences }) => differences.length > 0).map(({ name }) => name),
    problems,
  };
}

function ofWard(document: Document, ward: Ward): Stories {
  const { results, problems } = runWardCases(document, ward);
  const passing = new Set(results.flatMap((each) => (each.differences.length === 0 ? [each.name] : [])));
  const all = checkShape('ward_cases', document).value?.cases ?? [];
  const stories = all.flatMap((each, index): Story[] => {
    if (!passing.delete(each.case)) return [];
    const { series } = readStory(each, ['cases', index], document, ward.vocabulary, () => undefined);
    return series ? [storyOf(each.case, series, each, ward.sources)] : [];
  });
  return {
    stories,
    leftOut: results.filter(({ differences }) => differences.length > 0).map(({ name }) => name),
    problems,
  };
}
