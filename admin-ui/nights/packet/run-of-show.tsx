import { Box, Button, Typography } from '@mui/material';
import { useState } from 'react';
import type { Cue, Packet } from '../../../server/domain/packet/packet.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Figures } from '../../show/figures.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import { levelsOf } from '../game-words.ts';
import type { Night } from '../types.ts';
import { CueView } from './cue-view.tsx';
import { secondsText } from './seconds-text.ts';

interface Part {
  title: string;
  cues: Cue[];
}

function titleOf(cue: Cue, night: Night, packet: Packet): string | null {
  if (cue.windowKey === null && cue.gameId !== null) return null;
  if (cue.windowKey === null) return cue.code.startsWith('E') ? 'Emergencies' : 'Notices, when somebody brings one';
  const title = packet.runOfShow.find((row) => row.number === cue.number)?.windowTitle ?? '';
  const level = night.games.length > 1 ? levelsOf(night).get(cue.gameId ?? '') : undefined;
  return level ? `${level}: ${title.toLowerCase()}` : title;
}

/** The cues under the windows they are read in; a sheet that is only kept at hand stays where it is needed. */
function partsOf(night: Night, packet: Packet): Part[] {
  const parts: Part[] = [];
  for (const cue of packet.cues) {
    const last = parts.at(-1);
    const title = titleOf(cue, night, packet) ?? last?.title ?? 'At hand';
    if (last?.title === title) last.cues.push(cue);
    else parts.push({ title, cues: [cue] });
  }
  return parts;
}

/** The night in its order: when, by which code, who has to be where, and the words behind each line. */
export function RunOfShow({ night, packet }: { night: Night; packet: Packet }) {
  const cues = packet.cues ?? [];
  const [open, setOpen] = useState(false);
  return (
    <Section
      title="Run of show"
      lead="In the order of the night. Press a line for its words; what is set in brackets is done, not said."
      actions={cues.length > 0 && <Button variant="outlined" onClick={() => setOpen(!open)}>{open ? 'Close all the words' : 'Open all the words'}</Button>}
    >
      <Figures
        figures={[
          { label: 'Cues', value: numberText(cues.length) },
          { label: 'Sponsor reads', value: numberText(cues.filter((cue) => cue.isSponsored).length) },
          { label: 'Spoken for sponsors', value: secondsText(packet.sponsoredSeconds ?? 0) },
          { label: 'Spoken in all', value: secondsText(cues.reduce((sum, cue) => sum + cue.seconds, 0)) },
        ]}
      />
      {cues.length === 0 && <EmptyList>Nothing to read yet. A night needs a game, rosters and scripts from the library.</EmptyList>}
      {partsOf(night, packet).map((part, place) => (
        <Box key={place}>
          <Typography variant="h3" sx={{ mt: 2, mb: 0.5 }}>{part.title}</Typography>
          <Box component="ol" sx={{ listStyle: 'none', p: 0, m: 0 }}>{part.cues.map((cue) => <CueView key={`${cue.cueKey} ${open}`} cue={cue} open={open} />)}</Box>
        </Box>
      ))}
    </Section>
  );
}
