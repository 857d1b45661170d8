import { Body, Controller, Get, Header, Inject, Param, Post, StreamableFile } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { FileCertificateDto } from './exemption-file.dto.ts';
import type { ExemptionFileView } from './exemption-file.dto.ts';
import { ExemptionFiles } from './exemption-file.service.ts';

@ApiTags('sponsorship')
@Controller('api/payers/:id/exemption-files')
export class ExemptionFileController {
  constructor(@Inject(ExemptionFiles) private readonly files: ExemptionFiles) {}

  @Get()
  @Needs('see money')
  async list(@Param('id') id: string): Promise<{ data: ExemptionFileView[] }> {
    return { data: await this.files.list(id) };
  }

  @Post()
  @Needs('bill')
  async file(@Param('id') id: string, @Body() form: FileCertificateDto): Promise<{ data: ExemptionFileView[] }> {
    return { data: await this.files.file(id, form) };
  }

  /** Always a download: what somebody else made is never shown as a page of ours. */
  @Get(':fileId')
  @Needs('see money')
  @Header('X-Content-Type-Options', 'nosniff')
  async open(@Param('id') id: string, @Param('fileId') fileId: string): Promise<StreamableFile> {
    const { bytes, name, mediaType } = await this.files.open(id, fileId);
    const plain = name.replace(/[^A-Za-z0-9._ -]/g, '-');
    return new StreamableFile(bytes, { type: mediaType, disposition: `attachment; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(name)}`, length: bytes.length });
  }
}
