import { Inject, Injectable } from '@nestjs/common';
import { isReady } from '../domain/packet/readiness.ts';
import { IssueShelf } from './issue-shelf.service.ts';
import type { PaperState } from './packet.dto.ts';
import { PacketService } from './packet.service.ts';

/** How the paper of nights stands: issued, out of date and why, ready or what is missing. */
@Injectable()
export class PapersService {
  constructor(
    @Inject(PacketService) private readonly packets: PacketService,
    @Inject(IssueShelf) private readonly shelf: IssueShelf,
  ) {}

  /** For several nights, in a fixed number of statements. */
  async of(nightIds: readonly string[]): Promise<Map<string, PaperState>> {
    const composed = await this.packets.compose(nightIds);
    const latest = await this.shelf.latest(nightIds);
    return new Map(
      composed.map(({ night, packet, digest }) => {
        const issued = latest.get(night.nightId);
        const because = issued === undefined ? null : issued.isSealed ? 'choice' : issued.contentDigest === digest ? null : 'change';
        return [
          night.nightId,
          {
            packetIssued: issued?.number ?? null,
            packetOutOfDate: because !== null,
            packetBecause: because,
            readiness: { ready: isReady(packet), missing: packet.readiness.filter((line) => line.grade === 'mustFix').map((line) => line.sentence) },
            placementCount: night.games.reduce((sum, game) => sum + game.placements.length, 0),
          },
        ];
      }),
    );
  }
}
