import { useEffect, useState, type ReactNode } from 'react';
import { Bedside } from './bedside/bedside.tsx';
import { readAddress, writeAddress } from './common/address.ts';
import { Fault } from './common/fault-boundary.tsx';
import { protocolsHere } from './common/fetch-protocols.ts';
import type { SiteProtocol } from './common/messages.ts';

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
  const choose = (protocol: string): void => {
    location.hash = writeAddress({ room: 'bedside', protocol });
  };
  return <Bedside key={open.id} protocol={open} protocols={protocols} onChoose={choose} />;
}
