import { useLayoutEffect, useRef, type RefObject } from 'react';

type TextPlace = HTMLInputElement | HTMLTextAreaElement;

interface Typed<Place extends TextPlace> {
  readonly ref: RefObject<Place | null>;
  readonly onChange: (event: { readonly target: { readonly value: string } }) => void;
}

/**
 * For a place where somebody types: what stands there belongs to whoever types, and gives way only to a value that comes from elsewhere. A
 * keyboard on a screen puts a sign there before the page is told of it; a place that React holds to its own value would lose that sign
 * whenever something else is drawn in between.
 */
export function useTyped<Place extends TextPlace>(
  value: string,
  onType: (typed: string) => void,
): Typed<Place> {
  const ref = useRef<Place>(null);
  const own = useRef<string | null>(null);
  useLayoutEffect(() => {
    if (ref.current && value !== own.current) ref.current.value = value;
    own.current = value;
  }, [value]);
  return {
    ref,
    onChange: ({ target }) => {
      own.current = target.value;
      onType(target.value);
    },
  };
}
