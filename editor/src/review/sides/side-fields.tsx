import { useId, type ReactNode } from 'react';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { sideChoices, type ChosenSides } from './side-choices.ts';

interface Props extends ChosenSides {
  readonly protocol: SiteProtocol;
  readonly onSides: (sides: readonly [string, string]) => void;
}

/** At the head of the room: which edition, or draft, is compared with which. */
export function SideFields({ protocol, before, after, onSides }: Props): ReactNode {
  const choices = sideChoices(protocol);
  return (
    <>
      {before !== null && (
        <SideField
          label="Before"
          chosen={before}
          choices={choices}
          onChoose={(name) => onSides([name, after])}
        />
      )}
      <SideField
        label={before === null ? 'Reviewed' : 'After'}
        chosen={after}
        choices={choices}
        onChoose={(name) => onSides([before ?? name, name])}
      />
    </>
  );
}

interface FieldProps {
  readonly label: string;
  readonly chosen: string;
  readonly choices: ReturnType<typeof sideChoices>;
  readonly onChoose: (name: string) => void;
}

function SideField({ label, chosen, choices, onChoose }: FieldProps): ReactNode {
  const id = useId();
  return (
    <div className="head-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={chosen} onChange={({ target }) => onChoose(target.value)}>
        {choices.map(({ name, label: words }) => (
          <option key={name} value={name}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
