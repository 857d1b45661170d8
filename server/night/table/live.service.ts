import { Inject, Injectable } from '@nestjs/common';
import type { BeforeApplicationShutdown } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { Admissions } from '../../access/admission.service.ts';
import type { VisitedRequest } from '../../access/visitor.ts';
import { refuse } from '../../domain/refusals.ts';
import { Notices } from '../../platform/database/notices.ts';
import type { Notice } from '../../platform/database/notices.ts';
import type { Scope } from '../../platform/database/scope.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { LiveStream } from './live-stream.ts';
import { NightLog } from '../log/night-log.service.ts';

/** A process holds so many sockets open beside its other work; who comes after asks every few seconds instead. */
const MOST_STREAMS = 1000;
const MOST_STREAMS_OF_A_NIGHT = 60;
const RETRY_AFTER_SECONDS = 10;
const HEARTBEAT_MILLISECONDS = 20_000;

interface Reader {
  nightId: string;
  stream: LiveStream;
}

/** Tells the pages of a night at once when there is something new to ask for. Nothing of it is said here: each page asks for what it may see. */
@Injectable()
export class LiveNights implements BeforeApplicationShutdown {
  private readonly readers = new Set<Reader>();
  private isOver = false;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Notices) private readonly notices: Notices,
    @Inject(Admissions) private readonly admissions: Admissions,
    @Inject(NightLog) private readonly log: NightLog,
  ) {}

  /**
   * Opens a stream: `entries` with the last number of the night's log, at once and whenever there are more; `requests`; `night`; and `heartbeat` with the
   * last number every twenty seconds. It ends when the session or the link does, and when the server stops.
   *
   * @throws Refused `not-found`, `too-many-listening`
   */
  async open(nightId: string, request: VisitedRequest, reply: FastifyReply): Promise<void> {
    const { scope } = this.work;
    await this.work.run(async () => this.log.night(nightId));
    this.refuseWhenFull(nightId);
    if (request.method === 'HEAD') return void reply.type('text/event-stream').send();
    const stream = new LiveStream(reply, 2000 + Math.round(Math.random() * 3000));
    const reader = { nightId, stream };
    this.readers.add(reader);
    // Listening goes before the first look, so that nothing falls in between.
    const stopListening = this.notices.listen(scope.departmentId, nightId, (notice) => this.pass(notice, reader, scope));
    const heartbeat = setInterval(() => void this.beat(reader, request, scope), HEARTBEAT_MILLISECONDS);
    stream.onEnd(() => {
      clearInterval(heartbeat);
      stopListening();
      this.readers.delete(reader);
    });
    await this.tellLastNumber(reader, scope);
  }

  beforeApplicationShutdown(): void {
    this.isOver = true;
    for (const { stream } of this.readers) stream.end();
  }

  private refuseWhenFull(nightId: string): void {
    const ofNight = [...this.readers].filter((reader) => reader.nightId === nightId).length;
    if (this.isOver || this.readers.size >= MOST_STREAMS || ofNight >= MOST_STREAMS_OF_A_NIGHT) refuse('too-many-listening', { retryAfterSeconds: RETRY_AFTER_SECONDS });
  }

  private pass(notice: Notice | 'missed', reader: Reader, scope: Scope): void {
    if (notice === 'missed') void this.tellLastNumber(reader, scope);
    else reader.stream.tell(notice.kind, notice.number ?? 0);
  }

  /** A database that is away is told of by the heartbeat that fails; the stream stays. */
  private async tellLastNumber({ nightId, stream }: Reader, scope: Scope): Promise<void> {
    const last = await this.work.runAs(scope, () => this.log.lastNumber(nightId)).catch(() => null);
    if (last !== null) stream.tell('entries', last);
  }

  private async beat({ nightId, stream }: Reader, request: VisitedRequest, scope: Scope): Promise<void> {
    try {
      const last = await this.work.runAs(scope, async () => ((await this.admissions.stillStands(request, 'log a night')) ? this.log.lastNumber(nightId) : null));
      if (last === null) stream.end();
      else stream.tell('heartbeat', last);
    } catch {
      stream.tell('heartbeat', 0);
    }
  }
}
