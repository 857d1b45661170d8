import type { Department } from './department.ts';
import { TableDevice, aSeason, aSignedContract } from './season.ts';
import type { Season } from './season.ts';

export const OVERRIDE = { overrideReason: 'the test does not wait for the night' };

export interface ShortContract {
  department: Department;
  season: Season;
  contractId: string;
  commitmentId: string;
  /** the second game, in which only the windows before it are ours */
  later: { gameId: string; nightId: string };
  /** of the first game, where two planned reads were not given */
  missedPlacements: any[];
  shortfall(): Promise<any>;
  standing(): Promise<any>;
  propose(form: Record<string, unknown>, keys?: string[]): Promise<any>;
  accept(proposal: { id: string; version: number }, form?: Record<string, unknown>): Promise<any>;
}

/**
 * Forty concession reads for 1,000.00, at 25.00 each. In the first game 33 were given and two planned ones were not, for want of time;
 * in the second only the windows before the game are ours, so that seven can no longer be given as promised.
 */
export async function aShortContract(department: Department): Promise<ShortContract> {
  const { director } = department;
  const season = await aSeason(department, 1);
  const [{ gameId, nightId }] = season.games as [Season['games'][number]];
  const windowOwners = { halftime: 'conference', timeOut: 'conference', betweenPeriods: 'conference', postgame: 'conference' };
  const second = await director.make('/api/games', {
    seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: '2026-12-11', startsAtClock: '19:00', venueId: season.venueId, floorId: season.floorId,
  });
  await department.ask('update game set window_owners = $1 where id = $2', [windowOwners, second.id]);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7_500 });
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 40, rateCents: 2_500 }];
  const contract = await aSignedContract(department, season, { commitments, priceCents: 100_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  const contractId = contract.id as string;
  const commitmentId = contract.commitments[0].id as string;
  await department.bookkeeper.make('/api/invoices', { contractId, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const missedPlacements: any[] = [];
  for (const windowKey of ['halftime', 'timeOut1']) missedPlacements.push(await director.make('/api/placements', { commitmentId, gameId, windowKey }));
  const device = new TableDevice();
  const entries = [
    ...Array.from({ length: 33 }, (_, cue) => device.read(commitmentId, gameId, cue + 30)),
    ...missedPlacements.map(({ id, cueKey, windowKey }) => device.entry({ kind: 'read', outcome: 'notRead', reason: 'noTime', gameId, commitmentId, placementId: id, cueKey, windowKey })),
  ];
  await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${nightId}/sign-off`, OVERRIDE);
  const shortfall = async () => (await director.look(`/api/contracts/${contractId}/shortfalls`)).data[0];
  return {
    department, season, contractId, commitmentId, missedPlacements, shortfall,
    later: { gameId: second.id, nightId: second.nightIds[0] },
    standing: async () => (await director.look(`/api/contracts/${contractId}`)).standing,
    propose: async (form, keys) => {
      const named = keys ?? (await shortfall()).missed.filter((one: any) => one.isOpen).map((one: any) => one.key);
      return director.post('/api/makegood-proposals', { contractId, commitmentId, missed: named.map((key: string) => ({ key })), ...form });
    },
    accept: (proposal, form = {}) => director.post(`/api/makegood-proposals/${proposal.id}/accept`, { name: 'Hazel Juniper', on: '2026-12-08', ...form }, { version: proposal.version }),
  };
}

/** Logs what has its place in the later game as read, and signs its night off. */
export async function giveReplacements({ department: { director }, later }: ShortContract, count: number): Promise<any[]> {
  const placements = (await director.look(`/api/nights/${later.nightId}/placements`)).data.slice(0, count);
  const device = new TableDevice();
  const entries = placements.map(({ id, cueKey, windowKey, commitmentId }: any) => device.entry({ kind: 'read', outcome: 'given', gameId: later.gameId, commitmentId, placementId: id, cueKey, windowKey }));
  await director.make(`/api/nights/${later.nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${later.nightId}/sign-off`, OVERRIDE);
  return entries;
}
