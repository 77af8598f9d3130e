import { useEffect, useRef, useState } from 'react';

/** A page that was made, under an address that only this page knows. */
export interface Paper {
  readonly state: 'not_asked' | 'making' | 'made' | 'cancelled' | 'failed';
  readonly address: string | null;
  readonly make: () => void;
  readonly cancel: () => void;
}

/** One making: what it comes to, and how to end it. */
export interface Making {
  readonly html: Promise<string>;
  readonly end: () => void;
}

type Found = Pick<Paper, 'state' | 'address'>;

const notAsked: Found = { state: 'not_asked', address: null };

/** Makes a page when it is asked for; `of` says what it is of, so that a page of something else goes away. */
export function usePaper(of: unknown, begin: () => Making): Paper {
  const [found, setFound] = useState<Found>(notAsked);
  const running = useRef<Making | null>(null);
  const end = (): void => {
    running.current?.end();
    running.current = null;
  };
  useEffect(() => {
    setFound(notAsked);
    return end;
  }, [of]);
  const { address } = found;
  useEffect(() => () => (address === null ? undefined : URL.revokeObjectURL(address)), [address]);
  const make = (): void => {
    end();
    const own = begin();
    running.current = own;
    setFound({ state: 'making', address: null });
    const tell = (is: Found): void => {
      if (running.current !== own) return;
      end();
      setFound(is);
    };
    own.html.then(
      (html) => tell({ state: 'made', address: addressOfPage(html) }),
      () => tell({ state: 'failed', address: null }),
    );
  };
  const cancel = (): void => {
    end();
    setFound({ state: 'cancelled', address: null });
  };
  return { ...found, make, cancel };
}

const addressOfPage = (html: string): string =>
  URL.createObjectURL(new Blob([html], { type: 'text/html;charset=utf-8' }));
