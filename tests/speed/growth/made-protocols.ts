import { jsonToDocument } from '../../../src/document/json-to-document.ts';
import type { Document } from '../../../src/document/document.ts';
import { readLadder } from '../../../src/index.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import { protocolToLogic } from '../../../src/logic/protocol-to-logic.ts';
import { compile } from '../../../src/outcome/compile.ts';
import { documentToProtocol } from '../../../src/protocol/document-to-protocol.ts';
import { vitalSigns } from '../../../src/vocabulary/vital-signs.ts';

/** A protocol that was made up, and its file. */
export interface Made {
  readonly compiled: Compiled;
  readonly document: Document;
}

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: middle }, { level: high }]',
);

/** Reads a protocol without the questions about all possible sets: those are what is measured. */
function made(parts: object): Made {
  const text = JSON.stringify({
    protocol: 'made_up',
    edition: 1,
    title: 'Made up',
    ladder: 'small',
    sources: { council: { cite: 'Common practice, no published source' } },
    hazards: { unseen: { harm: 'Nobody comes.', severity: 'serious', owner: 'The council' } },
    ...parts,
  });
  const { document, problems } = jsonToDocument('protocol.json', text);
  const read = document && documentToProtocol(document, { dictionary: vitalSigns, ladder, today: null });
  if (!document || !read?.protocol)
    throw new Error([...problems, ...(read?.problems ?? [])].map(({ says }) => says).join('\n'));
  return { document, compiled: compile(read.protocol, protocolToLogic(read.protocol).logic) };
}

const rule = (name: string, when: object, level: string): object => ({
  rule: name,
  when,
  level,
  says: 'Look.',
  source: ['council'],
});

/** So many rules, each with two thresholds of its own; the first few have theirs one step higher where that is asked. */
const rulesOf = (count: number, moved: number, prefix = 'r'): object[] =>
  Array.from({ length: count }, (_, at) => {
    const [low, fast] = [60 + (at % 100) + Number(at < moved), 50 + (at % 130)];
    return rule(`${prefix}${at}`, { systolic: { below: low }, heart_rate: { above: fast } }, 'high');
  });

const lowAndFast = {
  observations: { needs: ['systolic', 'heart_rate'] },
  must_always: [
    {
      requirement: 'low_and_fast',
      where: { systolic: { below: 60 }, heart_rate: { above: 180 } },
      level_at_least: 'high',
      controls: ['unseen'],
    },
  ],
};

export const manyRules = (count: number, moved = 0): Made =>
  made({ ...lowAndFast, rules: rulesOf(count, moved) });

/** The rules of two editions in one protocol, for those who can be asked of one alone; and which belong together. */
export const bothEditions = (
  count: number,
  moved: number,
): { readonly both: Made; readonly pairs: readonly (readonly [string, string])[] } => ({
  both: made({ ...lowAndFast, rules: [...rulesOf(count, 0), ...rulesOf(count, moved, 'n')] }),
  pairs: Array.from({ length: count }, (_, at) => [`r${at}`, `n${at}`]),
});

/**
 * So many observations that are reckoned with together, in three sums of other weights. What must always hold follows from two of them
 * only when they are added up: no single value decides it, and near the edge every set is another one.
 */
export function coupled(count: number): Made {
  const names = Array.from({ length: count }, (_, at) => `o${at + 1}`);
  const sum = (weight: (at: number) => number): object => ({
    formula: names.map((name, at) => `${weight(at)} * ${name}`).join(' + '),
    unit: 'mmHg',
  });
  const declared = { kind: 'number', unit: 'mmHg', step: 1, possible: [0, 100], ordinary: 50 };
  const heavy = { at_least: 35 * count * (count + 1) };
  return made({
    observations: {
      declares: Object.fromEntries(names.map((name) => [name, { title: name, ...declared }])),
      needs: names,
    },
    measures: {
      rising: sum((at) => at + 1),
      falling: sum((at) => count - at),
      even: sum(() => 1),
    },
    rules: [
      rule('most', { even: { at_least: 70 * count } }, 'high'),
      rule('rising_much', { rising: heavy }, 'middle'),
      rule('falling_much', { falling: heavy }, 'middle'),
    ],
    must_always: [
      {
        requirement: 'both_call',
        where: { rising: heavy, falling: heavy },
        level_at_least: 'high',
        controls: ['unseen'],
      },
    ],
  });
}
