import { isInnerBrowser } from './inner-browser.ts';

const isHomeScreenApp = () => window.matchMedia('(display-mode: standalone)').matches;

export function InnerBrowserWarning() {
  if (isHomeScreenApp() || !isInnerBrowser(navigator.userAgent)) return null;
  return (
    <div className="desk-notice desk-notice-care" role="note">
      <strong>Open this page in your real browser.</strong> A mail or chat app shows it in a window of its own that may forget what is stored. Copy the address
      and open it in Chrome, Safari, Edge or Firefox.
    </div>
  );
}

/** Once on the home screen the page opens without a network and without a search for the link. */
export function HomeScreenHint() {
  if (isHomeScreenApp()) return null;
  return (
    <p className="desk-soft">
      Add this page to your home screen (in the browser’s menu), and it opens at the table like an app, with no network.
    </p>
  );
}
