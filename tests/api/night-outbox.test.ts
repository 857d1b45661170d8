import fc from 'fast-check';
import { expect, test } from 'vitest';
import { v7 } from 'uuid';
import { linesOf } from '../../server/domain/night/desk/outbox/outbox.ts';
import type { NumberedEntry } from '../../server/domain/night/desk/outbox/outbox.ts';
import { bodyOf } from '../../server/domain/night/desk/outbox/outbox-sending.ts';
import type { Batch, BatchAnswer } from '../../server/domain/night/desk/outbox/outbox-sending.ts';
import { TwoDevices } from '../domain/night-outbox-world.ts';
import type { ServerSide, Step } from '../domain/night-outbox-world.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

const SEED = 20261204;
const NIGHTS = 12;

/** The real server, asked as a page asks it. */
class RealServer implements ServerSide {
  private readonly shut = new Set<number>();

  constructor(private readonly department: Department, private readonly nightId: string) {}

  private visitor(place: number) {
    if (this.shut.has(place)) return this.department.stranger;
    return place === 0 ? this.department.announcer : this.department.director;
  }

  async take(place: number, batch: Batch): Promise<BatchAnswer> {
    const { status, body } = await this.visitor(place).post(`/api/nights/${this.nightId}/log`, bodyOf(batch));
    return status === 200 ? { kind: 'results', results: body.results } : { kind: 'refused', status, sentence: body.detail };
  }

  async read(place: number, after: number): Promise<readonly NumberedEntry[] | null> {
    const { status, body } = await this.visitor(place).get(`/api/nights/${this.nightId}/log?after=${after}`);
    return status === 200 ? body.entries : null;
  }

  async signOff(): Promise<void> {
    await this.department.director.post(`/api/nights/${this.nightId}/sign-off`, { overrideReason: 'The game is over.' });
  }

  shutOut(place: number): void {
    this.shut.add(place);
  }

  letIn(place: number): void {
    this.shut.delete(place);
  }
}

interface Row {
  id: string;
  number: number;
  deviceId: string;
  sequence: number;
}

async function mustHold(world: TwoDevices, department: Department, nightId: string): Promise<void> {
  const log = await department.ask<Row>(
    `select id, number, device_id as "deviceId", sequence from log_entry where department_id = $1 and night_id = $2 order by number`, [department.id, nightId]);
  expect(log.map((row) => row.number)).toEqual(log.map((_, place) => place + 1));
  for (const row of log) expect(world.tapped.get(row.id)).toMatchObject({ deviceId: row.deviceId, sequence: row.sequence });
  const ids = new Set(log.map((row) => row.id));
  for (const box of world.boxes) {
    for (const { entry, place } of box.kept.values()) expect([entry.id, place]).toEqual([entry.id, ids.has(entry.id) ? 'onServer' : 'needsAttention']);
    expect(linesOf(box).filter((line) => line.number !== null).map((line) => line.id)).toEqual(log.map((row) => row.id));
  }
  for (const id of world.tapped.keys()) expect(world.boxes.some((box) => box.kept.has(id))).toBe(true);
}

test(`an entry is kept exactly once by the real server too (${NIGHTS} nights, seed ${SEED})`, { timeout: 180_000 }, async () => {
  const department = await aDepartment();
  const season = await aSeason(department, NIGHTS);
  const contract = await aSignedContract(department, season);
  const steps = fc.array(fc.tuple(fc.nat(1000), fc.nat(1), fc.nat(50)) as fc.Arbitrary<Step>, { minLength: 20, maxLength: 40, size: 'max' });
  const schedules = fc.sample(steps, { seed: SEED, numRuns: NIGHTS });
  for (const [place, schedule] of schedules.entries()) {
    const { gameId, nightId } = season.games[place]!;
    const world = new TwoDevices(new RealServer(department, nightId), {
      id: v7, gameId, deviceIds: [v7(), v7()],
      read: (claim) => ({ kind: 'read', outcome: 'given', gameId, cueKey: `game:${gameId}/pregame/${claim}`, commitmentId: contract.commitments[0].id, windowKey: 'pregame' }),
    });
    for (const step of schedule) await world.step(step);
    await world.comeToRest();
    await mustHold(world, department, nightId);
  }
});
