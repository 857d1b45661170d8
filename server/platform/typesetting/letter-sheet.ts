import { dayText } from './amount-text.ts';

/** A letter on paper; its body is plain text, with an empty line between paragraphs. Days are `YYYY-MM-DD`. */
export interface LetterSheet {
  readonly subject: string;
  readonly fromName: string;
  readonly fromAddress: string | null;
  readonly toName: string;
  readonly toAddress: string | null;
  readonly writtenOn: string;
  readonly locale: string;
  readonly body: string;
}

const linesOf = (text: string | null): string[] => (text ?? '').split('\n').map((line) => line.trim()).filter((line) => line !== '');

export function letterTexts(sheet: LetterSheet): Record<string, unknown> {
  const paragraphs = sheet.body.split(/\n\s*\n/).map(linesOf).filter((lines) => lines.length > 0);
  return {
    subject: sheet.subject,
    fromName: sheet.fromName,
    fromAddress: linesOf(sheet.fromAddress),
    toName: sheet.toName,
    toAddress: linesOf(sheet.toAddress),
    writtenOn: dayText(sheet.writtenOn, sheet.locale),
    // Lines that begin with a dash are a list, as they are read in the mail.
    blocks: paragraphs.map((lines) => ({
      lines: lines.filter((line) => !line.startsWith('- ')),
      items: lines.filter((line) => line.startsWith('- ')).map((line) => line.slice(2)),
    })),
  };
}
