import { printParseErrorCode, type ParseError } from 'jsonc-parser';
import type { TextFaults } from './text-faults.ts';

/** What the parser means, for a nurse. */
const words: Readonly<Record<string, string>> = {
  InvalidSymbol: 'this is no number, no true or false, and no text in quotation marks.',
  InvalidNumberFormat: 'this is not a number in plain digits.',
  PropertyNameExpected: 'a name in quotation marks belongs here; after the last entry stands no comma.',
  ValueExpected: 'a value belongs here; after the last value stands no comma.',
  ColonExpected: 'a colon belongs between a name and its value.',
  CommaExpected: 'a comma belongs between two entries.',
  CloseBraceExpected: 'a { that opens before here is not closed.',
  CloseBracketExpected: 'a [ that opens before here is not closed.',
  EndOfFileExpected: 'the text should end here; it holds one set or one series.',
  InvalidCommentToken: 'a comment cannot stand in JSON.',
  UnexpectedEndOfComment: 'a comment cannot stand in JSON.',
  UnexpectedEndOfString: 'the quotation mark that opens here is not closed on this line.',
  UnexpectedEndOfNumber: 'digits are missing at the end of this number.',
  InvalidUnicode: 'after \\u four hexadecimal digits belong.',
  InvalidEscapeCharacter: 'after \\ only ", \\, /, b, f, n, r, t or u can stand.',
  InvalidCharacter: 'a line end or a tab in a text is written as \\n or \\t.',
};

export const jsonDetail = (name: string): string => words[name] ?? 'this does not belong here.';

/** Says what the parser found, once for each line: what follows on a line is mostly the same mistake. */
export function refuseJsonMistakes(text: string, errors: readonly ParseError[], faults: TextFaults): void {
  let lineEnd = -1;
  for (const { error, offset: start, length } of errors) {
    if (start <= lineEnd) continue;
    const detail = jsonDetail(printParseErrorCode(error));
    faults.add('not_json', { start, end: start + length }, { detail });
    const next = text.indexOf('\n', start);
    lineEnd = next === -1 ? text.length : next;
  }
}
