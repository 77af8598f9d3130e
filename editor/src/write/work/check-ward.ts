import {
  linesOf,
  readDocument,
  readWard,
  runWardCases,
  wardLevelSays,
  wardReader,
  type Reader,
  type Series,
} from '../../../../src/index.ts';
import type { Checked } from '../messages.ts';
import type { Texts } from '../parts.ts';
import { linesHere } from './checked-protocol.ts';
import { problemHere } from './problem-here.ts';
import type { Around } from './surroundings.ts';

const casesFile = 'cases.yaml';

/** A ward policy and its cases after their check. */
export interface CheckedWard {
  readonly checked: Checked;
  /** What the cases are read with; null where the policy has errors. */
  readonly reader: Reader | null;
  /** The cases that could be read. */
  readonly read: readonly { readonly name: string; readonly series: Series }[];
}

/** What the check of a ward policy and its cases found. Its rules stand in its protocols. */
export function checkWard(around: Around, texts: Texts): CheckedWard {
  const { ladder, problems: ofLadder } = around.ladderOf(texts.protocol);
  const protocols = around.members(texts.protocol);
  const { ward, problems } = readWard(around.protocol.file, texts.protocol, { ladder, protocols });
  const hasCases = texts.cases.trim() !== '';
  const ran = ward && hasCases ? runWardCases(casesFile, texts.cases, ward) : { results: [], problems: [] };
  const { document } = readDocument(casesFile, texts.cases);
  const places = document ? linesOf(document).cases : [];
  const checked: Checked = {
    usable: ward !== null,
    problems: [
      ...problems.map((problem) => problemHere('protocol', problem, texts)),
      ...ran.problems.map((problem) => problemHere('cases', problem, texts)),
    ],
    ladder: ward ? [] : ofLadder.map(({ file, line, says }) => `${file}, line ${line}: ${says}`),
    cases: ran.results.map(({ name, differences, outcome }) => {
      const lines = places.find((place) => place.name === name);
      return {
        name,
        lines: lines ? linesHere(lines) : { first: 1, last: 1 },
        passes: differences.length === 0,
        why:
          ward && differences.length === 0
            ? [wardLevelSays(outcome, ward)]
            : differences.map(
                ({ what, expected, found }) => `${what}: expected ${expected}, found ${found}.`,
              ),
        met: [],
      };
    }),
    rules: [],
  };
  return { checked, reader: ward && wardReader(ward), read: ran.results };
}
