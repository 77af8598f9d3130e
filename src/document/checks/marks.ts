import { CST } from 'yaml';
import type { Span } from '../../problems/place.ts';
import type { TextFaults } from '../text-faults.ts';

/** Signs of YAML that copy parts or change what kind of value follows, by the name that the lexer gives them. */
const marks = { anchor: 'anchor', alias: 'alias', tag: 'tag', 'directive-line': 'directive' } as const;

/** Refuses an anchor, an alias, a tag or a directive. */
export function refuseMark(written: string, span: Span, faults: TextFaults): void {
  const type = CST.tokenType(written) ?? '';
  if (Object.hasOwn(marks, type)) faults.add(marks[type as keyof typeof marks], span, { written });
}
