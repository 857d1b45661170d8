import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module.ts';
import { BenefitDelivery } from './benefit-delivery.entity.ts';
import { Benefit } from './benefit.entity.ts';
import { Commitment } from './commitment.entity.ts';
import { CompanyCheck } from './company/company-check.service.ts';
import { CompanyException } from './company/company-exception.entity.ts';
import { CompanyLimits } from './company/company-limits.service.ts';
import { CompanyRows } from './company/company-rows.service.ts';
import { DealCompanyViews } from './company/deal-company-views.service.ts';
import { DealExclusivities } from './company/deal-exclusivities.service.ts';
import { Exclusivity } from './company/exclusivity.entity.ts';
import { InTheWayController } from './company/in-the-way.controller.ts';
import { ReservedCategoryController } from './company/reserved-category.controller.ts';
import { ReservedCategory } from './company/reserved-category.entity.ts';
import { ReservedCategoryService } from './company/reserved-category.service.ts';
import { ContractAssignment } from './contract-assignment.entity.ts';
import { CallController } from './contacts/call.controller.ts';
import { CallService } from './contacts/call.service.ts';
import { SponsorContactController } from './contacts/sponsor-contact.controller.ts';
import { SponsorContact } from './contacts/sponsor-contact.entity.ts';
import { SponsorContacts } from './contacts/sponsor-contact.service.ts';
import { ContractHappeningsController } from './contract-happenings.controller.ts';
import { ContractHappenings } from './contract-happenings.service.ts';
import { ContractHold } from './contract-hold.entity.ts';
import { ContractRecords } from './contract-records.service.ts';
import { ContractSigning } from './contract-signing.service.ts';
import { ContractViews } from './contract-view.service.ts';
import { ContractController } from './contract.controller.ts';
import { Contract } from './contract.entity.ts';
import { ContractService } from './contract.service.ts';
import { ContractsThereReader } from './contracts-there.service.ts';
import { CopyVersion } from './copy-version.entity.ts';
import { CopyController } from './copy.controller.ts';
import { Copy } from './copy.entity.ts';
import { CopyService } from './copy.service.ts';
import { CoveredGames } from './covered-games.service.ts';
import { ContractImportController } from './import-contracts.controller.ts';
import { ContractImport } from './import-contracts.service.ts';
import { LineGames } from './line-games.service.ts';
import { MakegoodController } from './makegoods/makegood.controller.ts';
import { Makegood } from './makegoods/makegood.entity.ts';
import { MakegoodService } from './makegoods/makegood.service.ts';
import { offerControllers, offerEntities, offerServices } from './offers/offer-parts.ts';
import { PackageController } from './packages/package.controller.ts';
import { Package } from './packages/package.entity.ts';
import { PackageLine } from './packages/package-line.entity.ts';
import { PackageService } from './packages/package.service.ts';
import { PackageViews } from './packages/package-views.service.ts';
import { PayerController } from './payer.controller.ts';
import { Payer } from './payer.entity.ts';
import { PayerService } from './payer.service.ts';
import { RateCardLineController } from './rate-card-line.controller.ts';
import { RateCardLine } from './rate-card-line.entity.ts';
import { RateCardLineService } from './rate-card-line.service.ts';
import { ReadKindController } from './read-kind.controller.ts';
import { ReadKind } from './read-kind.entity.ts';
import { ReadKindService } from './read-kind.service.ts';
import { rollOverControllers, rollOverServices } from './rollover/rollover-parts.ts';
import { SellerController } from './seller.controller.ts';
import { Seller } from './seller.entity.ts';
import { SellerService } from './seller.service.ts';
import { SloganController } from './slogan.controller.ts';
import { Slogan } from './slogan.entity.ts';
import { SloganService } from './slogan.service.ts';
import { SponsorCategoryController } from './sponsor-category.controller.ts';
import { SponsorCategory } from './sponsor-category.entity.ts';
import { SponsorCategoryService } from './sponsor-category.service.ts';
import { SponsorLinkController } from './sponsor-link.controller.ts';
import { ExemptionFileController } from './exemption-file.controller.ts';
import { ExemptionFile } from './exemption-file.entity.ts';
import { ExemptionFiles } from './exemption-file.service.ts';
import { SponsorController } from './sponsor.controller.ts';
import { Sponsor } from './sponsor.entity.ts';
import { SponsorService } from './sponsor.service.ts';
import { TermLedger } from './term-ledger.service.ts';
import { Term } from './term.entity.ts';

export const sponsorshipEntities = [
  SponsorCategory, Sponsor, Seller, Payer, ReadKind, RateCardLine, Contract, Term, Commitment, Benefit, BenefitDelivery, ContractHold, ContractAssignment, Copy, CopyVersion, Slogan,
  Makegood, ExemptionFile, Exclusivity, CompanyException, ReservedCategory, ...offerEntities,
  SponsorContact, Package, PackageLine,
];

const company = [CompanyRows, CompanyCheck, CompanyLimits, DealCompanyViews, DealExclusivities, ReservedCategoryService];
const nouns = [SponsorCategoryService, SponsorService, SellerService, PayerService, ReadKindService, RateCardLineService, CopyService, SloganService, ExemptionFiles];
const contracts = [ContractRecords, ContractViews, ContractService, ContractSigning, ContractHappenings, CoveredGames, TermLedger, LineGames, MakegoodService, ContractsThereReader, ContractImport];
const contacts = [SponsorContacts, CallService, PackageViews, PackageService];

@Module({
  imports: [LedgerModule],
  controllers: [
    SponsorCategoryController, SponsorController, SellerController, PayerController, ExemptionFileController, ReadKindController, RateCardLineController,
    ContractController, ContractHappeningsController, CopyController, SloganController, SponsorLinkController, ContractImportController, MakegoodController,
    ReservedCategoryController, InTheWayController,
    ...offerControllers,
    SponsorContactController, CallController, PackageController,
    ...rollOverControllers,
  ],
  providers: [...nouns, ...company, ...contracts, ...offerServices, ...contacts, ...rollOverServices],
  exports: [...nouns, ...company, ...contracts, ...offerServices, ...contacts, ...rollOverServices],
})
export class SponsorshipModule {}
