import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/fields.css';
import './styles/shell.css';
import './styles/print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { bringLateParts } from './late.tsx';
import { startWorkbench } from './state/use-workbench.ts';
import { loadOtherUnits } from './units/other-units.ts';

/** In the order in which it is likely to be wanted. */
async function bringTheRest(): Promise<void> {
  await bringLateParts();
  await loadOtherUnits();
}

const root = document.getElementById('root');
if (root) {
  createRoot(root).render(
    <StrictMode>
      <App opening={startWorkbench(bringTheRest)} />
    </StrictMode>,
  );
}
