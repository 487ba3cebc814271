import '@fontsource/ibm-plex-sans/latin-400.css';
import '@fontsource/ibm-plex-sans/latin-600.css';
import '@fontsource/ibm-plex-sans-condensed/latin-400.css';
import '@fontsource/ibm-plex-sans-condensed/latin-600.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/fields.css';
import './styles/shell.css';
import './styles/print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startWorkbench } from './state/use-workbench.ts';
import { loadOtherUnits } from './units/other-units.ts';

const root = document.getElementById('root');
if (root) {
  createRoot(root).render(
    <StrictMode>
      <App opening={startWorkbench()} />
    </StrictMode>,
  );
}

// the larger table of units comes when the page is at rest; without it rarer units are simply not known
const atRest = window.requestIdleCallback ?? ((call: () => void) => setTimeout(call, 2000));
addEventListener('load', () => atRest(() => void loadOtherUnits().catch(() => undefined)));
