import { Inject, Injectable } from '@nestjs/common';
import { headOf, sectionsOf } from '../domain/packet/sections.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Typesetter } from '../platform/typesetting/typesetter.ts';
import { PacketIssueService } from './packet-issue.service.ts';

export interface PrintedPacket {
  pdf: Buffer;
  fileName: string;
}

/** A packet on paper: a short unit of work to compose it, and the typesetting outside of it. */
@Injectable()
export class PacketPrinter {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PacketIssueService) private readonly issues: PacketIssueService,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async print(nightId: string, issue: number | undefined): Promise<PrintedPacket> {
    const { night, packet, issueNumber } = await this.work.run(() => this.issues.toPrint(nightId, issue));
    const { pdf } = await this.typesetter.set('packet', {
      head: headOf(packet),
      paper: packet.paper,
      versionText: issueNumber === null ? null : `Version ${issueNumber}`,
      sections: sectionsOf(packet),
      pages: null, pageCount: null, only: null, cover: null,
    });
    return { pdf, fileName: `packet-${night.heldOn}-${plain(night.venue.name)}.pdf` };
  }
}

/** `Alder Fieldhouse` as `alder-fieldhouse`. */
function plain(name: string): string {
  const words = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return words.replace(/^-+|-+$/g, '').slice(0, 60) || 'venue';
}
