import type { ReactNode } from 'react';
import { MapField } from './map-field.tsx';
import type { MapHere } from './map-here.ts';

interface Props {
  readonly found: Extract<MapHere, { kind: 'map' }>;
  readonly onAxes: (axes: readonly [string, string]) => void;
  readonly onProtocol: (name: string) => void;
}

/** Of which protocol the map is, and what is on its axes. What stands on the other axis changes places with what is chosen. */
export function AxisFields({
  found: { plane, axes, protocols, protocol },
  onAxes,
  onProtocol,
}: Props): ReactNode {
  const [x, y] = [plane.x.name, plane.y.name];
  return (
    <>
      {protocols.length > 1 && (
        <MapField label="Protocol, by itself" chosen={protocol} choices={protocols} onChoose={onProtocol} />
      )}
      <MapField
        label="Across"
        chosen={x}
        choices={axes}
        onChoose={(name) => onAxes([name, name === y ? x : y])}
      />
      <MapField
        label="Up"
        chosen={y}
        choices={axes}
        onChoose={(name) => onAxes([name === x ? y : x, name])}
      />
    </>
  );
}
