import { Component, lazy, Suspense, type ReactNode } from 'react';
import type * as MapShown from './map-shown.tsx';

const load = async (): Promise<typeof MapShown> => import('./map-shown.tsx');

/** Fetches what draws, so that a map is there without the network. Nothing waits for it. */
export function fetchMaps(): void {
  // Should it fail, it fails again where a map is wanted, and is told there.
  load().catch(() => undefined);
}

const CaseMap = lazy(async () => ({ default: (await load()).CaseMap }));
const HandoutMap = lazy(async () => ({ default: (await load()).HandoutMap }));

/** The map with a case on it, once it is drawn. */
export const CaseMapLater = ({ name }: { readonly name: string }): ReactNode => (
  <Later>
    <CaseMap name={name} />
  </Later>
);

/** The map of the handout, once it is drawn. */
export const HandoutMapLater = (): ReactNode => (
  <Later>
    <HandoutMap />
  </Later>
);

interface Props {
  readonly children: ReactNode;
}

/** A map that cannot be drawn takes nothing else of the page with it. */
class Later extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    if (this.state.failed) return <p>The map could not be drawn. Load the page anew to try again.</p>;
    return <Suspense fallback={<p className="hint">Drawing the map…</p>}>{this.props.children}</Suspense>;
  }
}
