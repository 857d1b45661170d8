import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { anOpenOffer } from '../support/offers.ts';
import { accepted, aProposal } from '../support/plan.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';

const heldIn = (department: Awaited<ReturnType<typeof aDepartment>>) => department.ask<{ offer_line_id: string }>('select * from held_place where department_id = $1', [department.id]);

test('an open offer that holds its inventory gets room in the plan, and no cue; what it would take is short of places for the others', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 3);
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 }] });
  const readLines = [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 3, rateCents: 7500 }];
  const offer = await anOpenOffer(department, season, { startsOn: season.startsOn, endsOn: season.endsOn, priceCents: 22_500, readLines });
  const proposal = await aProposal(director, season.seasonId);
  expect(proposal.result).toMatchObject({ headline: 'All 9 reads have a place.', totals: { owed: 9, after: 9, held: 3 } });
  expect(new Set(proposal.result.moves.filter((move: any) => move.source === 'offer').map((move: any) => move.why))).toEqual(new Set(['Room for an open offer.']));
  await accepted(director, proposal);
  expect(await heldIn(department)).toHaveLength(3);
  const nights = await Promise.all(season.games.map(({ nightId }) => director.look(`/api/nights/${nightId}/placements`)));
  expect(nights.map((night) => night.total)).toEqual([2, 2, 2]);
  const view = await director.look(`/api/seasons/${season.seasonId}/plan`);
  expect(view).toMatchObject({ owed: 9, planned: 9, atRisk: 0, isCurrent: true });

  const replan = await aProposal(director, season.seasonId, { kind: 'replan' });
  expect(replan.result.totals).toMatchObject({ stayed: 9, added: 0, moved: 0, gone: 0 });
  await director.make(`/api/offers/${offer.id}/withdraw`);
  expect((await director.look(`/api/plan-proposals/${replan.id}`)).outOfDateBecause).toBe('an offer was decided or lapsed (Juniper & Pike Hardware)');
  const after = await aProposal(director, season.seasonId, { kind: 'replan' });
  expect(after.result.totals).toMatchObject({ owed: 6, held: 0, stayed: 6 });
  await accepted(director, after);
  expect(await heldIn(department)).toEqual([]);
});
