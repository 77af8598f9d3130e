import { useState, type ReactNode } from 'react';
import type { Helper } from '../ask.ts';
import type { ChangesHere } from '../changes/changes-here.ts';
import { AxisFields } from './axis-fields.tsx';
import { ChangeMap } from './change-map.tsx';
import { MapField } from './map-field.tsx';
import { useChangeMap } from './use-change-map.ts';

interface Props {
  readonly helper: Helper;
  readonly changes: ChangesHere;
  readonly axes: readonly [string, string] | null;
  readonly onAxes: (axes: readonly [string, string]) => void;
  /** The example that is walked through: by itself, everything else is held as in it. */
  readonly at: number;
  readonly onWalk: (at: number) => void;
}

const ordinary = 'ordinary';

/** Where on the plane of two observations something changes, around one of the examples or around ordinary values. */
export function MapRoom({ helper, changes, axes, onAxes, at, onWalk }: Props): ReactNode {
  const { witnesses } = changes;
  const [isOrdinary, setOrdinary] = useState(witnesses.length === 0);
  const [protocol, setProtocol] = useState<string | null>(null);
  const heldAs = isOrdinary || witnesses.length === 0 ? null : Math.min(at, witnesses.length - 1);
  const found = useChangeMap(helper, { axes, protocol, heldAs });
  if (found === 'drawing') return <p className="waiting">Drawing both sides…</p>;
  if (found === 'failed') return <p className="panel">The map could not be worked out.</p>;
  const held = [
    { name: ordinary, title: 'Ordinary values' },
    ...witnesses.map(({ of }, index) => ({ name: String(index), title: `Example ${index + 1}: ${of}` })),
  ];
  const hold = (name: string): void => {
    setOrdinary(name === ordinary);
    if (name !== ordinary) onWalk(Number(name));
  };
  return (
    <section className="panel map-room">
      <h2>Where it changes</h2>
      <p className="hint">
        Two observations on the axes, everything else held. Only what changes is filled. Around another
        example other ground may change, so look around several of them.
      </p>
      <div className="map-fields">
        {found.kind === 'map' && <AxisFields found={found} onAxes={onAxes} onProtocol={setProtocol} />}
        <MapField
          label="Everything else as in"
          chosen={heldAs === null ? ordinary : String(heldAs)}
          choices={held}
          onChoose={hold}
        />
      </div>
      {found.kind === 'none' ? (
        <p>{found.why}</p>
      ) : (
        <ChangeMap
          key={`${found.plane.x.name} ${found.plane.y.name} ${heldAs ?? ''}`}
          plane={found.plane}
          example={found.example}
        />
      )}
    </section>
  );
}
