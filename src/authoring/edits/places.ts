import type { ListNode, MapEntry, MapNode } from '../../document/document.ts';

/** Where the line of a place begins. */
export const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1;

/** Where the line of a place ends, before its line end. */
export function lineEnd(text: string, at: number): number {
  const newline = text.indexOf('\n', at);
  if (newline === -1) return text.length;
  return newline > at && text[newline - 1] === '\r' ? newline - 1 : newline;
}

/** Where the next line begins; the end of the text after its last line. */
export function nextLine(text: string, at: number): number {
  const newline = text.indexOf('\n', at);
  return newline === -1 ? text.length : newline + 1;
}

export const column = (text: string, at: number): number => at - lineStart(text, at);

/** Whether nothing but spaces stands before a place on its line. */
export const beginsLine = (text: string, at: number): boolean =>
  text.slice(lineStart(text, at), at).trim() === '';

export const isFlow = (text: string, { span }: MapNode | ListNode): boolean =>
  text[span.start] === '{' || text[span.start] === '[';

/** Where an entry ends: after its value, or after its colon where none is written. */
export function entryEnd(text: string, { keySpan, value }: MapEntry): number {
  if (value.span.end > keySpan.end) return value.span.end;
  return colonAfter(text, keySpan.end) ?? keySpan.end;
}

/** The place after the colon of a key; null where it has none, in brackets. */
export function colonAfter(text: string, keyEnd: number): number | null {
  const [found] = /^[ \t]*:/.exec(text.slice(keyEnd, keyEnd + 200)) ?? [];
  return found === undefined ? null : keyEnd + found.length;
}

/** Where the dash of an item of a list on lines stands; null where it cannot be found. */
export function dashOf(text: string, list: ListNode, index: number): number | null {
  const item = list.items[index];
  if (!item) return null;
  if (index === 0) return list.span.start;
  const indent = column(text, list.span.start);
  const before = list.items[index - 1]?.span.end ?? 0;
  for (let at = item.span.start - 1; at >= before; at -= 1) {
    const isIt = text[at] === '-' && column(text, at) === indent && beginsLine(text, at);
    if (isIt) return at;
  }
  return null;
}

/** What is put before a comment needs a space to it. */
export const beforeComment = (text: string, to: number, put: string): string =>
  text[to] === '#' ? `${put} ` : put;
