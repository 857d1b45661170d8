import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { reachesInto } from '../../sponsorship/reaches-into.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { MoveMemo, NightEffect } from './move-preview.dto.ts';

export interface ContractOfTerm {
  termId: string;
  contractId: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  sellerName: string;
}

export interface PlacedOnGame {
  id: string;
  contractId: string;
  commitmentId: string;
  readKindName: string;
  nightId: string;
  heldOn: Day;
}

export interface NightOfGame extends Pick<NightEffect, 'nightId' | 'venueName' | 'tableLinks'> {
  heldOn: Day;
  gamesLeft: number;
}

/** Where what a game reaches stands. */
export interface MoveTrace {
  contracts: ContractOfTerm[];
  positions: Map<string, Position>;
  placements: PlacedOnGame[];
  nights: NightOfGame[];
  memos: (MoveMemo & { id: string; contractId: string })[];
}

const CONTRACTS = `select term.id as "termId", contract.id as "contractId", contract.number, contract.title, sponsor.id as "sponsorId", sponsor.name as "sponsorName", seller.name as "sellerName"
  from term join contract on contract.department_id = $1 and contract.id = term.contract_id
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
    join seller on seller.department_id = $1 and seller.id = contract.seller_id
  where term.department_id = $1 and term.signed_on is not null and (term.season_id = $2 or exists (select from commitment
      where commitment.department_id = $1 and commitment.term_id = term.id and ${reachesInto('commitment.team_ids', 'array[$2::uuid]')}))
  order by sponsor.name collate "und-x-icu", contract.number, contract.id`;

const PLACEMENTS = `select placement.id, commitment.contract_id as "contractId", commitment.id as "commitmentId", read_kind.name as "readKindName", placement.night_id as "nightId", night.held_on as "heldOn"
  from placement join commitment on commitment.department_id = $1 and commitment.id = placement.commitment_id
    join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id
    join night on night.department_id = $1 and night.id = placement.night_id
  where placement.department_id = $1 and placement.game_id = $2
    and not exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id)
  order by placement.id`;

const NIGHTS = `select night.id as "nightId", venue.name as "venueName", night.held_on as "heldOn",
    (select count(*) from game_night join game on game.department_id = $1 and game.id = game_night.game_id
      where game_night.department_id = $1 and game_night.night_id = night.id and game.status not in ('cancelled', 'postponed')) as "gamesLeft",
    (select coalesce(jsonb_agg(jsonb_build_object('label', link.label, 'notBeforeAt', link.not_before_at, 'expiresAt', link.expires_at) order by link.expires_at, link.id), '[]')
      from link where link.department_id = $1 and link.kind = 'table' and link.subject_id = night.id and link.revoked_at is null and link.expires_at > now()) as "tableLinks"
  from night join venue on venue.department_id = $1 and venue.id = night.venue_id
  where night.department_id = $1 and night.id = any($2::uuid[]) order by night.held_on, night.id`;

const MEMOS = `select memo.id, memo.contract_id as "contractId", memo.net_cents as "netCents", memo.tax_cents as "taxCents", memo.gross_cents as "grossCents",
    array(select distinct invoice.number from credit_memo_line as line join invoice on invoice.department_id = $1 and invoice.id = line.invoice_id
      where line.department_id = $1 and line.credit_memo_id = memo.id order by invoice.number) as "invoiceNumbers"
  from credit_memo as memo join ledger_event as event on event.department_id = $1 and event.id = memo.event_id
  where memo.department_id = $1 and event.cause = 'game' and event.cause_id = $2 order by memo.id`;

/** Reads what a game reaches: contracts of its season with where they stand, planned reads, nights and credit memos. */
@Injectable()
export class MoveTraces {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly ledger: TermLedger,
  ) {}

  async of(gameId: string, seasonId: string, nightIds: readonly string[]): Promise<MoveTrace> {
    const contracts = await this.work.sql<ContractOfTerm>(CONTRACTS, [seasonId]);
    return {
      contracts,
      positions: await this.ledger.positions(contracts.map((one) => one.termId)),
      placements: await this.work.sql<PlacedOnGame>(PLACEMENTS, [gameId]),
      nights: await this.work.sql<NightOfGame>(NIGHTS, [nightIds]),
      memos: await this.work.sql<MoveMemo & { id: string; contractId: string }>(MEMOS, [gameId]),
    };
  }
}
