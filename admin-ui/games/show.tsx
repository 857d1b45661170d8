import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { CLASS_WORDS, LEVEL_WORDS, OWNER_WORDS, wordFor } from '../words/choices.ts';
import { CancelButton } from './cancel-button.tsx';
import { mayMove } from './moves.ts';
import { PlayButton } from './play-button.tsx';
import { PostponeButton } from './postpone-button.tsx';
import { ReplanSection } from './replan-section.tsx';
import { ResumeButton } from './resume-button.tsx';
import { StartButton } from './start-button.tsx';
import { GameStatus } from './status.tsx';
import { SuspendButton } from './suspend-button.tsx';
import type { Game, Participant } from './types.ts';

function Moves({ game }: { game: Game }) {
  if (!iMay('games', 'edit')) return null;
  return (
    <>
      {mayMove(game, 'finish') && <PlayButton game={game} />}
      {mayMove(game, 'start') && <StartButton game={game} />}
      {mayMove(game, 'suspend') && <SuspendButton game={game} />}
      {mayMove(game, 'resume') && <ResumeButton game={game} />}
      {mayMove(game, 'reschedule') && <PostponeButton game={game} />}
      {mayMove(game, 'cancel') && <CancelButton game={game} />}
    </>
  );
}

export const GameShow = () => (
  <ShowPage<Game> title={(game) => game.label} actions={(game) => <Moves game={game} />}>
    {(game) => (
      <>
        <Section title="Game">
          <Facts
            facts={[
              ['State', <GameStatus key="state" status={game.status} />],
              ['Why', game.statusNote],
              ['Day', dayText(game.playedOn, 'long')],
              ['Moved from', game.movedFromOn && dayText(game.movedFromOn, 'long')],
              ['Starts', game.startsAtShown || 'No hour yet'],
              ['Venue', game.venueName ?? 'Not named yet'],
              ['Night', game.nightId ? <Go key="night" resource="nights" id={game.nightId}>Packet, log and sign-off</Go> : 'On no night of ours'],
              ['Level', wordFor(LEVEL_WORDS, game.level)],
              ['Class', wordFor(CLASS_WORDS, game.class)],
              ['Sponsor windows', wordFor(OWNER_WORDS, game.windowsOwnedBy)],
              ['Announced', game.announced ? 'Yes' : 'No'],
            ]}
          />
        </Section>
        <ReplanSection game={game} />
        <Section title="Teams">
          <Rows<Participant>
            label="Teams of this game"
            rows={game.participants}
            columns={[
              { label: 'Team', show: (one) => <Go resource="teams" id={one.teamId}>{one.schoolName} {one.nickname}</Go> },
              { label: 'Side', show: (one) => (one.isHome ? 'Home' : 'Visitors') },
              { label: 'Score', numeric: true, show: (one) => one.score ?? '–' },
            ]}
          />
        </Section>
      </>
    )}
  </ShowPage>
);
