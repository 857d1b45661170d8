import { Module } from '@nestjs/common';
import { SeasonModule } from '../season/season.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { ErasingController } from './erasing.controller.ts';
import { Erasing } from './erasing.service.ts';
import { IssueShelf } from './issue-shelf.service.ts';
import { HonoursListController } from './honours-list.controller.ts';
import { HonouredStudentRow, HonoursListRow } from './honours-list.entity.ts';
import { HonoursLists } from './honours-list.service.ts';
import { HonoursImport } from './import-honours.service.ts';
import { NightsForPackets } from './nights-for-packets.service.ts';
import { NightController } from './night.controller.ts';
import { NightsWithPaper } from './nights-with-paper.service.ts';
import { PacketBinder } from './packet-binder.service.ts';
import { PacketContentRow } from './packet-content.entity.ts';
import { PacketController } from './packet.controller.ts';
import { PacketPrinter } from './packet-printer.service.ts';
import { PacketIssueService } from './packet-issue.service.ts';
import { PacketService } from './packet.service.ts';
import { PacketsOfSeason } from './packets-of-season.service.ts';
import { PapersService } from './papers.service.ts';
import { ScriptController } from './script.controller.ts';
import { ScriptRow } from './script.entity.ts';
import { ScriptPreview } from './script-preview.service.ts';
import { ScriptService } from './script.service.ts';
import { ScriptVersions } from './script-versions.service.ts';
import { ScriptWordings } from './script-wordings.service.ts';

export const packetEntities = [ScriptRow, HonoursListRow, HonouredStudentRow, PacketContentRow];

@Module({
  imports: [PlanningModule, SeasonModule],
  controllers: [NightController, ErasingController, PacketController, ScriptController, HonoursListController],
  providers: [
    NightsWithPaper, NightsForPackets, ScriptService, ScriptWordings, ScriptVersions, ScriptPreview, HonoursLists, HonoursImport,
    PacketService, IssueShelf, PacketBinder, PacketIssueService, PacketPrinter, PapersService, Erasing, PacketsOfSeason,
  ],
  exports: [HonoursLists, PacketService, PacketIssueService, PacketsOfSeason, NightsWithPaper, NightsForPackets, PapersService],
})
export class PacketModule {}
