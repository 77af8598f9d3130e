import { lazy, Suspense, type ComponentProps, type ReactNode } from 'react';
import type { MapRoom } from './map-room.tsx';

const Room = lazy(async () => ({ default: (await import('./map-room.tsx')).MapRoom }));

/** The map, with what draws it, which nothing else waits for. */
export const MapLater = (props: ComponentProps<typeof MapRoom>): ReactNode => (
  <Suspense fallback={<p className="waiting">Drawing both sides…</p>}>
    <Room {...props} />
  </Suspense>
);
