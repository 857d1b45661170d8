import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { refuse } from '../../domain/refusals.ts';
import { sumOfStandings } from '../../domain/sponsorship/standing.ts';
import { Shortfalls } from '../../makegoods/shortfalls/shortfalls.service.ts';
import type { LineShortfall } from '../../makegoods/shortfalls/shortfall.dto.ts';
import { isId } from '../../platform/database/ids.ts';
import type { BenefitFulfillment, FulfillmentView, LineFulfillment } from './fulfillment.dto.ts';
import { benefitOf } from './fulfillment-benefits.ts';
import { FulfillmentForecasts } from './fulfillment-forecasts.service.ts';
import { FulfillmentLedgers } from './fulfillment-ledgers.service.ts';
import type { ToldByLedgers } from './fulfillment-ledgers.service.ts';
import type { LineToShow } from './fulfillment-lines.ts';
import { FulfillmentNights } from './fulfillment-nights.service.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import type { ContractOfProof } from './fulfillment-rows.service.ts';

export interface ProofAsked {
  /** without: no nights and no windows, for boards */
  nights?: boolean;
}

/** Views beside the shortfalls that were worked out for them, by contract; where nothing is owed there are none. */
export interface ProofWithShortfalls {
  views: FulfillmentView[];
  shortfalls: ReadonlyMap<string, readonly LineShortfall[]>;
}

/** What was promised, what was given, and what comes next: from the ledgers, the log and the calendar alone. */
@Injectable()
export class FulfillmentService {
  constructor(
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(FulfillmentRows) private readonly rows: FulfillmentRows,
    @Inject(FulfillmentLedgers) private readonly ledgers: FulfillmentLedgers,
    @Inject(FulfillmentNights) private readonly nights: FulfillmentNights,
    @Inject(FulfillmentForecasts) private readonly forecasts: FulfillmentForecasts,
    @Inject(Shortfalls) private readonly shortfalls: Shortfalls,
  ) {}

  /** @throws Refused `not-found` */
  async ofContract(contractId: string): Promise<FulfillmentView> {
    const [view] = isId(contractId) ? await this.ofContracts([contractId]) : [];
    return view ?? refuse('not-found');
  }

  /** In the order asked for; what is not there is left out. A draft has promised nothing yet. As many statements for a hundred contracts as for one. */
  async ofContracts(ids: readonly string[], asked: ProofAsked = {}): Promise<FulfillmentView[]> {
    return (await this.withShortfalls(ids, asked)).views;
  }

  /** The same with the remedies of what can no longer be given; the ledgers are read once for both. */
  async withShortfalls(ids: readonly string[], { nights = true }: ProofAsked = {}): Promise<ProofWithShortfalls> {
    const found = new Map((await this.rows.contracts(ids)).map((row) => [row.id, row]));
    const contracts = [...new Set(ids)].flatMap((id) => found.get(id) ?? []);
    if (contracts.length === 0) return { views: [], shortfalls: new Map() };
    const told = await this.ledgers.of(contracts);
    const shortfalls = await this.shortfallsOf(told);
    const lines = await this.withWhatComes(contracts, told, shortfalls);
    const benefits = await this.benefits(contracts, told);
    const shown = nights ? await this.nights.of(contracts.map(({ id }) => id), told.ofNights) : null;
    const asOf = await this.departments.today();
    const views = contracts.map(({ id: contractId, termId: _, ...contract }) => {
      const own = lines.get(contractId) ?? [];
      return {
        contractId, ...contract, asOf,
        ...summed(own),
        lines: own,
        benefits: benefits.get(contractId) ?? [],
        nights: shown?.get(contractId)?.nights ?? [],
        windows: shown?.get(contractId)?.windows ?? [],
      };
    });
    return { views, shortfalls };
  }

  private async shortfallsOf({ lines, books }: ToldByLedgers): Promise<Map<string, LineShortfall[]>> {
    const owing = [...new Set(lines.filter(({ view }) => view.standing.owed > 0).map(({ contractId }) => contractId))];
    if (owing.length === 0) return new Map();
    return this.shortfalls.ofContracts(owing, new Map([...books].flatMap(([termId, { position }]) => (position ? [[termId, position] as const] : []))));
  }

  /** The lines of each contract with what can no longer be given and how the rest is likely to go. */
  private async withWhatComes(contracts: readonly ContractOfProof[], { lines, planned }: ToldByLedgers, shortfalls: ProofWithShortfalls['shortfalls']): Promise<Map<string, LineFulfillment[]>> {
    const short = new Map([...shortfalls.values()].flat().map((one) => [one.commitmentId, one.shortfall]));
    const ready = lines.map((one): LineToShow => ({ ...one, view: { ...one.view, shortfall: short.get(one.view.commitmentId) ?? 0 } }));
    const forecasts = await this.forecasts.of(contracts, ready, planned);
    const byContract = new Map<string, LineFulfillment[]>(contracts.map(({ id }) => [id, []]));
    for (const { contractId, view } of ready) byContract.get(contractId)?.push({ ...view, forecast: forecasts.get(view.commitmentId) ?? null });
    return byContract;
  }

  private async benefits(contracts: readonly ContractOfProof[], { books }: ToldByLedgers): Promise<Map<string, BenefitFulfillment[]>> {
    const ids = contracts.map(({ id }) => id);
    const rows = await this.rows.benefits(ids);
    const deliveries = rows.length === 0 ? [] : await this.rows.deliveries(ids);
    return new Map(
      contracts.map(({ id, termId, startsOn, endsOn }) => [
        id, rows.filter((row) => row.contractId === id).map((row) => benefitOf(row, { startsOn, endsOn }, books.get(termId)?.position ?? null, deliveries)),
      ]),
    );
  }
}

function summed(lines: readonly LineFulfillment[]): Pick<FulfillmentView, 'sum' | 'planned' | 'shortfall' | 'chanceAllGiven'> {
  return {
    sum: sumOfStandings(lines.map((line) => line.standing)),
    planned: lines.reduce((sum, line) => sum + line.planned, 0),
    shortfall: lines.reduce((sum, line) => sum + line.shortfall, 0),
    chanceAllGiven: chanceOfAll(lines.map((line) => line.forecast?.chanceAllGiven ?? null)),
  };
}

/** That every line is given in full, as far as lines go their own way; null where nobody can say it of one. */
function chanceOfAll(chances: readonly (number | null)[]): number | null {
  return chances.reduce<number | null>((all, chance) => (all === null || chance === null ? null : all * chance), chances.length === 0 ? null : 1);
}
