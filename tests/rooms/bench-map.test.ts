import { expect, test } from 'vitest';
import type { SiteProtocol, SiteText } from '../../editor/src/common/site-protocol.ts';
import { Bench } from '../../editor/src/write/work/bench.ts';
import type { MapHere } from '../../editor/src/write/messages.ts';
import { bundledText } from '../bundled.ts';

const textOf = (file: string): SiteText => ({ file, text: bundledText(file) });
const ladder = textOf('alder_ladder/ladder.yaml');
const cases = textOf('pressure_reading/cases.yaml');
const { file, text } = textOf('pressure_reading/protocol.yaml');
const protocol: SiteProtocol = {
  kind: 'protocol',
  id: 'pressure_reading',
  title: 'Pressure',
  file,
  text,
  ladder,
  cases,
};

const opened = (): Bench => {
  const bench = new Bench();
  bench.open({ kind: 'open', protocol, all: [protocol], ladders: [ladder] });
  return bench;
};

function mapped(bench: Bench, written: string): MapHere {
  const { map } = bench.map({
    kind: 'map',
    texts: { protocol: written, cases: cases.text },
    axes: ['systolic', 'diastolic'],
    held: null,
  });
  if (!map) throw new Error('there is no map');
  return map;
}

test('while only words change the plane stays, under the digest of the text as it is now', () => {
  const bench = opened();
  const before = mapped(bench, text);
  const after = mapped(bench, text.replace('says: ', 'says: Now and then. '));
  expect(after.plane.cells).toBe(before.plane.cells);
  expect(after.plane.protocol.digest).not.toBe(before.plane.protocol.digest);
});

test('a number, a title or a name makes the plane anew, as it would be drawn for the first time', () => {
  const bench = opened();
  const before = mapped(bench, text);
  for (const [was, is] of [
    ['{ systolic: { below: 80 } }', '{ systolic: { below: 85 } }'],
    ['title: Systolic far too low', 'title: Systolic far too low now'],
  ] as const) {
    const changed = text.replace(was, is);
    expect(changed).not.toBe(text);
    const after = mapped(bench, changed);
    expect(after.plane).not.toEqual(before.plane);
    expect(after).toEqual(mapped(opened(), changed));
  }
});
