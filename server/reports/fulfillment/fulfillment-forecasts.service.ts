import { Inject, Injectable } from '@nestjs/common';
import { sumOfRecords } from '../../domain/reports/window-record.ts';
import type { WindowRecord } from '../../domain/reports/window-record.ts';
import { kindOfWindow } from '../../domain/season/window-names.ts';
import { ForecastService } from '../../planning/forecast/forecast.service.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { LineForecast } from './fulfillment.dto.ts';
import type { LineToShow } from './fulfillment-lines.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import type { ContractOfProof, PlannedRow } from './fulfillment-rows.service.ts';
import { mentionsForecast, readsForecast } from './line-forecasts.ts';

/** How the rest of each commitment is likely to go; none for what is not signed, or is over. */
@Injectable()
export class FulfillmentForecasts {
  constructor(
    @Inject(FulfillmentRows) private readonly rows: FulfillmentRows,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(ForecastService) private readonly mentions: ForecastService,
  ) {}

  /** @param lines with their shortfall */
  async of(contracts: readonly ContractOfProof[], lines: readonly LineToShow[], planned: readonly PlannedRow[]): Promise<Map<string, LineForecast>> {
    const signed = new Map(contracts.filter(({ state }) => state === 'signed').map((contract) => [contract.id, contract]));
    const open = lines.filter(({ contractId, line }) => line !== null && signed.has(contractId));
    if (open.length === 0) return new Map();
    const commitments = await this.commitments.byId(open.map(({ view }) => view.commitmentId));
    const records = await this.records([...signed.values()].map(({ seasonId }) => seasonId));
    const earlier = await this.mentions.earlierOf([...commitments.values()].filter((one) => one.counting === 'onOccurrence'));
    return new Map(
      open.flatMap((line) => {
        const { commitmentId, counting } = line.view;
        const commitment = commitments.get(commitmentId);
        if (!commitment) return [];
        if (counting === 'onOccurrence') return [[commitmentId, mentionsForecast(line, earlier.get(commitmentId)!)]];
        const own = planned.filter((row) => row.commitmentId === commitmentId);
        return [[commitmentId, readsForecast(line, own, new Set(commitment.windows.map(kindOfWindow)), records.get(commitment.seasonId) ?? new Map())]];
      }),
    );
  }

  /** By season and kind of window. */
  private async records(seasonIds: readonly string[]): Promise<Map<string, Map<string, WindowRecord>>> {
    const records = new Map<string, Map<string, WindowRecord>>();
    for (const { seasonId, windowKey, ...record } of await this.rows.windowRecords(seasonIds)) {
      const ofSeason = records.get(seasonId) ?? new Map<string, WindowRecord>();
      const kind = kindOfWindow(windowKey);
      ofSeason.set(kind, sumOfRecords([ofSeason.get(kind) ?? { planned: 0, given: 0 }, record]));
      records.set(seasonId, ofSeason);
    }
    return records;
  }
}
