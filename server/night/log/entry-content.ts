import { createHash } from 'node:crypto';
import { instantOf } from '../../domain/instant.ts';
import type { LogEntryDto } from './log.dto.ts';

/** An entry as a device sent it: every field there, what was left out is null, its moment in UTC. */
export type EntryContent = { [Field in keyof Required<LogEntryDto>]: NonNullable<LogEntryDto[Field]> | null } & {
  id: string;
  sequence: number;
  kind: LogEntryDto['kind'];
  occurredAt: string;
  deviceId: string;
};

export function contentOf(entry: LogEntryDto, deviceId: string): EntryContent {
  return {
    id: entry.id.toLowerCase(),
    deviceId: deviceId.toLowerCase(),
    sequence: entry.sequence,
    kind: entry.kind,
    outcome: entry.outcome ?? null,
    reason: entry.reason ?? null,
    gameId: entry.gameId?.toLowerCase() ?? null,
    cueKey: entry.cueKey ?? null,
    placementId: entry.placementId?.toLowerCase() ?? null,
    commitmentId: entry.commitmentId?.toLowerCase() ?? null,
    windowKey: entry.windowKey ?? null,
    playerNumber: entry.playerNumber ?? null,
    teamId: entry.teamId?.toLowerCase() ?? null,
    period: entry.period ?? null,
    clock: entry.clock ?? null,
    detail: entry.detail ?? null,
    happeningEntryId: entry.happeningEntryId?.toLowerCase() ?? null,
    takesBackEntryId: entry.takesBackEntryId?.toLowerCase() ?? null,
    occurredAt: instantOf(entry.occurredAt),
  };
}

const FIELDS: readonly (keyof EntryContent)[] = [
  'id', 'deviceId', 'sequence', 'kind', 'outcome', 'reason', 'gameId', 'cueKey', 'placementId', 'commitmentId', 'windowKey', 'playerNumber', 'teamId', 'period', 'clock',
  'happeningEntryId', 'takesBackEntryId', 'occurredAt',
];

/** The same for the same content, whatever the order in which a device writes its fields. */
export function digestOfContent(content: EntryContent): string {
  const values = [...FIELDS.map((field) => content[field]), inOrder(content.detail)];
  return createHash('sha256').update(JSON.stringify(values)).digest('hex');
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, item]) => [key, inOrder(item)]));
}
