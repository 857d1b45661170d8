import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { Refused } from '../../domain/refusals.ts';
import { accountTexts } from './account-sheet.ts';
import type { AccountSheet } from './account-sheet.ts';
import { depositSlipTexts } from './deposit-slip-sheet.ts';
import type { DepositSlipSheet } from './deposit-slip-sheet.ts';
import { invoiceTexts } from './invoice-sheet.ts';
import type { InvoiceSheet } from './invoice-sheet.ts';
import { letterTexts } from './letter-sheet.ts';
import type { LetterSheet } from './letter-sheet.ts';
import { offerTexts } from './offer-sheet.ts';
import type { OfferSheet } from './offer-sheet.ts';
import { packetTexts } from './packet-sheet.ts';
import type { PacketSheet } from './packet-sheet.ts';
import { performanceTexts } from './performance-sheet.ts';
import type { PerformanceSheet } from './performance-sheet.ts';
import { receiptTexts } from './receipt-sheet.ts';
import type { ReceiptSheet } from './receipt-sheet.ts';
import { statementTexts } from './statement-sheet.ts';
import type { StatementSheet } from './statement-sheet.ts';
import type { BlockMark, TemplateName, TypesetAnswer, TypesetOrder } from './typeset-order.ts';

/** What each template takes. */
export interface Sheets {
  readonly packet: PacketSheet;
  readonly invoice: InvoiceSheet;
  readonly statement: StatementSheet;
  readonly account: AccountSheet;
  readonly letter: LetterSheet;
  readonly receipt: ReceiptSheet;
  readonly depositSlip: DepositSlipSheet;
  readonly offer: OfferSheet;
  readonly performance: PerformanceSheet;
}

const TEXTS: { readonly [T in TemplateName]: (sheet: Sheets[T]) => unknown } = {
  packet: packetTexts,
  invoice: invoiceTexts,
  statement: statementTexts,
  account: accountTexts,
  letter: letterTexts,
  receipt: receiptTexts,
  depositSlip: depositSlipTexts,
  offer: offerTexts,
  performance: performanceTexts,
};

/** A document that could not be set; the reason is for the log, not for a reader. */
export class TypesettingFailed extends Error {
  constructor(readonly reason: string) {
    super(`the document could not be set: ${reason}`);
  }
}

/** A document that is set, and where the blocks of a packet stand in it. */
export interface SetDocument {
  readonly pdf: Buffer;
  readonly marks: readonly BlockMark[];
  readonly pageCount: number;
}

interface Waiting {
  readonly order: TypesetOrder;
  readonly resolve: (answer: TypesetAnswer) => void;
  readonly reject: (failure: Error) => void;
}

const WORKER = 'typeset.worker.js';
/** Sources run from their own folder, the built server from `.build`. */
function builtWorker(): URL {
  const beside = new URL(`./${WORKER}`, import.meta.url);
  return existsSync(beside) ? beside : new URL(`../../../.build/server/platform/typesetting/${WORKER}`, import.meta.url);
}

/** 1 January 2026: a fixed moment, so that the same data gives the same bytes. */
const FIXED_MOMENT_SECONDS = 1_767_225_600;
const RECYCLED_AFTER = 100;
/** A season's longest packet has about 300,000 letters. */
const MOST_LETTERS = 4_000_000;
/** Of the worker's own memory; a document that wants more costs its worker, not the server. */
const MOST_MEMORY_MB = 512;

/**
 * Sets documents as PDF in a worker of its own, one at a time. A document that takes longer than the
 * limit costs its worker, not the server; the ones behind it are set by the next.
 */
export class Typesetter {
  private readonly queue: Waiting[] = [];
  private current: Waiting | null = null;
  private worker: Worker | null = null;
  private timer: NodeJS.Timeout | null = null;
  private setSinceStart = 0;
  private lastId = 0;
  private isClosed = false;

  constructor(private readonly options: { readonly workerFile?: URL; readonly limitMilliseconds?: number } = {}) {}

  /** The document on its own, as `set` makes it. */
  async pdf<T extends TemplateName>(template: T, sheet: Sheets[T], createdAtSeconds?: number): Promise<Buffer> {
    return (await this.set(template, sheet, createdAtSeconds)).pdf;
  }

