import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../../src/outcome/compile.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import { readLadder, type Compiled } from '../../../src/index.ts';
import { documentToProtocol } from '../../../src/protocol/document-to-protocol.ts';
import { axesOf } from '../../../src/review/cells/axes-of.ts';
import { planeOf } from '../../../src/review/cells/plane-of.ts';
import { vitalSigns } from '../../../src/vocabulary/vital-signs.ts';
import { drawn } from '../../agreement/draw.ts';
import { drawExample } from '../../agreement/generators.ts';
import { ladderText } from '../../agreement/protocols.ts';
import { evaluatorAt, finder, seriesOf } from './judged.ts';

function compiledFrom(text: string): Compiled {
  const { ladder } = readLadder('ladder.yaml', ladderText);
  const { document } = yamlToDocument('protocol.yaml', text);
  const { protocol } = documentToProtocol(document as NonNullable<typeof document>, {
    dictionary: vitalSigns,
    ladder,
    today: null,
  });
  return compile(protocol as NonNullable<typeof protocol>);
}

test(
  'of made-up protocols every single point of every plane is what the evaluator says',
  { timeout: 120_000 },
  () => {
    let planes = 0;
    const property = fc.property(
      drawn((draw) => drawExample(draw, 4)),
      ({ made, sets }) => {
        const compiled = compiledFrom(made.text);
        const names = axesOf(compiled).map(({ name }) => name);
        const held = sets.map((set) => seriesOf(compiled, set)).filter((each) => each.sets.length === 1);
        for (const series of held) {
          for (const [index, x] of names.slice(0, -1).entries()) {
            const plane = planeOf(compiled, { axes: [x, names[index + 1] as string], held: series });
            const find = finder(plane);
            planes += 1;
            for (let at = plane.x.possible[0]; at <= plane.x.possible[1]; at += 1) {
              for (let up = plane.y.possible[0]; up <= plane.y.possible[1]; up += 1)
                expect(find([at, up])).toEqual(evaluatorAt(compiled, series, plane, [at, up]));
            }
          }
        }
      },
    );
    fc.assert(property, { numRuns: 60, seed: 20_260_302 });
    expect(planes).toBeGreaterThan(40);
  },
);
