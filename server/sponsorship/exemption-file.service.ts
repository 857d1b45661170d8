import { Inject, Injectable } from '@nestjs/common';
import { certificateTypeOf } from '../domain/billing/certificate-file.ts';
import { refuse } from '../domain/refusals.ts';
import { isId, newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { ExemptionFileView, FileCertificateDto } from './exemption-file.dto.ts';
import { ExemptionFile } from './exemption-file.entity.ts';
import { Payer } from './payer.entity.ts';

const VIEW = `select file.id, file.payer_id as "payerId", file.name, file.media_type as "mediaType", octet_length(file.bytes) as "sizeBytes",
    file.recorded_at as "filedAt", person.name as "filedByName"
  from exemption_file as file left join person on person.id = file.filed_by_person_id
  where file.department_id = $1 and file.payer_id = $2 order by file.recorded_at desc`;

/** Certificates are filed and kept; a newer one stands beside the older ones. */
@Injectable()
export class ExemptionFiles {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(payerId: string): Promise<ExemptionFileView[]> {
    await this.work.one(Payer, payerId);
    return this.work.sql<ExemptionFileView>(VIEW, [payerId]);
  }

  /** @throws Refused `certificate-too-large`, `file-of-another-kind`, at the field of the form */
  async file(payerId: string, { name, content }: FileCertificateDto): Promise<ExemptionFileView[]> {
    await this.work.one(Payer, payerId);
    if (!/^[A-Za-z0-9+/]+={0,2}$/.test(content)) refuse('malformed', {}, { content: 'is no file in base64' });
    const bytes = Buffer.from(content, 'base64');
    const mediaType = certificateTypeOf(name, bytes);
    await this.work.insert(ExemptionFile, { id: newId(), payerId, name, mediaType, bytes, filedByPersonId: this.work.scope.personId });
    return this.list(payerId);
  }

  /** @throws Refused `not-found` */
  async open(payerId: string, id: string): Promise<ExemptionFile> {
    if (!isId(id)) return refuse('not-found');
    const file = await this.work.one(ExemptionFile, id);
    return file.payerId === payerId ? file : refuse('not-found');
  }
}
