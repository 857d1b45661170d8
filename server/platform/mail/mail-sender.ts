import { mkdirSync } from 'node:fs';
import { rename, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { createTransport } from 'nodemailer';
import MailComposer from 'nodemailer/lib/mail-composer';
import type { Config } from '../config/config.ts';
import { messageIdOf, outcomeOf } from './mail.ts';
import type { Mail, MailOutcome, SmtpFailure } from './mail.ts';

/** Where letters come from as long as nobody has said so. */
const NOBODYS_ADDRESS = 'office@rafterline.invalid';
const PATIENCE = { connectionTimeout: 15_000, greetingTimeout: 15_000, socketTimeout: 60_000 };
const NO_FILES = { disableFileAccess: true, disableUrlAccess: true };

/** Hands letters to a mail server; where none is named they are laid into a folder, and nothing leaves the machine. */
export class MailSender {
  private readonly from: string;
  private readonly transport: ReturnType<typeof createTransport> | null;
  private readonly folder: string;

  constructor(config: Pick<Config, 'smtpUrl' | 'mailFrom' | 'dataFolder'>) {
    this.from = config.mailFrom ?? NOBODYS_ADDRESS;
    this.folder = resolve(config.dataFolder, 'letters');
    this.transport = config.smtpUrl === null ? null : createTransport({ url: config.smtpUrl, ...PATIENCE, ...NO_FILES });
  }

  /** For the log: where letters go. Never the address of the mail server, in which a password may stand. */
  get where(): { letters: string } {
    return { letters: this.transport === null ? this.folder : 'by SMTP' };
  }

  async send(mail: Mail): Promise<MailOutcome> {
    const letter = await this.written(mail);
    return this.transport === null ? this.layDown(mail.id, letter) : this.handOver(this.transport, mail.to, letter);
  }

  private async written(mail: Mail): Promise<Buffer> {
    const composer = new MailComposer({
      messageId: messageIdOf(mail.id, this.from.slice(this.from.indexOf('@') + 1)),
      from: { name: mail.fromName, address: this.from },
      to: [{ name: '', address: mail.to }],
      ...(mail.replyTo === null ? {} : { replyTo: [{ name: '', address: mail.replyTo }] }),
      subject: mail.subject,
      text: mail.text,
      headers: mail.isAutomatic ? { 'Auto-Submitted': 'auto-generated' } : {},
      attachments: mail.attachments.map(({ name, bytes }) => ({ filename: name, content: bytes, contentType: 'application/pdf' })),
      ...NO_FILES,
    });
    return composer.compile().build();
  }

  private async handOver(transport: ReturnType<typeof createTransport>, to: string, letter: Buffer): Promise<MailOutcome> {
    let wasRead = false;
    const raw = Readable.from([letter]);
    raw.on('end', () => (wasRead = true));
    try {
      const { response } = (await transport.sendMail({ envelope: { from: this.from, to: [to] }, raw })) as { response?: string };
      return { kind: 'handedOver', detail: String(response ?? '').replace(/\s+/g, ' ').slice(0, 400) };
    } catch (failure) {
      return outcomeOf(failure as SmtpFailure, wasRead);
    }
  }

  /** Under its id, so that the same letter laid down twice is one file. */
  private async layDown(id: string, letter: Buffer): Promise<MailOutcome> {
    mkdirSync(this.folder, { recursive: true, mode: 0o700 });
    const file = join(this.folder, `${id}.eml`);
    await writeFile(`${file}.half`, letter, { mode: 0o600 });
    await rename(`${file}.half`, file);
    return { kind: 'handedOver', detail: 'Laid into the folder for letters; no mail server is named.' };
  }
}
