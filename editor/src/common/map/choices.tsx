import { useId, type ReactNode } from 'react';
import type { Plane, PlaneLine } from '../../../../src/index.ts';
import type { FillBy } from './fills.ts';

/** What of the plane is shown, and how. */
export interface Shown {
  readonly by: FillBy;
  /** Everything that is possible; else what is plausible. */
  readonly whole: boolean;
  /** The titles of the lines that are drawn. */
  readonly lines: readonly string[];
}

interface Props {
  readonly plane: Plane;
  readonly lines: readonly PlaneLine[];
  readonly shown: Shown;
  readonly onShown: (shown: Shown) => void;
}

/** The controls above the map. */
export function Choices({ plane, lines, shown, onShown }: Props): ReactNode {
  const id = useId();
  const by = typeof shown.by === 'string' ? shown.by : `rule ${shown.by.rule}`;
  const fillBy = (value: string): FillBy =>
    value === 'at_least' || value === 'could_be' ? value : { rule: value.replace(/^rule /, '') };
  const toggle = (title: string): readonly string[] =>
    shown.lines.includes(title) ? shown.lines.filter((each) => each !== title) : [...shown.lines, title];
  return (
    <div className="map-choices">
      <label htmlFor={id}>Fill by</label>
      <select id={id} value={by} onChange={({ target }) => onShown({ ...shown, by: fillBy(target.value) })}>
        <option value="at_least">the level that is called for at least</option>
        <option value="could_be">the highest level that it could be</option>
        {plane.rules.map(({ name, title }) => (
          <option key={name} value={`rule ${name}`}>{`one rule: ${title}`}</option>
        ))}
      </select>
      <label className="map-check">
        <input
          type="checkbox"
          checked={shown.whole}
          onChange={({ target }) => onShown({ ...shown, whole: target.checked })}
        />
        Show everything that is possible
      </label>
      {lines.length > 0 && (
        <details className="map-lines">
          <summary>Lines</summary>
          <fieldset>
            <legend className="visually-hidden">Lines over the map</legend>
            {lines.map(({ title }) => (
              <label className="map-check" key={title}>
                <input
                  type="checkbox"
                  checked={shown.lines.includes(title)}
                  onChange={() => onShown({ ...shown, lines: toggle(title) })}
                />
                {title}
              </label>
            ))}
          </fieldset>
        </details>
      )}
    </div>
  );
}
