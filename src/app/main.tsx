import '@fontsource/ibm-plex-sans/latin-400.css';
import '@fontsource/ibm-plex-sans/latin-600.css';
import '@fontsource/ibm-plex-sans/latin-700.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/layout.css';
import './styles/panels.css';
import './styles/menu.css';
import './styles/desk.css';
import './styles/rules.css';
import './styles/pressures.css';
import './styles/actions.css';
import './styles/walk.css';
import './styles/quiz.css';
import './styles/guide.css';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { SessionContext } from './session/session.ts';
import { start } from './session/start.ts';
import { browserDevice, createThemes } from './theme/themes.ts';
import { ThemesContext } from './theme/useTheme.ts';
import { workWithoutNetwork } from './files/offline.ts';

/** A canvas does not wait for a font: without this the letters on the field would be measured and drawn in another one. */
async function fonts(): Promise<void> {
  await Promise.allSettled([
    document.fonts.load('400 16px "IBM Plex Sans"'),
    document.fonts.load('700 16px "IBM Plex Sans"'),
  ]);
}

const themes = createThemes(browserDevice());
const root = document.getElementById('root');
if (root === null) throw new Error('The page has no place for the app');
const [{ session, damaged }] = await Promise.all([start(), fonts()]);
createRoot(root).render(
  <SessionContext value={session}>
    <ThemesContext value={themes}>
      <ErrorBoundary store={session.store}>
        <App damaged={damaged} />
      </ErrorBoundary>
    </ThemesContext>
  </SessionContext>,
);
workWithoutNetwork();
