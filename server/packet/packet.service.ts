import { Inject, Injectable } from '@nestjs/common';
import { composePacket } from '../domain/packet/compose-packet.ts';
import type { NightForPacket } from '../domain/packet/night-for-packet.ts';
import type { Packet } from '../domain/packet/packet.ts';
import { libraryFor } from '../domain/packet/script.ts';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { fillIn } from './liquid.ts';
import { contentDigest, contentOf } from './packet-content.ts';
import { NightsForPackets } from './nights-for-packets.service.ts';
import { pronouncing } from './pronouncing.ts';
import { ScriptService } from './script.service.ts';

export interface Composed {
  night: NightForPacket;
  packet: Packet;
  /** of everything that is printed; what is missing is not printed */
  digest: string;
}

/** Puts nights and scripts together; numbers are given elsewhere. */
@Injectable()
export class PacketService {
  constructor(
    @Inject(NightsForPackets) private readonly nights: NightsForPackets,
    @Inject(ScriptService) private readonly scripts: ScriptService,
  ) {}

  /** @throws Refused `not-found` */
  async one(nightId: string): Promise<Composed> {
    const [composed] = isId(nightId) ? await this.compose([nightId]) : [];
    return composed ?? refuse('not-found');
  }

  /** The packets of several nights as they stand, in a fixed number of statements. */
  async compose(nightIds: readonly string[]): Promise<Composed[]> {
    const nights = await this.nights.load(nightIds);
    if (nights.length === 0) return [];
    const [library, words] = [await this.scripts.library(), await pronouncing()];
    return nights.map((night) => {
      const sports = new Set(night.games.map((game) => game.sport));
      const scripts = libraryFor(library, sports);
      const packet = composePacket(night, scripts, fillIn, words);
      return { night, packet, digest: contentDigest(contentOf(packet)) };
    });
  }
}
