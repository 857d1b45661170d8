import { movedInWords } from '../../domain/night/moved-in-words.ts';
import { reasonInWords } from '../../domain/night/reason-words.ts';
import type { LoggedEntry } from './night-log.service.ts';

const OUTCOMES = { given: 'given', cutShort: 'cut short', notRead: 'not read' } as const;

const spaced = (name: string): string => name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
const capital = (text: string): string => text.replace(/^./, (first) => first.toUpperCase());

/** Whom an entry is about: a number and a team, never a student's name. */
function who(entry: LoggedEntry): string {
  const number = entry.playerNumber === null ? '' : `number ${entry.playerNumber}`;
  const team = entry.teamName ?? '';
  return number && team ? `${number} of the ${team}` : number || (team && `the ${team}`);
}

function when(entry: LoggedEntry): string {
  const parts = [entry.period, entry.clock].filter((part) => part !== null && part !== '');
  return parts.length > 0 ? ` (${parts.join(', ')})` : '';
}

const words = (entry: LoggedEntry, field: string): string => (typeof entry.detail?.[field] === 'string' ? entry.detail[field] : '');

function read(entry: LoggedEntry): string {
  const what = entry.sponsorName ? `${entry.sponsorName}, ${entry.readKindName}` : capital(spaced((entry.cueKey ?? 'announcement').split('/').slice(1).join(' ') || 'announcement'));
  const why = entry.reason === null ? '' : `: ${reasonInWords(entry.reason, entry.detail)}`;
  return `${what}: ${entry.outcome === null ? 'logged' : OUTCOMES[entry.outcome]}${why}.`;
}

/** What an entry says, in one sentence for the log and the sponsor's proof. */
export function sentenceOfEntry(entry: LoggedEntry, takesBackNumber: number | null): string {
  const about = who(entry);
  switch (entry.kind) {
    case 'read':
      return read(entry);
    case 'mention':
      return `Mention, ${read(entry)}`;
    case 'happening':
      return `${capital(spaced(String(entry.detail?.['happening'] ?? 'happening')))}${about ? ` by ${about}` : ''}${when(entry)}.`;
    case 'foul':
      return `Foul on ${about || 'a player'}${when(entry)}.`;
    case 'basket':
      return `Basket${about ? ` by ${about}` : ''}${when(entry)}.`;
    case 'substitution':
      return `Substitution${about ? ` for ${about}` : ''}${when(entry)}.`;
    case 'timeOut':
      return `Time-out${entry.teamName ? `, ${entry.teamName}` : ''}${when(entry)}.`;
    case 'periodEnd':
      return `End of ${entry.period ?? 'the period'}.`;
    case 'score':
      return `${capital(spaced(words(entry, 'what') || 'points'))}${about ? `, ${about}` : ''}${when(entry)}.`;
    case 'serve':
      return `Serving${about ? `, ${about}` : ''}${when(entry)}.`;
    case 'batter':
      return `At bat${about ? `, ${about}` : ''}${when(entry)}.`;
    case 'bout':
      return `Bout at ${words(entry, 'weightClass') || 'a weight'}${about ? `, won by ${about}` : ''}${words(entry, 'how') ? `: ${words(entry, 'how')}` : ''}.`;
    case 'book':
      return entry.detail?.['agrees'] === true ? `The sheet agrees with the book${when(entry)}.` : `The sheet differs from the book${when(entry)}: ${words(entry, 'words') || 'not said how'}.`;
    case 'hold':
      return `Hold ${words(entry, 'state') || 'begun'}: ${spaced(words(entry, 'situation') || 'emergency')}.`;
    case 'timeMoved':
      return movedInWords(entry.detail);
    case 'worn':
      return `Worn tonight: ${about || 'a number'}.`;
    case 'request':
      return `Asked at the table: ${spaced(words(entry, 'requestKind') || 'a request')}.`;
    case 'requestAnswered':
      return `Request ${words(entry, 'answer') || 'answered'}.`;
    case 'note':
      return `Note: ${entry.reason ?? String(entry.detail?.['words'] ?? '')}`.trim();
    case 'takenBack':
      return takesBackNumber === null ? 'An entry is taken back.' : `Entry ${takesBackNumber} is taken back.`;
  }
}
