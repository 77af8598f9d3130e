import { useId, type ReactNode } from 'react';
import { sentence } from '../../common/sentence.ts';

interface FieldProps {
  readonly label: string;
  readonly chosen: string;
  readonly choices: readonly { readonly name: string; readonly title: string }[];
  readonly onChoose: (name: string) => void;
}

/** A choice above the map, under its label. */
export function MapField({ label, chosen, choices, onChoose }: FieldProps): ReactNode {
  const id = useId();
  return (
    <div className="map-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={chosen} onChange={({ target }) => onChoose(target.value)}>
        {choices.map(({ name, title }) => (
          <option key={name} value={name}>
            {sentence(title)}
          </option>
        ))}
      </select>
    </div>
  );
}
