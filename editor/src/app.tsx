import { lazy, Suspense, useEffect, useState, type ReactNode } from 'react';
import { Bedside } from './bedside/bedside.tsx';
import { addressOf, readAddress, writeAddress, type Address } from './common/address.ts';
import { Fault } from './common/fault-boundary.tsx';
import { protocolsHere } from './common/fetch-protocols.ts';
import type { RoomProps } from './common/room.ts';
import type { SiteProtocol } from './common/site-protocol.ts';

// The bedside waits for nothing that only the other rooms need.
const others = {
  write: lazy(async () => ({ default: (await import('./write/write.tsx')).Write })),
  teach: lazy(async () => ({ default: (await import('./teach/teach.tsx')).Teach })),
};

/** The frame around the rooms: which room, which protocol. */
export function App(): ReactNode {
  const [protocols, setProtocols] = useState<readonly SiteProtocol[] | 'failed' | null>(null);
  const [address, setAddress] = useState(() => readAddress(location.hash));

  useEffect(() => {
    protocolsHere.then(setProtocols, () => setProtocols('failed'));
    const follow = (): void => setAddress(readAddress(location.hash));
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);

  if (protocols === 'failed') return <Fault />;
  if (protocols === null) return <p className="waiting">Loading the protocols…</p>;
  const open = protocols.find(({ id }) => id === address.protocol) ?? protocols[0];
  if (!open)
    return <p className="waiting">There is no protocol here yet. A folder with a protocol.yaml is one.</p>;
  const go = (to: Partial<Address>): void => {
    location.hash = writeAddress({ ...address, protocol: open.id, ...to });
  };
  return <Rooms address={address} protocol={open} protocols={protocols} onGo={go} />;
}

/** The room that is open. The Bedside room, once it was open, stays behind the others: a look elsewhere loses no patient. */
function Rooms(props: RoomProps): ReactNode {
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
