import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { keepPageOffline } from './shell/page-update.ts';
import { showLook } from './shell/look.ts';
import './desk.css';

showLook();
keepPageOffline();
createRoot(document.getElementById('root')!).render(<App />);
