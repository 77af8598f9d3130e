import { Component, type ReactNode } from 'react';

/** Told when the page itself fails. It says nothing of what was entered. */
export function Fault(): ReactNode {
  return (
    <div className="fault" role="alert">
      <h1>This page has failed</h1>
      <p>
        The fault is the kit’s own, not yours. Nothing that it showed may be relied on: use the paper policy,
        and call whoever you would call. Load the page anew to start again.
      </p>
    </div>
  );
}

interface Props {
  readonly children: ReactNode;
}

export class FaultBoundary extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    return this.state.failed ? <Fault /> : this.props.children;
  }
}
