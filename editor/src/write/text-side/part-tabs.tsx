import type { ReactNode } from 'react';
import { fileOf, parts, type Part } from '../parts.ts';

interface Props {
  readonly kind: 'protocol' | 'ward';
  readonly part: Part;
  readonly unsaved: readonly Part[];
  readonly problemsIn: (part: Part) => number;
  readonly onPart: (part: Part) => void;
}

/** Which of the two texts is in the field, and how things stand in each. */
export function PartTabs({ kind, part, unsaved, problemsIn, onPart }: Props): ReactNode {
  return (
    <div role="group" aria-label="Files" className="part-tabs">
      {parts.map((each) => (
        <button
          key={each}
          type="button"
          className="part-tab"
          aria-pressed={each === part}
          onClick={() => onPart(each)}
        >
          <span className="part-name">{fileOf(each, kind)}</span>
          <span className="part-state">{stateOf(unsaved.includes(each), problemsIn(each))}</span>
        </button>
      ))}
    </div>
  );
}

function stateOf(isUnsaved: boolean, problems: number): string {
  const words = [
    isUnsaved ? 'not saved' : 'saved',
    ...(problems > 0 ? [`${problems} ${problems === 1 ? 'problem' : 'problems'}`] : []),
  ];
  return words.join(', ');
}
