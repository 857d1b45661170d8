import { GlobalStyles } from '@mui/material';
import { createPortal } from 'react-dom';
import { QrCode } from '../../fields/qr-code.tsx';
import { dayText } from '../../format/day.ts';
import { instantText } from '../../format/instant.ts';
import type { Night } from '../types.ts';
import type { NewTableLink } from './types.ts';

/** Printed alone, black on white, on the upper half of a Letter sheet; on the screen it does not stand. */
const PAPER = {
  '@media screen': { '.half-page': { display: 'none' } },
  '@media print': {
    '@page': { margin: '0.5in' },
    'body > :not(.half-page)': { display: 'none !important' },
    'html, body': { background: '#fff !important' },
    '.half-page': { display: 'grid', gridTemplateColumns: '1fr 2in', columnGap: '0.3in', color: '#000', fontSize: '11pt', lineHeight: 1.35, maxHeight: '4.9in', overflow: 'hidden' },
    '.half-page h2': { gridColumn: '1 / -1', margin: '0 0 4pt', fontSize: '16pt', lineHeight: 1.2 },
    '.half-page > p': { gridColumn: '1 / -1', margin: '0 0 6pt' },
    '.half-page ol': { margin: 0, paddingLeft: '1.2em' },
    '.half-page li': { marginBottom: '4pt' },
    '.half-page .square': { textAlign: 'center', overflowWrap: 'anywhere', fontSize: '8pt' },
    '.half-page .pin': { display: 'block', fontSize: '20pt', fontWeight: 700, letterSpacing: '0.1em' },
  },
} as const;

/** What a substitute needs to know, in the order in which it is needed. */
function stepsOf(link: NewTableLink, hasPin: boolean): string[] {
  return [
    `Point your phone’s camera at the square and open the address. It opens from ${instantText(link.notBeforeAt)}. If it opens inside your mail, choose “Open in the browser”.`,
    `Type the PIN${hasPin ? ' below the square' : ' that you were told'}. Do this at home or wherever there is a signal: the whole night is then stored on your phone, and the gym needs none.`,
    'At the table, read what stands large under “Now” and tap once when you have read it. Jump to any other cue whenever the night asks for it.',
    'A wrong tap is taken back in the log with one more tap. Nothing is lost when there is no signal; it is sent later by itself.',
    link.maySignOff ? 'At the end, sign off. Keep the page open until it says that all of it is on the server.' : 'At the end, keep the page open until it says that all of it is on the server. An adult signs off.',
    'If the phone fails, read from the paper packet and make tally marks on it. They are typed in later.',
  ];
}

/** Half a page for the substitute. The PIN stands on it only when asked for. */
export function HalfPage({ night, link, address, pin }: { night: Night; link: NewTableLink; address: string; pin: string | null }) {
  return createPortal(
    <div className="half-page" aria-hidden="true">
      <GlobalStyles styles={PAPER} />
      <h2>For the substitute at the table</h2>
      <p>
        <strong>{link.label}</strong>. {night.title}, {dayText(night.heldOn, 'long')}. {[night.venueName, night.floorName].filter(Boolean).join(', ')}.
      </p>
      <ol>{stepsOf(link, pin !== null).map((step) => <li key={step}>{step}</li>)}</ol>
      <div className="square">
        <QrCode text={address} title="The address of the link" size="1.9in" />
        {address}
        {pin && <span className="pin">{pin}</span>}
      </div>
    </div>,
    document.body,
  );
}
