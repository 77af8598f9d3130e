import { useEffect, useState, type RefObject } from 'react';
import { usualWidth } from './frame.ts';

/** So narrow a map can still be read; a narrower place shrinks it. */
const least = 300;

/** How wide a map stands on the page, so that its words are as large on a phone as on a desk. */
export function useWidth(place: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(usualWidth);
  useEffect(() => {
    const element = place.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      const now = Math.round(entry?.contentRect.width ?? usualWidth);
      // Hidden, or on paper: what was drawn last is shrunk or stretched.
      if (now > 0) setWidth(Math.min(usualWidth, Math.max(least, now)));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return width;
}
