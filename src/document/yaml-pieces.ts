/** A part of a YAML text that can be read by itself: an entry of the map at the top, or an item of a list right below it. */
export interface Piece {
  readonly kind: 'entry' | 'item';
  /** Of an item: which list it belongs to, by the place of the line with its key. */
  readonly listAt: number;
  readonly start: number;
  readonly text: string;
}

/** Signs at the beginning of a line that concern more than one part of a text. */
const wide = /^(?:---|\.\.\.|%|\uFEFF)/m;
const keyLine = /^[A-Za-z_][A-Za-z0-9_]*:(?=[ \t\r\n]|$)/gm;
const nothingBehind = /^[^:]*:[ \t]*(?:#[^\n]*)?\r?$/;
const blank = /^[ \t]*(?:#.*)?\r?$/;

/**
 * Cuts a text where each part begins on a line of its own. Null where that cannot be seen at the lines alone. The cut is only a guess:
 * it holds when each piece turns out to be one entry or one item without any mistake.
 *
 *     protocol: a            ─► entry
 *     rules:                 ─► entry
 *       - rule: b            ─► item
 *       - rule: c            ─► item
 */
export function piecesOf(text: string): Piece[] | null {
  if (wide.test(text)) return null;
  const starts = [...text.matchAll(keyLine)].map(({ index }) => index);
  const [first] = starts;
  if (first === undefined || !isBlank(text.slice(0, first))) return null;
  return starts.flatMap((start, index) => piecesOfEntry(text, start, starts[index + 1] ?? text.length));
}

/** An entry whose value is a list on lines is cut into its items; its key stays a piece of its own. */
function piecesOfEntry(text: string, start: number, end: number): Piece[] {
  const whole: Piece = { kind: 'entry', listAt: start, start, text: text.slice(start, end) };
  const lineEnd = text.indexOf('\n', start);
  if (lineEnd === -1 || lineEnd >= end || !nothingBehind.test(text.slice(start, lineEnd))) return [whole];
  const dash = /^( *)- /m.exec(text.slice(lineEnd + 1, end));
  if (!dash) return [whole];
  const firstItem = lineEnd + 1 + dash.index;
  if (!isBlank(text.slice(lineEnd + 1, firstItem))) return [whole];
  const itemLine = new RegExp(`^${dash[1] ?? ''}- `, 'gm');
  const body = text.slice(firstItem, end);
  const items = [...body.matchAll(itemLine)].map(({ index }) => firstItem + index);
  const cut = items.map((at, index): Piece => {
    const to = items[index + 1] ?? end;
    return { kind: 'item', listAt: start, start: at, text: text.slice(at, to) };
  });
  return [{ ...whole, text: text.slice(start, firstItem) }, ...cut];
}

const isBlank = (text: string): boolean => text.split('\n').every((line) => blank.test(line));
