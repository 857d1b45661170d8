import { Box } from '@mui/material';

/** The published guidance the two settings depart from, in our own words. */
const CAUTIONS = [
  'While the clock runs, nothing is announced.',
  'With the clock stopped but the ball live, at a free throw or a throw-in, nothing is announced either.',
  'Only an emergency interrupts the game by microphone.',
  'The times to speak are those with the clock stopped and the ball dead: before the game, time-outs, between periods, halftime, after the game.',
  'May be said: who scored, who was charged with the foul, who shoots the free throw, which team took the time-out and how long it is, who comes in, the line-ups.',
  'Is not said: how many points or fouls a player has, how many fouls a team has, how many time-outs are left, the time left, what kind of foul it was; a three is not celebrated.',
];

export function AnnouncingCautions() {
  return (
    <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
      {CAUTIONS.map((caution) => <li key={caution}>{caution}</li>)}
    </Box>
  );
}
