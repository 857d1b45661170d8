import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { OfferedLine } from '../../domain/sponsorship/offers/offered-values.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { OfferSheet, OfferSheetLine } from '../../platform/typesetting/offer-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import { officeNotes } from './office-notes.ts';
import type { OfferView, OfferedBenefit, OfferedRead } from './offer-view.ts';
import { OfferViews } from './offer-views.service.ts';

interface Names {
  seller_address: string | null;
  sponsor_address: string | null;
  teams: Record<string, string>;
  /** day and label of games that are named */
  games: Record<string, { playedOn: string; label: string }>;
}

const NAMES = `select seller.address as seller_address, sponsor.address as sponsor_address,
    (select coalesce(jsonb_object_agg(team.id, concat_ws(' ', school.nickname, team.name)), '{}') from team
       join school on school.department_id = $1 and school.id = team.school_id where team.department_id = $1 and team.id = any($3::uuid[])) as teams,
    (select coalesce(jsonb_object_agg(game.id, jsonb_build_object('playedOn', game.played_on, 'label', coalesce((select string_agg(school.nickname, ' at ' order by participant.is_home)
         from game_participant as participant join team on team.department_id = $1 and team.id = participant.team_id
           join school on school.department_id = $1 and school.id = team.school_id
         where participant.department_id = $1 and participant.game_id = game.id), 'a game of ours'))), '{}')
       from game where game.department_id = $1 and game.id = any($4::uuid[])) as games
  from offer join seller on seller.department_id = $1 and seller.id = offer.seller_id join sponsor on sponsor.department_id = $1 and sponsor.id = offer.sponsor_id
  where offer.department_id = $1 and offer.id = $2`;

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class OfferPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  /** @param isForOffice with the notes that the sponsor is not given */
  async pdf(id: string, isForOffice: boolean): Promise<{ bytes: Buffer; name: string }> {
    const sheet = await this.work.run(() => this.sheetOf(id, isForOffice));
    return { bytes: await this.typesetter.pdf('offer', sheet), name: `${sheet.number ?? 'offer'}${isForOffice ? '-office' : ''}.pdf` };
  }

  private async sheetOf(id: string, isForOffice: boolean): Promise<OfferSheet> {
    const offer = await this.views.one(id);
    const gameIds = [...offer.readLines.flatMap((line) => line.pinnedGameIds), ...offer.exclusivities.flatMap((one) => one.gameIds)];
    const [names] = await this.work.sql<Names>(NAMES, [id, offer.readLines.flatMap((line) => line.teamIds), gameIds]);
    const { name, locale, currency, settings } = await this.departments.here();
    const exclusivities = offer.exclusivities.map((one) => ({ ...one, gameDays: one.gameIds.flatMap((game) => names!.games[game]?.playedOn ?? []) }));
    const lines = linesOf(offer, names!);
    return {
      ...offer, lines, exclusivities, departmentName: name, locale, currency, paper: settings.paper,
      sellerAddress: names!.seller_address, sponsorAddress: names!.sponsor_address, officeNotes: isForOffice ? officeNotes(offer) : null,
    };
  }
}

function linesOf(offer: OfferView, names: Names): OfferSheetLine[] {
  const valueOf = new Map((offer.values ?? []).map((line) => [line.lineId, line]));
  return [
    ...offer.readLines.map((read) => readLine(read, valueOf.get(read.id), names)),
    ...offer.benefitLines.map((benefit) => benefitLine(benefit, valueOf.get(benefit.id))),
  ];
}

const valuesOf = (worth: OfferedLine | undefined) =>
  worth ? { per: worth.per, each: worth.each, valueCents: worth.valueCents, isPricedByRead: worth.isPricedByRead } : { per: 'read' as const, each: [], valueCents: 0, isPricedByRead: false };

function readLine(read: OfferedRead, worth: OfferedLine | undefined, { teams, games }: Names): OfferSheetLine {
  const { readKindName: name, counting, reads: quantity, readsAtLeast, readsAtMost, levels, windowKinds: windows, startsOn, endsOn, blackoutDays, leastPerGame, mostPerGame } = read;
  const pinned = read.pinnedGameIds.flatMap((game) => games[game] ?? []);
  return {
    name, counting, quantity, readsAtLeast, readsAtMost, levels, windows, startsOn, endsOn, blackoutDays, leastPerGame, mostPerGame, pinned, dueOn: null,
    teams: read.teamIds.flatMap((team) => teams[team] ?? []), ...valuesOf(worth),
  };
}

const NOWHERE = { readsAtLeast: null, readsAtMost: null, teams: [], levels: [], windows: [], blackoutDays: [], pinned: [], leastPerGame: null, mostPerGame: null };

function benefitLine({ name, quantity, startsOn, endsOn, dueOn }: OfferedBenefit, worth: OfferedLine | undefined): OfferSheetLine {
  return { ...NOWHERE, name, counting: null, quantity, startsOn, endsOn, dueOn, ...valuesOf(worth) };
}
