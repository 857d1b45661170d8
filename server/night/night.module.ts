import { Module } from '@nestjs/common';
import { PacketModule } from '../packet/packet.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { SeasonModule } from '../season/season.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { Amendments } from './closing/amendment.service.ts';
import { NightAttendanceController } from './attendance/night-attendance.controller.ts';
import { NightAttendances } from './attendance/night-attendance.service.ts';
import { Asides } from './log/aside.service.ts';
import { Bundles } from './table/bundle.service.ts';
import { ClosingController } from './closing/closing.controller.ts';
import { DeskController } from './table/desk.controller.ts';
import { LateEntries } from './log/late-entries.service.ts';
import { LiveNights } from './table/live.service.ts';
import { LogBatch } from './log/log-batch.service.ts';
import { LogCareController } from './log/log-care.controller.ts';
import { LogImport } from './log/log-import.service.ts';
import { LogReading } from './log/log-reading.service.ts';
import { NightBooking } from './closing/night-booking.service.ts';
import { NightBooks } from './closing/night-books.service.ts';
import { NightClosing } from './closing/night-closing.service.ts';
import { NightContexts } from './log/night-context.service.ts';
import { NightTableController } from './log/night.controller.ts';
import { NightCounting } from './closing/night-counting.service.ts';
import { NightLog } from './log/night-log.service.ts';
import { NightTidying } from './closing/night-tidy.service.ts';
import { NightTableService } from './log/night.service.ts';
import { WornNumbers } from './closing/worn-numbers.service.ts';
import { AskController } from './requests/ask.controller.ts';
import { Asking } from './requests/ask.service.ts';
import { RequestAnswers } from './requests/request-answers.service.ts';
import { RequestController } from './requests/request.controller.ts';
import { RequestFormController } from './requests/request-form.controller.ts';
import { RequestForms } from './requests/request-form.service.ts';
import { NightRequests } from './requests/request.service.ts';
import { Settlements } from './closing/settlement.service.ts';
import { TableController } from './table/table.controller.ts';
import { TableLinkController } from './table/table-link.controller.ts';
import { TableLinks } from './table/table-link.service.ts';

@Module({
  imports: [PacketModule, PlanningModule, SeasonModule, SponsorshipModule],
  controllers: [
    NightTableController, ClosingController, LogCareController, DeskController, TableController, TableLinkController, RequestController, RequestFormController, AskController,
    NightAttendanceController,
  ],
  providers: [
    NightLog, LateEntries, LogImport, Asides, LogReading, LiveNights, LogBatch, NightContexts, NightCounting, NightBooking, NightBooks, NightTableService, WornNumbers,
    Settlements, NightClosing, Amendments, NightTidying, Bundles, TableLinks, NightRequests, RequestAnswers, RequestForms, Asking,
    NightAttendances,
  ],
  exports: [Amendments, NightAttendances],
})
export class NightModule {}
