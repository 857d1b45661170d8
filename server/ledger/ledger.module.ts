import { Module } from '@nestjs/common';
import { LedgerEntry } from './ledger-entry.entity.ts';
import { LedgerEvent } from './ledger-event.entity.ts';
import { LedgerService } from './ledger.service.ts';
import { PostingRow } from './posting.entity.ts';

export const ledgerEntities = [LedgerEvent, LedgerEntry, PostingRow];

@Module({ providers: [LedgerService], exports: [LedgerService] })
export class LedgerModule {}
