import type { Pattern } from './fill.ts';

const space = 'http://www.w3.org/2000/svg';
const ink = '#1f2430';

interface Drawn {
  readonly size: readonly [number, number];
  readonly turned?: number;
  /** Drawn on a white edge, so that it is seen on every shade. */
  readonly path?: string;
}

const drawn: Readonly<Record<Exclude<Pattern, 'dots'>, Drawn>> = {
  lines: { size: [9, 9], turned: 45, path: 'M0 0V9' },
  rising: { size: [18, 15], path: 'M3 11l6-7 6 7' },
  falling: { size: [18, 15], path: 'M3 4l6 7 6-7' },
  bars: { size: [12, 12], path: 'M0 6H12' },
};

/** All patterns of a map, in black and white, so that they print. Their names begin with `id`. */
export function patterns(document: Document, id: string): SVGElement {
  const made = (name: string, attributes: Readonly<Record<string, string>>): SVGElement => {
    const element = document.createElementNS(space, name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    return element;
  };
  const box = (name: string, [width, height]: readonly [number, number], turned = 0): SVGElement =>
    made('pattern', {
      patternUnits: 'userSpaceOnUse',
      width: String(width),
      height: String(height),
      id: `${id}-${name}`,
      ...(turned === 0 ? {} : { patternTransform: `rotate(${turned})` }),
    });
  const all = made('defs', {});
  for (const [name, { size, turned, path = '' }] of Object.entries(drawn)) {
    const pattern = box(name, size, turned);
    const line = { d: path, fill: 'none' };
    pattern.append(
      made('path', { ...line, stroke: '#fff', 'stroke-width': '5' }),
      made('path', { ...line, stroke: ink, 'stroke-width': '1.6' }),
    );
    all.append(pattern);
  }
  const dots = box('dots', [9, 9]);
  dots.append(made('circle', { cx: '4', cy: '4', r: '1.3', fill: '#545b6b' }));
  all.append(dots);
  return all;
}
