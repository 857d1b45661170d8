import { createRoot } from 'react-dom/client';
import { placeOf } from './address.ts';
import { App } from './app.tsx';
import { keepPageOffline } from './shell/page-update.ts';
import { showLook } from './shell/look.ts';
import './desk.css';

showLook();
// The public's form is a page of one visit: nothing of it is kept on their phone.
if (placeOf(window.location.hash).at !== 'ask') keepPageOffline();
createRoot(document.getElementById('root')!).render(<App />);
