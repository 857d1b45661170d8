import { Module } from '@nestjs/common';
import { PlanningModule } from '../planning/planning.module.ts';
import { NightsForPackets } from './nights-for-packets.service.ts';
import { PacketController } from './packet.controller.ts';
import { PacketPrinter } from './packet-printer.service.ts';
import { PacketService } from './packet.service.ts';
import { ScriptController } from './script.controller.ts';
import { ScriptRow } from './script.entity.ts';
import { ScriptService } from './script.service.ts';

export const packetEntities = [ScriptRow];

@Module({
  imports: [PlanningModule],
  controllers: [PacketController, ScriptController],
  providers: [NightsForPackets, ScriptService, PacketService, PacketPrinter],
  exports: [PacketService],
})
export class PacketModule {}
