import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { refuse } from '../domain/refusals.ts';
import { foldedText } from '../domain/season/import-headings.ts';
import type { ImportStep } from '../domain/season/import-plan.ts';
import { planContractImport } from '../domain/sponsorship/import-contracts.ts';
import type { ContractImportPlan, WantedContract } from '../domain/sponsorship/import-contracts.ts';
import type { WantedSponsor } from '../domain/sponsorship/import-sponsors.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { readCsv } from '../season/csv.ts';
import { importView, isConfirmed } from '../season/import-view.ts';
import type { ImportDto, ImportView } from '../season/import.dto.ts';
import { ContractService } from './contract.service.ts';
import type { ContractDto } from './contract.dto.ts';
import { Contract } from './contract.entity.ts';
import { ContractsThereReader } from './contracts-there.service.ts';
import { Payer } from './payer.entity.ts';
import { SponsorCategory } from './sponsor-category.entity.ts';
import { Sponsor } from './sponsor.entity.ts';

/** Sponsors and draft contracts from a file. A signed contract is never changed by one. */
@Injectable()
export class ContractImport {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractsThereReader) private readonly reader: ContractsThereReader,
    @Inject(ContractService) private readonly contracts: ContractService,
  ) {}

  /** Shows what a file would do, or does what was shown. */
  async run(form: ImportDto): Promise<ImportView> {
    const [season] = await this.work.sql<{ id: string; startsOn: Day; endsOn: Day }>(
      `select id, starts_on as "startsOn", ends_on as "endsOn" from season where department_id = $1 and id = $2${form.confirm === false ? '' : ' for update'}`,
      [form.seasonId],
    );
    if (!season) refuse('unknown-season');
    const file = readCsv(Buffer.from(form.csv, 'utf8'));
    const plan = planContractImport(file, await this.reader.of(season!));
    const plans = [plan.sponsors, plan.contracts];
    const confirmed = isConfirmed(plans, form.confirm);
    if (confirmed) await this.write(plan, season!.id);
    return importView(plans, confirmed);
  }

  private async write(plan: ContractImportPlan, seasonId: string): Promise<void> {
    for (const step of plan.sponsors.steps) if (step.wanted && step.action !== 'same') await this.writeSponsor(step.existingId, step.wanted);
    for (const step of plan.contracts.steps) if (step.wanted && step.action !== 'same') await this.writeContract(step, step.wanted, seasonId);
  }

  private async writeSponsor(existingId: string | null, { categoryName, ...sponsor }: WantedSponsor): Promise<void> {
    const categories = await this.work.find(SponsorCategory);
    const known = categories.find((one) => foldedText(one.name) === foldedText(categoryName));
    const categoryId = known?.id ?? (await this.work.insert(SponsorCategory, { name: categoryName }))[0]!.id;
    if (existingId) await this.work.update(Sponsor, existingId, null, { ...sponsor, categoryId });
    else await this.work.insert(Sponsor, { ...sponsor, categoryId, status: 'prospect' });
  }

  private async writeContract({ existingId, changes }: ImportStep<WantedContract>, wanted: WantedContract, seasonId: string): Promise<void> {
    const sponsorId = wanted.sponsorId ?? (await this.sponsorNamed(wanted.sponsorName));
    const { outsideId, sellerId, startsOn, endsOn, priceCents } = wanted;
    const parties = { outsideId, sponsorId, sellerId, payerId: await this.payer(wanted.payerName, sponsorId, wanted.sponsorName) };
    const days = { startsOn, endsOn, priceCents };
    const commitments = wanted.commitments.map((line) => ({ ...line }));
    if (existingId) {
      const contract = await this.work.one(Contract, existingId);
      const lines = changes.some(({ field }) => field === 'lines') ? { commitments } : {};
      await this.contracts.change(existingId, contract.version, { ...parties, term: days, ...lines } as never);
      return;
    }
    const term = { seasonId, ...days, pricing: 'fixed', billingPlan: { kind: 'inFull', on: startsOn } };
    const form = { ...parties, title: outsideId ? `${wanted.sponsorName} ${outsideId}` : wanted.sponsorName, term, commitments, benefits: [] };
    await this.contracts.add(form as unknown as ContractDto);
  }

  private async sponsorNamed(name: string): Promise<string> {
    const sponsors = await this.work.find(Sponsor);
    return sponsors.find((one) => foldedText(one.name) === foldedText(name))?.id ?? refuse('unknown-sponsor');
  }

  /** A payer that is not there yet is added; it stands with the sponsor where the two are the same. */
  private async payer(name: string, sponsorId: string, sponsorName: string): Promise<string> {
    const payers = await this.work.find(Payer);
    const known = payers.find((one) => foldedText(one.name) === foldedText(name));
    if (known) return known.id;
    const isSponsor = foldedText(name) === foldedText(sponsorName);
    const [made] = await this.work.insert(Payer, { name, sponsorId: isSponsor ? sponsorId : null });
    return made!.id;
  }
}
