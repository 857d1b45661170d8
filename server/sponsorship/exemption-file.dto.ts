import { SecretField, TextField } from '../platform/http/fields.ts';

export class FileCertificateDto {
  /** the file's name with its ending: pdf, png, jpg or jpeg */
  @TextField(1, 120) name: string;
  /** its bytes in base64 */
  @SecretField(4, 2_900_000) content: string;
}

export interface ExemptionFileView {
  id: string;
  payerId: string;
  name: string;
  mediaType: string;
  sizeBytes: number;
  filedAt: string;
  filedByName: string | null;
}
