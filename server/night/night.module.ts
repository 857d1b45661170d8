import { Module } from '@nestjs/common';
import { PacketModule } from '../packet/packet.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { SeasonModule } from '../season/season.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { Amendments } from './amendment.service.ts';
import { Asides } from './aside.service.ts';
import { Bundles } from './bundle.service.ts';
import { ClosingController } from './closing.controller.ts';
import { DeskController } from './desk.controller.ts';
import { LateEntries } from './late-entries.service.ts';
import { LiveNights } from './live.service.ts';
import { LogBatch } from './log-batch.service.ts';
import { LogCareController } from './log-care.controller.ts';
import { LogImport } from './log-import.service.ts';
import { LogReading } from './log-reading.service.ts';
import { NightBooking } from './night-booking.service.ts';
import { NightClosing } from './night-closing.service.ts';
import { NightContexts } from './night-context.service.ts';
import { NightTableController } from './night.controller.ts';
import { NightCounting } from './night-counting.service.ts';
import { NightLog } from './night-log.service.ts';
import { NightTidying } from './night-tidy.service.ts';
import { NightTableService } from './night.service.ts';
import { WornNumbers } from './worn-numbers.service.ts';
import { AskController } from './requests/ask.controller.ts';
import { Asking } from './requests/ask.service.ts';
import { RequestAnswers } from './requests/request-answers.service.ts';
import { RequestController } from './requests/request.controller.ts';
import { RequestFormController } from './requests/request-form.controller.ts';
import { RequestForms } from './requests/request-form.service.ts';
import { NightRequests } from './requests/request.service.ts';
import { Settlements } from './settlement.service.ts';
import { TableController } from './table.controller.ts';
import { TableLinkController } from './table-link.controller.ts';
import { TableLinks } from './table-link.service.ts';

@Module({
  imports: [PacketModule, PlanningModule, SeasonModule, SponsorshipModule],
  controllers: [
    NightTableController, ClosingController, LogCareController, DeskController, TableController, TableLinkController, RequestController, RequestFormController, AskController,
  ],
  providers: [
    NightLog, LateEntries, LogImport, Asides, LogReading, LiveNights, LogBatch, NightContexts, NightCounting, NightBooking, NightTableService, WornNumbers, Settlements,
    NightClosing, Amendments, NightTidying, Bundles, TableLinks, NightRequests, RequestAnswers, RequestForms, Asking,
  ],
})
export class NightModule {}
