import {
  evaluate,
  readLadder,
  readProtocol,
  readSet,
  readWard,
  runCases,
  showProblem,
  type Problem,
} from '../../../src/index.ts';
import { askable, bundledLadder, bundledText, lessonNames } from '../../bundled.ts';

/** One kind of text that the reader takes: where a run begins, and the whole way from such a text to what is said of it. */
export interface Reader {
  readonly seeds: readonly string[];
  /** All problems; throws what no reader may throw. `whole`: whether the text was taken. */
  read(text: string): { readonly whole: boolean; readonly problems: readonly Problem[] };
}

const ladder = bundledLadder();
const lesson = (name: string): string => bundledText(`${name}/protocol.yaml`);
const [first = ''] = lessonNames;

const sets: readonly string[] = [
  '{ "systolic": 104, "diastolic": { "value": 48, "low": 44, "high": 52 }, "temperature": { "value": 98.1, "unit": "[degF]" } }',
  '{ "at": "2026-03-02T12:05:00Z", "sets": [{ "at": "2026-03-02T08:00:00Z", "systolic": 130, "pain": 3 }, { "at": "2026-03-02T12:00:00Z", "systolic": { "unobtainable": true }, "heart_rate": 104 }] }',
  '{ "patient": { "standing": { "oxygen_scale": { "value": "scale_2", "by": "Dr Ash", "until": "2026-03-09T00:00:00Z" } } }, "sets": [{ "at": "2026-03-02T08:00:00+01:00", "oxygen_saturation": "above_device" }] }',
];

const smallProtocols = new Map(
  lessonNames.map((name) => [name.replace('lessons/', ''), askable(name)] as const),
);

export const readers: Readonly<Record<'protocol' | 'ladder' | 'cases' | 'ward' | 'set', Reader>> = {
  protocol: {
    seeds: [...lessonNames.map(lesson), bundledText('sepsis_screen/protocol.yaml')],
    read: (text) => {
      const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder, today: '2026-03-02' });
      if (protocol) evaluateSome(protocol);
      return { whole: protocol !== null, problems };
    },
  },
  ladder: {
    seeds: [bundledText('alder_ladder/ladder.yaml')],
    read: (text) => {
      const read = readLadder('ladder.yaml', text);
      return { whole: read.ladder !== null, problems: read.problems };
    },
  },
  cases: {
    seeds: lessonNames.map((name) => bundledText(`${name}/cases.yaml`)),
    read: (text) => {
      const { results, problems } = runCases('cases.yaml', text, askable(first));
      return { whole: results.length > 0, problems };
    },
  },
  ward: {
    seeds: [
      bundledText('alder_wing/ward.yaml'),
      `ward: small\nedition: 1\ntitle: Small\nladder: alder_ladder\nreads_with:\n  - { protocol: one_threshold, edition: 1 }\n  - { protocol: a_curve, edition: 1 }\n`,
    ],
    read: (text) => {
      const read = readWard('ward.yaml', text, { ladder, protocols: smallProtocols, today: '2026-03-02' });
      return { whole: read.ward !== null, problems: read.problems };
    },
  },
  set: {
    seeds: sets,
    read: (text) => {
      const protocol = askable('sepsis_screen');
      const { series, problems } = readSet('set.json', text, protocol);
      if (series) JSON.stringify(evaluate(protocol, series));
      return { whole: series !== null, problems };
    },
  },
};

export type Kind = keyof typeof readers;
export const kinds = Object.keys(readers) as Kind[];

function evaluateSome(protocol: ReturnType<typeof askable>): void {
  for (const text of ['{}', '{ "systolic": 104, "diastolic": 48 }']) {
    const { series } = readSet('set.json', text, protocol);
    if (series) JSON.stringify(evaluate(protocol, series));
  }
}

/** Reads a text as a kind, and judges what is said of it. Returns what kinds of problems were found where; throws when something is wrong. */
export function judged(
  kind: Kind,
  text: string,
): { readonly whole: boolean; readonly traits: readonly string[] } {
  const { whole, problems } = readers[kind].read(text);
  if (!whole && kind !== 'cases' && problems.length === 0) throw new Error('Neither taken nor refused');
  for (const problem of problems) {
    const shown = showProblem(problem);
    if (/undefined|NaN|\[object|Infinity/.test(shown) && !/undefined|NaN|\[object|Infinity/.test(text)) {
      throw new Error(`A hole in the words: ${shown}`);
    }
    if (/[^\P{C}\n\t]|[\p{Zl}\p{Zp}]/u.test(shown)) throw new Error(`Not plain: ${JSON.stringify(shown)}`);
    if (problem.line < 1 || problem.column < 1 || problem.length < 1) throw new Error(`No place: ${shown}`);
    if (!text.includes(problem.source)) throw new Error(`A line that is not in the text: ${shown}`);
  }
  const traits = problems.map(({ code, source }) => `${code} ${/[a-z_]+(?=:)/.exec(source)?.[0] ?? ''}`);
  return { whole, traits: [...new Set([whole ? 'whole' : 'refused', ...traits])] };
}
