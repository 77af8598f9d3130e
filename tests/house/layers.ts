/** One folder of `src/`, in the order of the table: it may import from the folders before it, and from itself. */
export interface Layer {
  readonly folder: string;
  readonly holds: string;
  /** Whether its code also runs in a browser page: no file system, clock, network, chance or Node built-in. */
  readonly pure: boolean;
}

/** The truth about who may import whom; DEVELOPERS.md shows the same table. */
export const layers: readonly Layer[] = [
  { folder: 'problems', pure: true, holds: 'what is wrong with a text, as data with a place; all wording' },
  { folder: 'vocabulary', pure: true, holds: 'units, observations, near misses: the words of the trade' },
  { folder: 'document', pure: true, holds: 'YAML or JSON text as a tree in which each part knows its place' },
  {
    folder: 'shape',
    pure: true,
    holds: 'types and validators generated from `schema/`; whether a document has its shape',
  },
  {
    folder: 'protocol',
    pure: true,
    holds: 'protocols and ladders with their names resolved, and the checks',
  },
  { folder: 'logic', pure: true, holds: 'the ordered list of named steps that a protocol becomes' },
  { folder: 'series', pure: true, holds: 'a patient’s sets over time, turned into bounds' },
  {
    folder: 'targets',
    pure: true,
    holds: 'what runs the logic over bounds: `evaluator/` here, the others elsewhere',
  },
  { folder: 'outcome', pure: true, holds: 'the answer about a patient, and the sentences that explain it' },
  {
    folder: 'ward',
    pure: true,
    holds: 'several protocols that are read together on one ladder, and their one outcome',
  },
  { folder: 'cases', pure: true, holds: 'a council’s cases, run against its protocol or ward policy' },
  { folder: 'review', pure: true, holds: 'questions about a protocol as a whole' },
  {
    folder: 'editions',
    pure: true,
    holds: 'sealed editions, the record of who approved them, and what is in force at a time',
  },
  {
    folder: 'authoring',
    pure: true,
    holds:
      'what someone who writes a file is helped with: completion, hover, mends, edits as splices, how each case came out',
  },
  {
    folder: 'bedside',
    pure: true,
    holds:
      'what a clinician enters and reads: the form, the outcome in parts, what would raise it, the handoff',
  },
  {
    folder: 'teach',
    pure: true,
    holds:
      'what an educator and a learner use: cases that unfold, answers held against the rules, decks, results, the handout',
  },
  {
    folder: 'handbook',
    pure: true,
    holds: 'the policy document that a council signs: rules as sentences that read back, and its pages',
  },
  { folder: 'command-line', pure: false, holds: '`vitalwright`: files, printing, exit codes' },
  { folder: 'generate', pure: false, holds: 'writes the generated files and reference pages' },
];

/** The public door, `src/index.ts`: it comes after the last layer that runs in a page. */
export const door = 'index.ts';

/** The table of the layers as DEVELOPERS.md shows it. */
export function layersAsMarkdown(): string {
  const rows = layers.map(
    ({ folder, pure, holds }) => `| \`${folder}\` | ${holds} | ${pure ? 'yes' : 'no'} |`,
  );
  return ['| folder | holds | runs in a page |', '|---|---|---|', ...rows].join('\n');
}
