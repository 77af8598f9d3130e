import { useId, useState, type ReactNode } from 'react';
import { valueAt, type Axis } from '../../../../../src/index.ts';
import { download } from '../../../common/download.ts';
import { PlaneMap } from '../../../common/map/plane-map.tsx';
import { sentence } from '../../../common/sentence.ts';
import type { GivenSet, MapHere } from '../../messages.ts';
import type { SideProps } from '../side-props.ts';
import { HeldValues } from './held-values.tsx';
import { useMap } from './use-map.ts';

/** Which readings trigger which advice, drawn from the texts as they stand. */
export function MapPanel({ open, kind, axes, onAxes, onCaseOf }: SideProps): ReactNode {
  const [held, setHeld] = useState<GivenSet | null>(null);
  const [point, setPoint] = useState<{ readonly x: number; readonly y: number } | null>(null);
  const map = useMap(open, axes, held);
  if (kind === 'ward')
    return (
      <p className="panel">A map is drawn of one protocol. Open one of those that this ward reads with.</p>
    );
  if (map === 'drawing') return <p className="panel">Drawing the map…</p>;
  if (map === null)
    return (
      <p className="panel">
        A map needs two observations that are numbers, and values to hold that can be read.
      </p>
    );
  const { plane, lines, points } = map;
  const at = point ?? {
    x: plane.x.ordinary ?? plane.x.plausible[0],
    y: plane.y.ordinary ?? plane.y.plausible[0],
  };
  return (
    <section className="panel map-panel" aria-label="Map">
      <AxisChoices map={map} onAxes={onAxes} />
      <PlaneMap
        key={`${plane.x.name} ${plane.y.name}`}
        plane={plane}
        points={points}
        lines={lines}
        onPoint={setPoint}
        onExport={(name, svg) => download(name, svg, document)}
      />
      <p className="hint">
        Cases stand where their two numbers are; what else they give may differ from what is held here.
      </p>
      <button type="button" className="button" onClick={() => onCaseOf(withPoint(map, held ?? map.held, at))}>
        {`Make a case of ${inWords(plane.x, at.x)} and ${inWords(plane.y, at.y)}`}
      </button>
      <HeldValues map={map} held={held ?? map.held} onHeld={setHeld} />
    </section>
  );
}

const inWords = (axis: Axis, step: number): string =>
  `${axis.title} ${Number(valueAt(axis, step).toFixed(2))}${axis.unit === null ? '' : ` ${axis.unit}`}`;

/** What is held, with the point on the axes. */
function withPoint(
  { plane, form }: MapHere,
  held: GivenSet,
  at: { readonly x: number; readonly y: number },
): GivenSet {
  const fields = [...form.patient, ...[...form.needs, ...form.helps].flatMap((group) => group.fields)];
  const number = (axis: Axis, step: number): GivenSet[string] => ({
    kind: 'number',
    text: String(Number(valueAt(axis, step).toFixed(6))),
    unit: fields.find(({ name }) => name === axis.name)?.units[0]?.ucum ?? '',
  });
  return { ...held, [plane.x.name]: number(plane.x, at.x), [plane.y.name]: number(plane.y, at.y) };
}

interface AxisProps {
  readonly map: MapHere;
  readonly onAxes: (axes: readonly [string, string]) => void;
}

function AxisChoices({ map: { axes, plane }, onAxes }: AxisProps): ReactNode {
  const id = useId();
  const [x, y] = [plane.x.name, plane.y.name];
  const choose = (which: 0 | 1, name: string): void => {
    // What stands on the other axis changes places with it.
    if (which === 0) onAxes([name, name === y ? x : y]);
    else onAxes([name === x ? y : x, name]);
  };
  return (
    <div className="map-axes">
      {(['Across', 'Up'] as const).map((label, which) => (
        <div key={label} className="form-row">
          <label htmlFor={`${id}-${label}`}>{label}</label>
          <select
            id={`${id}-${label}`}
            value={which === 0 ? x : y}
            onChange={({ target }) => choose(which === 0 ? 0 : 1, target.value)}
          >
            {axes.map(({ name, title }) => (
              <option key={name} value={name}>
                {sentence(title)}
              </option>
            ))}
          </select>
        </div>
      ))}
    </div>
  );
}
