import type { Department } from './department.ts';
import { TableDevice, aSeason, aSignedContract } from './season.ts';
import type { Season } from './season.ts';
import { Visitor } from './visitor.ts';

export interface SponsorProof {
  season: Season;
  contract: any;
  /** what is printed on the link that the director gave out */
  token: string;
  link: Visitor;
  waitingVersionId: string;
  invoiceNumber: string;
}

/** Juniper & Pike in mid-season: three nights signed off, two planned, a banner delivered, an invoice paid in part, words that wait. */
export async function aSponsorProof(department: Department): Promise<SponsorProof> {
  const { director, announcer, bookkeeper } = department;
  const season = await aSeason(department, 5);
  const seller = await director.look(`/api/sellers/${season.sellerId}`);
  await director.patch(`/api/sellers/${season.sellerId}`, { contactName: 'Odell Marsh', contactPhone: '555-0142', contactEmail: 'odell@tamarack.example', remitTo: 'Tamarack Ridge Athletics\n12 Alder Street' }, { version: seller.version });
  const copy = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'Juniper & Pike Hardware.', text: 'Juniper & Pike Hardware, on Third Street.' });
  await director.make(`/api/copies/${copy.id}/versions/${copy.versions[0].id}/approve`, { approvedOn: '2026-11-21', approvedByName: 'Hazel Juniper' });
  const waiting = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.concession, title: 'At the concession stand', fallbackText: 'Juniper & Pike.', text: 'Juniper & Pike Hardware, now also on Mill Lane.' });
  const contract = await aSignedContract(department, season, {
    commitments: [
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7_500 },
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4_000 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtMost: 9, rateCents: 1_000 },
    ],
    benefits: [{ name: 'Banner by the scoreboard', quantity: 1, rateCents: 5_000 }],
  });
  await director.make(`/api/contracts/${contract.id}/benefits/${contract.benefits[0].id}/deliveries`, { deliveredOn: '2026-11-30', quantity: 1, proof: 'Photograph of November 30, sent to Hazel Juniper' });
  const [ball, concession] = contract.commitments;
  const planned = (commitmentId: string, game: number, windowKey: string) => director.make('/api/placements', { commitmentId, gameId: season.games[game]!.gameId, windowKey });
  const places: { ball: any; concession: any }[] = [];
  for (const game of [0, 1, 2, 3, 4]) {
    places.push({ ball: await planned(ball.id, game, 'pregame'), concession: await planned(concession.id, game, 'halftime') });
  }
  for (const game of [0, 1, 2]) {
    const { gameId, nightId } = season.games[game]!;
    const device = new TableDevice();
    const read = (commitmentId: string, place: any, windowKey: string, more = {}) =>
      device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId, placementId: place.id, cueKey: place.cueKey, windowKey, ...more });
    const { ball: atTheBall, concession: atHalftime } = places[game]!;
    const entries = [read(ball.id, atTheBall, 'pregame'), read(concession.id, atHalftime, 'halftime', game === 1 ? { outcome: 'notRead', reason: 'noTime' } : {})];
    await announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  }
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-11-26', method: 'check', reference: '1041', amountCents: 20_000, applications: [{ invoiceId: invoice.id, amountCents: 20_000 }] });
  const { token } = await director.make(`/api/sponsors/${season.sponsorId}/links`, { label: 'Hazel Juniper, owner', expiresAt: '2099-01-01T00:00:00.000Z' });
  return { season, contract, token, link: await Visitor.byLink(token), waitingVersionId: waiting.versions[0].id, invoiceNumber: invoice.number };
}

/** Five hundred nights with a game and a read on each, heard at the table and not signed off; a day apart, written straight into the database. */
export async function fiveHundredNights({ id, ask }: Department, season: Season, commitmentId: string): Promise<void> {
  await ask(
    `with night_of as materialized (select n, date '2025-08-01' + n as day, gen_random_uuid() as night_id, gen_random_uuid() as game_id from generate_series(0, 499) as n),
       nights as (insert into night (department_id, id, held_on, venue_id) select $1, night_id, day, $2::uuid from night_of),
       games as (insert into game (department_id, id, season_id, sport, level, played_on, starts_at)
         select $1, game_id, $3::uuid, 'basketball', 'varsity', day, day + interval '26 hours' from night_of),
       teams as (insert into game_participant (department_id, id, game_id, team_id, place, is_home)
         select $1, gen_random_uuid(), game_id, team.id, team.place, team.place = 1 from night_of cross join (values ($4::uuid, 1), ($5::uuid, 2)) as team (id, place)),
       played_on as (insert into game_night (department_id, id, game_id, night_id) select $1, gen_random_uuid(), game_id, night_id from night_of)
     insert into log_entry (department_id, id, night_id, game_id, number, device_id, sequence, kind, outcome, cue_key, commitment_id, window_key, occurred_at, content_digest)
       select $1, gen_random_uuid(), night_id, game_id, 1, gen_random_uuid(), 1, 'read', 'given', 'game:' || game_id || '/halftime/1', $6::uuid, 'halftime', day + interval '26 hours', md5(n::text) from night_of`,
    [id, season.venueId, season.seasonId, season.teamId, season.opponentTeamId, commitmentId],
  );
}
