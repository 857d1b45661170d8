import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Instant } from '../domain/instant.ts';
import { dayAt } from '../domain/instant.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Typesetter } from '../platform/typesetting/typesetter.ts';
import { PacketIssueService } from './packet-issue.service.ts';
import { clockWords, dayWords } from './words-for-packet.ts';

const SHORTENED_DIGEST = 12;

export interface PrintedPacket {
  pdf: Buffer;
  fileName: string;
}

/** A packet on paper: a short unit of work to compose it, and the typesetting outside of it. */
@Injectable()
export class PacketPrinter {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(PacketIssueService) private readonly issues: PacketIssueService,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async print(nightId: string, issue: number | undefined): Promise<PrintedPacket> {
    const { composed, zone, locale } = await this.work.run(async () => ({
      composed: await this.issues.toPrint(nightId, issue),
      ...(await this.departments.here()),
    }));
    const { night, packet, digest, issueNumber } = composed;
    const now = new Date().toISOString() as Instant;
    const pdf = await this.typesetter.pdf('packet', {
      packet,
      issueNumber,
      printedAtText: `${dayWords(dayAt(now, zone), locale)}, ${clockWords(now, zone)}`,
      digestText: digest.slice(0, SHORTENED_DIGEST),
    });
    return { pdf, fileName: `packet-${night.heldOn}-${plain(night.venue.name)}.pdf` };
  }
}

/** `Alder Fieldhouse` as `alder-fieldhouse`. */
function plain(name: string): string {
  const words = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return words.replace(/^-+|-+$/g, '').slice(0, 60) || 'venue';
}
