import { stringify } from 'yaml';
import type { Document } from '../../../src/document/document.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import { compile, type Compiled } from '../../../src/outcome/compile.ts';
import { documentToLadder, documentToProtocol } from '../../../src/protocol/document-to-protocol.ts';
import { findingsOf, type Findings } from '../../../src/review/findings/find-findings.ts';
import { vitalSigns } from '../../../src/vocabulary/vital-signs.ts';

export const levels = ['lowest', 'second', 'third', 'highest'] as const;
const ladder = `ladder: example_ladder\nedition: 1\nlevels: [${levels.map((level) => `{ level: ${level} }`).join(', ')}]\n`;

const small = (title: string, high: number): object => ({
  title,
  kind: 'number',
  step: 1,
  unit: '/min',
  possible: [0, high],
  ordinary: 3,
});

/** Observations with few values, so that every set can be tried. */
const head = {
  protocol: 'example',
  edition: 1,
  title: 'An example',
  ladder: 'example_ladder',
  sources: { council: { cite: 'Common practice, no published source' } },
  observations: {
    needs: ['pulse_a', 'pulse_b', 'colour'],
    helps: ['told'],
    declares: {
      pulse_a: small('pulse of the arm', 6),
      pulse_b: small('pulse of the leg', 5),
      colour: {
        title: 'colour',
        kind: 'choice',
        choices: [
          { choice: 'pink', title: 'pink' },
          { choice: 'pale', title: 'pale' },
          { choice: 'blue', title: 'blue' },
        ],
        ordinary: 'pink',
      },
      told: { title: 'told', kind: 'yes_no', ordinary: false },
    },
  },
  measures: {
    gap: { formula: 'pulse_a - pulse_b', unit: '/min' },
    points: {
      score: {
        pulse_b: [{ at_most: 1, points: 2 }, { at_most: 3, points: 0 }, { points: 1 }],
        colour: { pink: 0, pale: 1, blue: 2 },
      },
    },
  },
} as const;

export interface MadeUp {
  readonly compiled: Compiled;
  readonly document: Document;
}

const documentOf = (file: string, text: string): Document => {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) throw new Error(problems.map(({ says }) => says).join('\n'));
  return document;
};

/** A protocol over the small observations, with these parts; without the deep check, so that one with a defect can be asked. */
export function madeUp(parts: object): MadeUp {
  const document = documentOf(
    'protocol.yaml',
    stringify({ ...head, ...parts }, { aliasDuplicateObjects: false }),
  );
  const read = documentToLadder(documentOf('ladder.yaml', ladder)).ladder;
  const { protocol, problems } = documentToProtocol(document, {
    dictionary: vitalSigns,
    ladder: read,
    today: null,
  });
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  return { compiled: compile(protocol), document };
}

export const findingsIn = (made: MadeUp): Findings => findingsOf({ ...made, cases: null });
