import { instantOf } from '../../server/domain/instant.ts';
import type { LogEntry } from '../../server/domain/night/log-entry.ts';

/** A log written in order: each entry gets the next number on the night and on its device. */
export function aLog(...parts: (Partial<LogEntry> & Pick<LogEntry, 'id' | 'kind'>)[]): LogEntry[] {
  const sequences = new Map<string, number>();
  return parts.map((part, place) => {
    const deviceId = part.deviceId ?? 'tablet';
    const sequence = (sequences.get(deviceId) ?? 0) + 1;
    sequences.set(deviceId, sequence);
    return {
      nightId: 'friday', gameId: 'varsity', number: place + 1, deviceId, sequence, outcome: null, reason: null, cueKey: null,
      occurrence: null, placementId: null, commitmentId: null, teamId: null, playerId: null, playerNumber: null, period: null,
      clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null, occurredAt: instantOf('2026-12-05T02:00:00Z'),
      ...part,
    };
  });
}

/** The game-ball read of Juniper & Pike Hardware before the game. */
export const gameBall = { kind: 'read', outcome: 'given', cueKey: 'pregame-1', commitmentId: 'gameBall', placementId: 'place-1' } as const;

/** A bank shot by number 12 of the Kestrels with 5:32 left in the second quarter. */
export const bankShot = { kind: 'happening', detail: { happening: 'bankShot' }, teamId: 'kestrels', playerNumber: '12', period: '2', clock: '5:32' } as const;

export const mention = { kind: 'mention', outcome: 'given', commitmentId: 'bankShots' } as const;
