import { Box, Typography } from '@mui/material';
import { AskAboutRead } from './ask-about-read.tsx';
import type { Kind } from './ask-about-read.tsx';
import { WHAT_WORDS } from './read-words.ts';
import { useThePage } from './the-page.tsx';
import type { NightOfSponsor, ReadOfSponsor } from './types.ts';
import { many, useWritten } from './written.tsx';

const STATUS_WORDS: Record<string, string> = { cancelled: 'cancelled', postponed: 'postponed', suspended: 'suspended' };

/** One night: who played, and each read with its hour. */
export function Night({ night }: { night: NightOfSponsor }) {
  const written = useWritten();
  const kinds = useKindsOn(night.heldOn);
  const { heldOn, games, reads, planned, attendance, isSignedOff } = night;
  return (
    <Box component="article" aria-label={written.night(heldOn)} sx={{ pl: { xs: 1, sm: 2 }, py: 1.5, borderLeft: 3, borderColor: 'divider', mb: 1.5, breakInside: 'avoid' }}>
      <Typography component="h4" sx={{ fontWeight: 700 }}>{written.night(heldOn)}</Typography>
      {games.map((game) => <Typography key={game.gameId} sx={{ color: 'text.secondary', overflowWrap: 'anywhere' }}>{game.label}{STATUS_WORDS[game.status] ? ` (${STATUS_WORDS[game.status]})` : ''}</Typography>)}
      {attendance !== null && <Typography sx={{ color: 'text.secondary' }}>{many(attendance, 'person', 'people')} in the stands{night.attendanceHow === 'estimated' ? ' (estimated)' : ''}</Typography>}
      {reads.length > 0 && (
        <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
          {reads.map((read, place) => <Read key={`${read.entryId ?? place}-${read.occurrence}`} read={read} night={night} />)}
        </Box>
      )}
      {planned.map(({ readKindName, count }) => <Typography key={readKindName} sx={{ mt: 0.5 }}>Planned: {count} × {readKindName}</Typography>)}
      {reads.length === 0 && planned.length === 0 && <Typography sx={{ mt: 0.5 }}>{isSignedOff ? 'Nothing was read for you on this night.' : 'Not signed off yet.'}</Typography>}
      {isSignedOff && kinds.length > 0 && <AskAboutRead about={{ nightId: night.nightId }} kinds={kinds} label="Is a read missing?" names={written.night(heldOn)} />}
    </Box>
  );
}

function Read({ read, night }: { read: ReadOfSponsor; night: NightOfSponsor }) {
  const written = useWritten();
  const where = [read.at && written.clock(read.at), read.windowName, read.atTheTable && `at the table: ${read.atTheTable}`].filter(Boolean).join(' · ');
  const words = read.copyTitle ? `Words: “${read.copyTitle}”${read.copyVersionNumber ? `, version ${read.copyVersionNumber}` : ''}` : null;
  const what = read.what === 'makegood' && read.forMissedOn ? `Read to make good for ${written.day(read.forMissedOn)}` : WHAT_WORDS[read.what];
  return (
    <Box component="li" sx={{ mt: 1 }}>
      <Typography><strong>{read.readKindName}.</strong> {what}{read.why && (read.what === 'notRead' || read.what === 'cutShort') ? `: ${read.why}` : ''}.</Typography>
      {where && <Typography sx={{ color: 'text.secondary' }}>{where}</Typography>}
      {words && <Typography sx={{ color: 'text.secondary', overflowWrap: 'anywhere' }}>{words}</Typography>}
      {read.disputeId && <Typography sx={{ color: 'text.secondary' }}>You asked about this read: see “Your questions”.</Typography>}
      {!read.disputeId && read.entryId && <AskAboutRead about={{ entryId: read.entryId, occurrence: read.occurrence }} label="Ask about this read" names={`${read.readKindName}, ${written.night(night.heldOn)}`} />}
    </Box>
  );
}

/** What was promised for a day; each kind once, for a sponsor does not know one contract's line from another's. */
function useKindsOn(day: string): Kind[] {
  const { page } = useThePage();
  const lines = page.contracts.filter((contract) => contract.startsOn <= day && day <= contract.endsOn).flatMap((contract) => contract.lines);
  return [...new Map(lines.map((line) => [line.readKindName, { commitmentId: line.commitmentId, name: line.readKindName }])).values()];
}
