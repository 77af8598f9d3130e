import type { ErrorCode, YAMLParseError } from 'yaml';
import type { TextFaults } from './text-faults.ts';

/** What the parser means, for a nurse: its code, how its own sentence begins (any, when empty), and ours. */
type Words = readonly [code: ErrorCode, begins: string, says: string];

const words: readonly Words[] = [
  [
    'BAD_DQ_ESCAPE',
    '',
    'after \\ in double quotation marks only n, t, ", \\ and a few others can stand. Single quotation marks take \\ as it is.',
  ],
  ['BAD_INDENT', 'All', 'this line does not begin in the same column as the lines that it belongs with.'],
  ['BAD_INDENT', 'Flow', 'a bracket that opens before here is not closed.'],
  ['BAD_INDENT', '', 'this line does not begin in the column where it should.'],
  ['BAD_SCALAR_START', '', 'a text that begins with this sign stands in quotation marks.'],
  [
    'BLOCK_AS_IMPLICIT_KEY',
    'Nested',
    'a second name and colon follow on one line. A text with a colon and a space in it stands in quotation marks.',
  ],
  ['BLOCK_AS_IMPLICIT_KEY', '', 'a list stands where a name belongs.'],
  ['BLOCK_IN_FLOW', '', 'inside brackets every list and group of keys has brackets too.'],
  ['KEY_OVER_1024_CHARS', '', 'a name is longer than 1,024 characters.'],
  ['MISSING_CHAR', 'Missing closing', 'the quotation mark that opens here, or before, is not closed.'],
  ['MISSING_CHAR', 'Missing ,', 'a comma is missing in front of this.'],
  ['MISSING_CHAR', 'Missing space', 'a space is missing after the colon.'],
  [
    'MISSING_CHAR',
    'Implicit map keys',
    'a line without a colon. A name is followed by a colon, a space and its value.',
  ],
  ['MISSING_CHAR', 'Comments', 'a space is missing in front of #.'],
  ['MISSING_CHAR', 'Sequence item', 'a dash and a space are missing in front of this.'],
  ['MISSING_CHAR', 'Flow', 'a bracket that opens before here is not closed.'],
  ['MISSING_CHAR', '', 'a sign is missing here.'],
  [
    'MULTILINE_IMPLICIT_KEY',
    '',
    'a name and its colon stand on one line; here a line without a colon comes first.',
  ],
  ['TAB_AS_INDENT', '', 'a tab stands in front of this. Lines are moved to the right with spaces.'],
  ['UNEXPECTED_TOKEN', 'Block scalar', 'a text that begins with > or | stands in quotation marks.'],
  ['UNEXPECTED_TOKEN', '', 'this does not belong here.'],
];

/** Mistakes in marks that are refused anyway, at their own places. */
const refusedAnyway: ReadonlySet<ErrorCode> = new Set([
  'ALIAS_PROPS',
  'BAD_ALIAS',
  'BAD_COLLECTION_TYPE',
  'BAD_DIRECTIVE',
  'BAD_PROP_ORDER',
  'MULTIPLE_ANCHORS',
  'MULTIPLE_DOCS',
  'MULTIPLE_TAGS',
  'TAG_RESOLVE_FAILED',
]);

/** Says what the parser found, once for each line: what follows on a line is mostly the same mistake. */
export function refuseMistakes(text: string, errors: readonly YAMLParseError[], faults: TextFaults): void {
  const sorted = errors
    .filter(({ code }) => faults.isEmpty || !refusedAnyway.has(code))
    .sort((left, right) => left.pos[0] - right.pos[0]);
  let lineEnd = -1;
  for (const { code, message, pos } of sorted) {
    const [start, end] = pos;
    if (start <= lineEnd) continue;
    const detail = detailOf(code, message);
    faults.add('not_yaml', { start, end }, { detail });
    const next = text.indexOf('\n', start);
    lineEnd = next === -1 ? text.length : next;
  }
}

function detailOf(code: ErrorCode, message: string): string {
  const found = words.find(([own, begins]) => own === code && message.startsWith(begins));
  return found?.[2] ?? 'this does not belong here.';
}