  /**
   * Tagged PDF/UA-1 with its fonts inside; the same data gives the same bytes.
   *
   * @param createdAtSeconds the moment written into the file, in seconds since 1970
   * @throws Refused `document-too-long` when it takes more letters, time or memory than one document may
   * @throws TypesettingFailed when the template refuses the data
   */
  async set<T extends TemplateName>(template: T, sheet: Sheets[T], createdAtSeconds: number = FIXED_MOMENT_SECONDS): Promise<SetDocument> {
    const texts = TEXTS[template](sheet);
    if (JSON.stringify(texts).length > MOST_LETTERS) throw new Refused('document-too-long');
    const { pdf, marks, pageCount, error } = await this.ask(template, texts, createdAtSeconds);
    if (pdf === null) throw new TypesettingFailed(error ?? 'no answer');
    return { pdf: Buffer.from(pdf), marks, pageCount };
  }

  /** Where the blocks of a packet come to stand, without making the paper. */
  async plan(sheet: PacketSheet): Promise<Omit<SetDocument, 'pdf'>> {
    const { marks, pageCount, error } = await this.ask('packet', TEXTS.packet(sheet), FIXED_MOMENT_SECONDS, true);
    if (error !== null) throw new TypesettingFailed(error);
    return { marks, pageCount };
  }

  /** Characters in the texts of some data that the font has no glyph for; they are printed as a box. */
  async missingGlyphs(data: unknown): Promise<readonly string[]> {
    const answer = await this.ask(null, data, FIXED_MOMENT_SECONDS);
    if (answer.error !== null) throw new TypesettingFailed(answer.error);
    return answer.missing;
  }

  /** Ends the worker; documents still waiting are refused. */
  async close(): Promise<void> {
    this.isClosed = true;
    const waiting = [...(this.current ? [this.current] : []), ...this.queue.splice(0)];
    this.current = null;
    await this.endWorker();
    for (const one of waiting) one.reject(new TypesettingFailed('the typesetter is closed'));
  }

  async onModuleDestroy(): Promise<void> {
    await this.close();
  }

  private ask(template: TemplateName | null, data: unknown, createdAtSeconds: number, isPlan = false): Promise<TypesetAnswer> {
    if (this.isClosed) return Promise.reject(new TypesettingFailed('the typesetter is closed'));
    return new Promise((resolve, reject) => {
      this.lastId += 1;
      this.queue.push({ order: { id: this.lastId, template, data, createdAtSeconds, isPlan }, resolve, reject });
      this.next();
    });
  }

  private next(): void {
    if (this.current !== null) return;
    const waiting = this.queue.shift();
    if (waiting === undefined) return;
    this.current = waiting;
    if (this.setSinceStart >= RECYCLED_AFTER) void this.endWorker();
    const worker = (this.worker ??= this.startWorker());
    this.setSinceStart += 1;
    const limit = this.options.limitMilliseconds ?? 20_000;
    this.timer = setTimeout(() => {
      void this.endWorker();
      this.settle((one) => one.reject(new Refused('document-too-long')));
    }, limit);
    worker.postMessage(waiting.order);
  }

  private startWorker(): Worker {
    const worker = new Worker(this.options.workerFile ?? builtWorker(), { resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB } });
    worker.on('message', (answer: TypesetAnswer) => {
      if (answer.id === this.current?.order.id) this.settle((one) => one.resolve(answer));
    });
    const lost = (failure: Error): void => {
      if (this.worker !== worker) return;
      this.worker = null;
      this.setSinceStart = 0;
      this.settle((one) => one.reject(failure));
    };
    const outOfMemory = (failure: unknown): boolean => failure instanceof Error && 'code' in failure && failure.code === 'ERR_WORKER_OUT_OF_MEMORY';
    worker.on('error', (failure) => lost(outOfMemory(failure) ? new Refused('document-too-long') : new TypesettingFailed(String(failure))));
    worker.on('exit', (code) => lost(new TypesettingFailed(`the worker ended with ${code}`)));
    worker.unref();
    return worker;
  }

  private settle(end: (one: Waiting) => void): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    const one = this.current;
    this.current = null;
    if (one !== null) end(one);
    this.next();
  }

  private async endWorker(): Promise<void> {
    const { worker } = this;
    this.worker = null;
    this.setSinceStart = 0;
    if (this.timer !== null && this.isClosed) clearTimeout(this.timer);
    await worker?.terminate();
  }
}
