import { lazy, Suspense, useCallback, useEffect, useState, type ReactNode } from 'react';
import { Bedside } from './bedside/bedside.tsx';
import { addressOf, readAddress, writeAddress, type Address } from './common/address.ts';
import { leaveFor } from './common/before-leaving.ts';
import { Fault } from './common/fault-boundary.tsx';
import { fetchSite, siteHere } from './common/fetch-protocols.ts';
import type { RoomProps } from './common/room.ts';
import type { Site, SiteProtocol } from './common/site-protocol.ts';

// The bedside waits for nothing that only the other rooms need.
const others = {
  write: lazy(async () => ({ default: (await import('./write/write.tsx')).Write })),
  teach: lazy(async () => ({ default: (await import('./teach/teach.tsx')).Teach })),
  review: lazy(async () => ({ default: (await import('./review/review.tsx')).Review })),
};

/** The frame around the rooms: which room, which protocol. */
export function App(): ReactNode {
  const [site, setSite] = useState<Site | 'failed' | null>(null);
  const [address, setAddress] = useState(() => readAddress(location.hash));
  const [observed, setObserved] = useState<string | null>(null);

  useEffect(() => {
    siteHere.then(setSite, () => setSite('failed'));
    const follow = (): void => {
      const next = readAddress(location.hash);
      leaveFor(next, () => setAddress(next));
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const onSaved = useCallback(() => {
    // Should the folder not answer, what was read of it before still stands.
    fetchSite().then(setSite, () => undefined);
  }, []);
  const onTaken = useCallback(() => setObserved(null), []);

  if (site === 'failed') return <Fault />;
  if (site === null) return <p className="waiting">Loading the protocols…</p>;
  const { protocols } = site;
  const open = protocols.find(({ id }) => id === address.protocol) ?? protocols[0];
  if (!open)
    return <p className="waiting">There is no protocol here yet. A folder with a protocol.yaml is one.</p>;
  const go = (to: Partial<Address>): void => {
    location.hash = writeAddress({ ...address, protocol: address.protocol ?? open.id, ...to });
  };
  return (
    <Rooms
      address={address}
      protocol={open}
      protocols={protocols}
      site={site}
      onGo={go}
      onSaved={onSaved}
      observed={observed}
      onTaken={onTaken}
      onMakeCase={(set) => {
        setObserved(set);
        location.hash = addressOf('write', open.id);
      }}
    />
  );
}

interface Props extends RoomProps {
  readonly onMakeCase: (set: string) => void;
}

/** The room that is open. The Bedside room, once it was open, stays behind the others: a look elsewhere loses no patient. */
function Rooms({ onMakeCase, ...props }: Props): ReactNode {
  const { address, protocol } = props;
  const isBedside = address.room === 'bedside';
  const [bedside, setBedside] = useState<SiteProtocol | null>(null);
  if (isBedside && bedside !== protocol) setBedside(protocol);
  const Other = address.room === 'bedside' ? null : others[address.room];
  return (
    <>
      {bedside && (
        <div hidden={!isBedside}>
          <Bedside
            key={bedside.id}
            protocol={bedside}
            protocols={props.protocols}
            onMakeCase={onMakeCase}
            onChoose={(id) => {
              location.hash = addressOf('bedside', id);
            }}
          />
        </div>
      )}
      {Other && (
        <Suspense fallback={<p className="waiting">Opening the room…</p>}>
          <Other {...props} />
        </Suspense>
      )}
    </>
  );
}
