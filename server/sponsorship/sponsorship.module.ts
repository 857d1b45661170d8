import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module.ts';
import { TermLedger } from './term-ledger.service.ts';
import { Term } from './term.entity.ts';

export const sponsorshipEntities = [Term];

@Module({
  imports: [LedgerModule],
  providers: [TermLedger],
  exports: [TermLedger],
})
export class SponsorshipModule {}
