import { refuse } from '../refusals.ts';

export type CertificateType = 'application/pdf' | 'image/png' | 'image/jpeg';

/** 2 MB: a scan of a page or two. */
export const MOST_CERTIFICATE_BYTES = 2 * 1024 * 1024;

const KINDS: readonly { ends: readonly string[]; type: CertificateType; begins: readonly number[] }[] = [
  { ends: ['pdf'], type: 'application/pdf', begins: [0x25, 0x50, 0x44, 0x46, 0x2d] },
  { ends: ['png'], type: 'image/png', begins: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { ends: ['jpg', 'jpeg'], type: 'image/jpeg', begins: [0xff, 0xd8, 0xff] },
];

/**
 * What a scanned certificate is, by its name and by the bytes it begins with; both have to say the same.
 *
 * @throws Refused `certificate-too-large`, `file-of-another-kind`
 * @source signatures of PDF (ISO 32000-1, 7.5.2), PNG (RFC 2083, 3.1) and JPEG (ITU T.81, B.1.1), from memory
 */
export function certificateTypeOf(name: string, bytes: Uint8Array): CertificateType {
  if (bytes.length > MOST_CERTIFICATE_BYTES) refuse('certificate-too-large');
  const ending = name.split('.').at(-1)?.toLowerCase() ?? '';
  const kind = KINDS.find(({ ends }) => name.includes('.') && ends.includes(ending));
  if (!kind || !kind.begins.every((byte, place) => bytes[place] === byte)) return refuse('file-of-another-kind');
  return kind.type;
}
