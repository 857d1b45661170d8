import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Instant } from '../../domain/instant.ts';
import type { NightBundle } from '../../domain/night/desk/bundle.ts';
import { makeBundle } from '../../domain/night/desk/make-bundle.ts';
import { PacketService } from '../../packet/packet.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

const packed = promisify(gzip);

/** What a device stores of a night before it goes to the gym. */
@Injectable()
export class Bundles {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(PacketService) private readonly packets: PacketService,
  ) {}

  /** @throws Refused `not-found` */
  async of(nightId: string): Promise<NightBundle> {
    const [{ packet, night, digest }, { zone }, takesPublicRequests] = await this.work.run(
      async () => [await this.packets.one(nightId), await this.departments.here(), await this.takesRequests(nightId)] as const,
    );
    return makeBundle(packet, night, { zone, madeAt: new Date().toISOString() as Instant, contentDigest: digest, takesPublicRequests });
  }

  private async takesRequests(nightId: string): Promise<boolean> {
    const [night] = await this.work.sql<{ takes: boolean }>('select takes_requests as takes from night where department_id = $1 and id = $2', [nightId]);
    return night?.takes ?? false;
  }

  /** The same as text, gzip where the asker takes it: a gym's telephone line is thin. */
  async packed(nightId: string, takesGzip: boolean): Promise<Buffer> {
    const text = Buffer.from(JSON.stringify(await this.of(nightId)));
    return takesGzip ? packed(text) : text;
  }
}
