import { useEffect, useState } from 'react';
import { writeAddress, type Address } from '../../common/address.ts';
import { askBeforeLeaving } from '../../common/before-leaving.ts';

export interface Leaving {
  /** Leaves after all; null while nobody wants to. */
  readonly leave: (() => void) | null;
  readonly stay: () => void;
}

/** Has people asked before they leave what is not saved: for another room or protocol, or by closing the page. */
export function useLeaving(id: string, isUnsaved: boolean, address: Address): Leaving {
  const [leave, setLeave] = useState<(() => void) | null>(null);
  useEffect(() => {
    if (!isUnsaved) return undefined;
    const stop = askBeforeLeaving((next, go) => {
      if (next.room === 'write' && next.protocol === id) return false;
      setLeave(() => go);
      return true;
    });
    const hold = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', hold);
    return () => {
      stop();
      removeEventListener('beforeunload', hold);
    };
  }, [id, isUnsaved]);
  const stay = (): void => {
    setLeave(null);
    location.hash = writeAddress({ ...address, room: 'write', protocol: id });
  };
  return { leave, stay };
}
