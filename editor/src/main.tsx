import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { FaultBoundary } from './common/fault-boundary.tsx';
import { unfoldForPrint } from './common/print.ts';
import './common/look.css';
import './common/frame.css';
import './bedside/entry.css';
import './bedside/outcome.css';
import './bedside/dialogs.css';
import './common/print.css';

unfoldForPrint();
const place = document.getElementById('rooms');
if (place) {
  // A fault is told on the page itself; what React would log of it could hold what was entered.
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
