import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { FaultBoundary } from './shared/fault-boundary.tsx';
import { unfoldForPrint } from './shared/print.ts';
import './shared/styles.ts';

unfoldForPrint();
const place = document.getElementById('rooms');
if (place) {
  // A fault is told on the page itself; what React would write to the console could hold what was entered.
  const quiet = (): void => undefined;
  const root = createRoot(place, { onCaughtError: quiet, onUncaughtError: quiet, onRecoverableError: quiet });
  root.render(
    <StrictMode>
      <FaultBoundary>
        <App />
      </FaultBoundary>
    </StrictMode>,
  );
}
