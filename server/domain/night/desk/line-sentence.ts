import type { NightBundle } from './bundle.ts';
import type { DeskLine } from './desk-entry.ts';
import { movedInWords } from '../moved-in-words.ts';
import { reasonInWords } from '../reason-words.ts';
import { takenBackIds } from '../take-back.ts';
import { rosterTonight } from './sheet/roster-tonight.ts';

const OUTCOMES = { given: 'read', cutShort: 'cut short', notRead: 'not read' } as const;

/** The lines that stand: neither taken back nor themselves a taking back, in the order given. */
export function standingLines(lines: readonly DeskLine[]): DeskLine[] {
  const gone = takenBackIds(lines);
  return lines.filter((line) => line.kind !== 'takenBack' && !gone.has(line.id));
}

const spaced = (name: string): string => name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
const capital = (text: string): string => text.replace(/^./, (first) => first.toUpperCase());
const said = (line: DeskLine, field: string): string => (typeof line.detail?.[field] === 'string' ? line.detail[field] : '');

/**
 * One line of the desk's log as a sentence, with the names of tonight's lists. A player whose family opted out has no name in the
 * bundle and appears by number; the sentence never says more than the announcer may.
 *
 * @param lines the whole log, for who wears what tonight and for what a taking back took back
 */
export function sentenceOfLine(line: DeskLine, bundle: NightBundle, lines: readonly DeskLine[]): string {
  const about = who(line, bundle, lines);
  const by = about ? ` by ${about}` : '';
  const of = about ? `, ${about}` : '';
  const at = when(line);
  switch (line.kind) {
    case 'read':
      return read(line, bundle);
    case 'mention':
      return `Mention, ${read(line, bundle)}`;
    case 'happening':
      return `${capital(spaced(said(line, 'happening') || 'happening'))}${by}${at}.`;
    case 'foul':
      return `Foul on ${about || 'a player'}${at}.`;
    case 'basket':
      return `${said(line, 'what') ? capital(spaced(said(line, 'what'))) : 'Basket'}${by}${at}.`;
    case 'substitution':
      return `Substitution${of}${at}.`;
    case 'timeOut':
      return `${timeOut(line, bundle)}${of}${at}.`;
    case 'periodEnd':
      return `End of the ${line.period ?? 'period'}.`;
    case 'score':
      return `${capital(spaced(said(line, 'what') || 'points'))}${of}${at}.`;
    case 'serve':
      return `Serving${of}${at}.`;
    case 'batter':
      return `At bat${of}${at}.`;
    case 'bout':
      return `Bout at ${said(line, 'weightClass') || 'a weight'}${about ? `, won by ${about}` : ''}${said(line, 'how') ? `: ${spaced(said(line, 'how'))}` : ''}.`;
    case 'book':
      return line.detail?.['agrees'] === true ? `The sheet agrees with the book${at}.` : `The sheet differs from the book${at}: ${said(line, 'words') || 'not said how'}.`;
    case 'hold':
      return `Hold ${said(line, 'state') || 'begun'}${said(line, 'situation') ? `: ${spaced(said(line, 'situation'))}` : ''}.`;
    case 'timeMoved':
      return movedInWords(line.detail);
    case 'worn':
      return `Number ${line.playerNumber ?? '?'}${said(line, 'wornInstead') ? ` is worn instead of ${said(line, 'wornInstead')}` : line.detail?.['isNotListed'] === true ? ' is worn by somebody who is not on the list' : ' is on the list'} tonight.`;
    case 'request':
      return `Asked at the table: ${spaced(said(line, 'requestKind') || 'a request')}.`;
    case 'requestAnswered':
      return `Request ${said(line, 'answer') || 'answered'}.`;
    case 'note':
      return `Note: ${line.reason ?? said(line, 'words')}`.trim();
    case 'takenBack':
      return takenBack(line, bundle, lines);
  }
}

function takenBack(line: DeskLine, bundle: NightBundle, lines: readonly DeskLine[]): string {
  const taken = lines.find((other) => other.id === line.takesBackEntryId && other.kind !== 'takenBack');
  return taken ? `Taken back: ${sentenceOfLine(taken, bundle, lines)}` : 'An entry is taken back.';
}

function read(line: DeskLine, bundle: NightBundle): string {
  const cue = bundle.cues.find((one) => one.cueKey === line.cueKey);
  const owed = bundle.mentions.find((one) => one.commitmentId === line.commitmentId);
  const what = cue ? `${cue.code} ${cue.sponsorName ?? cue.title}` : (owed?.sponsorName ?? 'Announcement');
  const reason = line.reason === null ? '' : `: ${reasonInWords(line.reason, line.detail)}`;
  const paper = line.detail?.['fromPaper'] === true ? ', from paper' : '';
  return `${what}, ${line.outcome === null ? 'logged' : OUTCOMES[line.outcome]}${reason}${paper}.`;
}

/** "12 Marlowe of the Kestrels"; without a name where the family chose so or the list has none. */
function who(line: DeskLine, bundle: NightBundle, lines: readonly DeskLine[]): string {
  const teams = bundle.games.flatMap((game) => [game.visitors, game.home]);
  const team = teams.find((one) => one.teamId === line.teamId);
  const isOurs = bundle.games.some((game) => game.ourTeamIds.includes(line.teamId ?? ''));
  const player = line.playerNumber === null || !team ? undefined : rosterTonight(team, lines, isOurs).rows.find((one) => one.number === line.playerNumber);
  const number = line.playerNumber === null ? '' : `number ${line.playerNumber}`;
  const name = player?.name ? `${number}, ${player.name}` : number;
  const teamName = team ? `the ${team.nickname || team.schoolName}` : '';
  return name && teamName ? `${name}, of ${teamName}` : name || teamName;
}

const TIME_OUTS: Readonly<Record<string, string>> = { full: 'Full time-out', thirty: 'Thirty-second time-out', conference: 'Conference' };

/** Which kind it was, where the sport has more than one. */
function timeOut(line: DeskLine, bundle: NightBundle): string {
  const kinds = new Set(bundle.games.find((game) => game.gameId === line.gameId)?.rules?.timeOuts.map((rule) => rule.name));
  return (kinds.size > 1 ? TIME_OUTS[said(line, 'timeOut')] : undefined) ?? 'Time-out';
}

function when({ period, clock }: DeskLine): string {
  const parts = [period, clock].filter((part) => part !== null && part !== '');
  return parts.length > 0 ? ` (${parts.join(', ')})` : '';
}
