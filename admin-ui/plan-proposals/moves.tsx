import { windowHeading } from '../../server/domain/planning/words/window.ts';
import { dayText } from '../format/day.ts';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import { LongRows } from './long-rows.tsx';
import type { NamedSpot, ProposalResult, ProposedMove } from './types.ts';

const spotText = (spot: NamedSpot | null): string => (spot === null ? 'No place' : `${dayText(spot.playedOn)}, ${spot.label}, ${windowHeading(spot.windowKey)}`);
const forText = (move: ProposedMove): string => (move.source === 'offer' ? `${move.sponsorName} (open offer)` : move.sponsorName);

interface NewPlaces {
  key: string;
  move: ProposedMove;
  reads: number;
  windows: string;
}

/** Reads that are new in one game for one promise stand in one line. */
function byGame(moves: readonly ProposedMove[]): NewPlaces[] {
  const lines = new Map<string, ProposedMove[]>();
  for (const move of moves) {
    const key = `${move.willBe!.gameId} ${move.promiseId}`;
    lines.set(key, [...(lines.get(key) ?? []), move]);
  }
  return [...lines].map(([key, own]) => ({ key, move: own[0]!, reads: own.length, windows: [...new Set(own.map((one) => windowHeading(one.willBe!.windowKey)))].join(', ') }));
}

/** What moved and why; then what gets its first place. */
export function Moves({ result }: { result: ProposalResult }) {
  const moved = result.moves.filter((move) => move.kind !== 'new');
  const added = result.moves.filter((move) => move.kind === 'new');
  return (
    <>
      {moved.length > 0 && (
        <Section title="What moves, and why" lead={`${count(result.totals.stayed, 'read')} ${result.totals.stayed === 1 ? 'stays' : 'stay'} where ${result.totals.stayed === 1 ? 'it is' : 'they are'}.`}>
          <LongRows<ProposedMove>
            label="Reads that move"
            rows={moved}
            keyOf={(_, place) => String(place)}
            columns={[
              { label: 'Sponsor', show: forText },
              { label: 'Read', show: (move) => move.readKindName },
              { label: 'Now', show: (move) => spotText(move.was) },
              { label: 'By the plan', show: (move) => spotText(move.willBe) },
              { label: 'Why', show: (move) => move.why },
            ]}
          />
        </Section>
      )}
      {added.length > 0 && (
        <Section title="What gets a place">
          <LongRows<NewPlaces>
            label="Reads that get a place"
            rows={byGame(added)}
            keyOf={(line) => line.key}
            columns={[
              { label: 'Sponsor', show: (line) => forText(line.move) },
              { label: 'Read', show: (line) => line.move.readKindName },
              { label: 'Game', show: (line) => `${dayText(line.move.willBe!.playedOn)}, ${line.move.willBe!.label}` },
              { label: 'Windows', show: (line) => line.windows },
              { label: 'Reads', numeric: true, show: (line) => line.reads },
              { label: 'Why', show: (line) => line.move.why },
            ]}
          />
        </Section>
      )}
    </>
  );
}
