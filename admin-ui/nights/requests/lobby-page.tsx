import { GlobalStyles } from '@mui/material';
import { createPortal } from 'react-dom';
import { QrCode } from '../../fields/qr-code.tsx';
import { dayText } from '../../format/day.ts';
import type { Night } from '../types.ts';

/** Printed alone on one Letter sheet, to be read from a few steps away; on the screen it does not stand. */
const PAPER = {
  '@media screen': { '.lobby-page': { display: 'none' } },
  '@media print': {
    '@page': { margin: '0.75in' },
    'body > :not(.lobby-page)': { display: 'none !important' },
    'html, body': { background: '#fff !important' },
    '.lobby-page': { color: '#000', textAlign: 'center', fontSize: '16pt', lineHeight: 1.4 },
    '.lobby-page h2': { fontSize: '34pt', margin: '0 0 12pt', lineHeight: 1.15 },
    '.lobby-page p': { margin: '0 0 10pt' },
    '.lobby-page .address': { fontSize: '10pt', overflowWrap: 'anywhere' },
  },
} as const;

/** What hangs in the lobby: the code, and who decides. */
export function LobbyPage({ night, address }: { night: Night; address: string }) {
  return createPortal(
    <div className="lobby-page" aria-hidden="true">
      <GlobalStyles styles={PAPER} />
      <h2>Ask the announcer</h2>
      <p>{night.title}, {dayText(night.heldOn, 'long')}</p>
      <p>Lights left on? A club notice? A song? Point your phone’s camera here.</p>
      <QrCode text={address} title="The address of the form" size="4in" />
      <p className="address">{address}</p>
      <p><strong>Someone at the table decides what is read.</strong></p>
      <p>A lost child, something found, a medical matter: please come to the scorer’s table.</p>
    </div>,
    document.body,
  );
}
