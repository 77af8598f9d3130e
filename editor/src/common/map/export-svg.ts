import { caution } from '../../../../src/index.ts';
import { drawPlane, type Drawing } from './draw-plane.ts';
import type { Fill } from './fill.ts';
import { legendOf } from './fills.ts';
import { patterns } from './patterns.ts';

const line = 19;
/** About so many letters stand in one line of the picture. */
const letters = 104;

/**
 * The map as a picture that stands alone, for a slide or a policy paper: with title, edition, digest, legend, what is held and the
 * caution, and without a date. `serialize` turns an element into XML.
 */
export function exportSvg(
  drawing: Drawing,
  document: Document,
  serialize: (element: Element) => string,
): string {
  const { plane, by, frame } = drawing;
  const { title, edition, digest } = plane.protocol;
  const id = `${drawing.id}-saved`;
  const plot = drawPlane({ ...drawing, id }, document);
  const head = [
    ...wrapped(title, 74).map(bold),
    plain(`Edition ${edition}, ${shortDigest(digest)}. ${filledBy(drawing)}`),
  ];
  const y = 26 + head.length * line;
  plot.setAttribute('x', '0');
  plot.setAttribute('y', String(y));
  const legend = legendOf(plane, by);
  const below = y + frame.height + 24;
  const after = below + legend.length * 24 + 8;
  const foot = [
    ...pointsInWords(drawing),
    ...wrapped(`Held: ${plane.held.join('; ') || 'nothing'}.`, letters),
    '',
    ...wrapped(caution, letters),
  ];
  const height = after + foot.length * line + 16;
  const parts = [
    textLines(head, 26),
    serialize(plot),
    ...legend.map((fill, index) => legendRow(fill, below + index * 24, id)),
    textLines(foot.map(plain), after + 12),
  ];
  const defs = serialize(patterns(document, `${id}-legend`));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${frame.width} ${height}" width="${frame.width}" height="${height}" font-family="system-ui, sans-serif" font-size="13" fill="#1f2430" role="img"><title>${escaped(title)}</title><rect width="100%" height="100%" fill="#ffffff"/>${defs}${parts.join('')}</svg>\n`;
}

/** `sha256:3fd5a1c4b29e…` as its first twelve digits. */
export const shortDigest = (digest: string): string =>
  `digest ${digest.replace(/^sha256:/, '').slice(0, 12)}`;

/** What the map is filled by, as a sentence. */
export function filledBy({ plane, by }: Pick<Drawing, 'plane' | 'by'>): string {
  if (by === 'at_least') return 'Filled by the level that is called for at least.';
  if (by === 'could_be') return 'Filled by the highest level that it could be.';
  if (by === 'changes') return 'Filled only where something changes.';
  return `Filled by the state of one rule: ${plane.rules.find(({ name }) => name === by.rule)?.title ?? by.rule}.`;
}

function pointsInWords({ points }: Drawing): string[] {
  return points.length === 0 ? [] : ['Cases: a ring passes, a cross fails.'];
}

interface Line {
  readonly text: string;
  readonly bold: boolean;
}

const plain = (text: string): Line => ({ text, bold: false });
const bold = (text: string): Line => ({ text, bold: true });

const textLines = (lines: readonly Line[], from: number): string =>
  lines
    .map(
      (each, index) =>
        `<text x="16" y="${from + index * line}"${each.bold ? ' font-weight="700" font-size="17"' : ''}>${escaped(each.text)}</text>`,
    )
    .join('');

function legendRow({ words, colour, pattern }: Fill, y: number, id: string): string {
  const box = (fill: string): string =>
    `<rect x="16" y="${y}" width="34" height="17" fill="${fill}" stroke="#1f2430"/>`;
  const over = pattern === null ? '' : box(`url(#${id}-legend-${pattern})`);
  return `${box(colour ?? '#ffffff')}${over}<text x="60" y="${y + 13}">${escaped(words)}</text>`;
}

function wrapped(text: string, most: number): string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last !== '' && last.length + word.length >= most) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines;
}

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (each) => escapes[each] ?? '');
