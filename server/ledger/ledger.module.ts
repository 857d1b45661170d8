import { Module } from '@nestjs/common';
import { AccountController } from './account.controller.ts';
import { AccountRow } from './account.entity.ts';
import { AccountNames } from './account-names.service.ts';
import { BookingLock } from './booking-lock.ts';
import { LedgerEntry } from './ledger-entry.entity.ts';
import { LedgerEvent } from './ledger-event.entity.ts';
import { LedgerService } from './ledger.service.ts';
import { MonthClose } from './month-close.entity.ts';
import { MonthClosing } from './month-closing.service.ts';
import { PostingRow } from './posting.entity.ts';

export const ledgerEntities = [LedgerEvent, LedgerEntry, PostingRow, MonthClose, AccountRow];

@Module({
  controllers: [AccountController],
  providers: [LedgerService, BookingLock, MonthClosing, AccountNames],
  exports: [LedgerService, BookingLock, MonthClosing, AccountNames],
})
export class LedgerModule {}
