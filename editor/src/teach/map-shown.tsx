import { useEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { download } from '../common/download.ts';
import { PlaneMap } from '../common/map/plane-map.tsx';
import { StillMap } from '../common/map/still-map.tsx';
import { ask } from './ask.ts';
import type { Answers } from './messages.ts';

type Found = Answers['map']['map'] | 'failed';

/** The map of a case or, for null, that of the handout; null while it is worked out. */
function useTeachMap(name: string | null): Found | null {
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    let isWanted = true;
    ask<'map'>({ kind: 'map', name }).then(
      ({ map }) => isWanted && setFound(map),
      () => isWanted && setFound('failed'),
    );
    return () => {
      isWanted = false;
    };
  }, [name]);
  return found;
}

/** In the place of a map: that it is being drawn, or why there is none. */
function Instead({ found }: { readonly found: null | 'failed' | { readonly why: string } }): ReactNode {
  if (found === null) return <p className="hint">Drawing the map…</p>;
  return <p>{found === 'failed' ? 'The map could not be worked out.' : found.why}</p>;
}

/** Where a case stands on the map. It is worked out only once it comes near to view, so that whoever goes on to the next case never waits. */
export function CaseMap({ name }: { readonly name: string }): ReactNode {
  const place = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    if (!place.current) return undefined;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '300px' },
    );
    observer.observe(place.current);
    return () => observer.disconnect();
  }, []);
  return <div ref={place}>{isNear ? <CaseMapHere name={name} /> : <Instead found={null} />}</div>;
}

/** Where a case stands among all readings, with everything else as the case gives it. */
function CaseMapHere({ name }: { readonly name: string }): ReactNode {
  const found = useTeachMap(name);
  const at = found && typeof found === 'object' && 'at' in found ? found.at : null;
  const here = useMemo(() => at && { ...at, words: 'This case' }, [at]);
  if (found === null || found === 'failed' || 'why' in found) return <Instead found={found} />;
  return (
    <>
      <p className="hint">
        Which readings lead to which level, with everything else as this case gives it. What it does not give
        is missing on the map too.
      </p>
      {found.isOfLastSet && (
        <p>
          This case has earlier sets. The map is drawn of its last set alone, so the level above, which comes
          of all sets, can be another one.
        </p>
      )}
      <PlaneMap
        plane={found.plane}
        lines={found.lines}
        here={here}
        onExport={(file, svg) => download(file, svg, document)}
      />
    </>
  );
}

/** The map on paper. */
export function HandoutMap(): ReactNode {
  const found = useTeachMap(null);
  if (found === null || found === 'failed' || 'why' in found) return <Instead found={found} />;
  return (
    <>
      <p>
        {found.heldAsIn === null
          ? 'What the protocol needs is held at ordinary values; what only helps is missing.'
          : `Everything else is held at what the case “${found.heldAsIn}” gives; what it does not give is missing.`}
      </p>
      <StillMap plane={found.plane} lines={found.lines} />
    </>
  );
}
