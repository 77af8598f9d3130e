import { expect, test } from 'vitest';
import {
  answerBefore,
  changedPlane,
  changeInWords,
  moveOf,
  planeOf,
  protocolReader,
  readProtocol,
  type Plane,
} from '../../../src/index.ts';
import { cellAt } from '../../../src/review/cells/cell-at.ts';
import { levelInWords } from '../../../src/review/cells/plane-in-words.ts';
import { bundledLadder, bundledText } from '../../bundled.ts';

const axes = ['heart_rate', 'respiratory_rate'] as const;

function planeWith(change: (text: string) => string): Plane {
  const text = change(bundledText('lessons/two_signs_together/protocol.yaml'));
  const { protocol } = readProtocol('protocol.yaml', text, { ladder: bundledLadder() });
  const held = protocol && protocolReader(protocol).series('held', '{}').series;
  if (!protocol || !held) throw new Error('the lesson cannot be read');
  return planeOf(protocol, { axes, held });
}

const before = planeWith((text) => text);
const after = planeWith((text) =>
  text.replace('when: { heart_rate: { above: 90 } }', 'when: { heart_rate: { above: 80 } }'),
);
const laid = changedPlane(before, after);

test('every point of the plane is answered as before on the one side and as now on the other', () => {
  let moved = 0;
  for (let x = before.x.possible[0]; x <= before.x.possible[1]; x += 1) {
    for (let y = before.y.possible[0]; y <= before.y.possible[1]; y += 1) {
      const here = cellAt(laid, x, y);
      const [was, is] = [cellAt(before, x, y), cellAt(after, x, y)];
      if (!here || !was || !is) throw new Error(`no cell at ${x}, ${y}`);
      expect(answerBefore(laid, here.answer)).toEqual(before.answers[was.answer]);
      expect(laid.answers[here.answer]).toEqual(after.answers[is.answer]);
      const isOther =
        levelInWords(answerBefore(laid, here.answer), before) !==
        levelInWords(after.answers[is.answer] ?? { ...answerBefore(laid, here.answer) }, after);
      expect(['higher', 'lower', 'otherwise'].includes(moveOf(laid, here.answer))).toBe(isOther);
      if (isOther) moved += 1;
    }
  }
  expect(moved).toBeGreaterThan(0);
});

test('a lower threshold moves levels up, and the other way round it moves them down', () => {
  const moves = (plane: typeof laid): Set<string> => new Set(plane.answers.map((_, at) => moveOf(plane, at)));
  expect(moves(laid)).toContain('higher');
  expect(moves(laid)).not.toContain('lower');
  expect(moves(changedPlane(after, before))).toContain('lower');
  expect(moves(changedPlane(after, before))).not.toContain('higher');
  expect(moves(changedPlane(before, before))).toEqual(new Set(['same']));
});

test('a point says what was before and what is now, and which rules moved', () => {
  const at = laid.cells.find(({ answer }) => moveOf(laid, answer) === 'higher');
  const words = changeInWords(laid, at?.x[0] ?? 0, at?.y[0] ?? 0);
  expect(words).toContain('before: ');
  expect(words).toContain('now: ');
  expect(words).toContain('Met only now: ');
  expect(changeInWords(laid, -1, -1)).toContain('outside the map');
});

test('two planes with other axes are not laid over each other', () => {
  expect(() => changedPlane(before, { ...after, x: after.y })).toThrow('other axes');
});
