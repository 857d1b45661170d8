import { Alert } from '@mui/material';
import { dayText } from '../format/day.ts';
import type { Offer } from './types.ts';
import { lapsesText } from './words.ts';

/** The one thing to know about the offer now. */
export function OfferStanding({ offer }: { offer: Offer }) {
  const said = sentenceOf(offer);
  return said ? <Alert severity={said.mood} icon={false} sx={{ mb: 2 }}>{said.text}</Alert> : null;
}

function sentenceOf(offer: Offer): { mood: 'info' | 'warning'; text: string } | null {
  if (offer.state === 'draft') return { mood: 'info', text: 'This is a draft. The sponsor has not seen it, and it holds no places.' };
  if (offer.state === 'lapsed') return { mood: 'warning', text: `This offer lapsed on ${dayText(offer.lapsesOn)} and holds no places any more. Offer it again, and its places are proven anew.` };
  if (offer.state !== 'open') return null;
  const places = offer.holdsNow ? 'Its places are held: nobody else can be promised them.' : 'It holds no places: they may be promised to somebody else.';
  return { mood: offer.holdsNow && (offer.lapsesInDays ?? 99) <= 7 ? 'warning' : 'info', text: `${lapsesText(offer)}. ${places}` };
}
