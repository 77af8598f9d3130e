import type { ReactNode } from 'react';

const places = [
  ['text', 'Text'],
  ['problems', 'Problems'],
  ['side', 'Cases, rules, map'],
] as const;

/** On a narrow page the parts stand below each other; these lead to each. The address is not to change, so the jump is made by hand. */
export function JumpLinks(): ReactNode {
  return (
    <nav className="write-jump" aria-label="Parts of the room">
      {places.map(([id, words]) => (
        <a
          key={id}
          href={`#${id}`}
          onClick={(event) => {
            event.preventDefault();
            const place = document.getElementById(id);
            place?.scrollIntoView({ block: 'start' });
            place?.focus({ preventScroll: true });
          }}
        >
          {words}
        </a>
      ))}
    </nav>
  );
}
