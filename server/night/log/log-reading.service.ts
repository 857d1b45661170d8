import { Inject, Injectable } from '@nestjs/common';
import { takenBackIds } from '../../domain/night/take-back.ts';
import type { LogAfterView, LogEntryView } from './log.dto.ts';
import { sentenceOfEntry } from './log-sentence.ts';
import { NightLog } from './night-log.service.ts';
import type { LoggedEntry } from './night-log.service.ts';

const USUAL_LIMIT = 500;

/** The log as devices read it: what is new, without counting anything, in a fixed number of statements. */
@Injectable()
export class LogReading {
  constructor(@Inject(NightLog) private readonly log: NightLog) {}

  /** @throws Refused `not-found` */
  async after(nightId: string, number: number, limit: number = USUAL_LIMIT): Promise<LogAfterView> {
    const night = await this.log.night(nightId);
    const lastNumber = await this.log.lastNumber(nightId);
    const entries = lastNumber > number ? await this.log.entriesAfter(nightId, number, limit) : [];
    const gone = takenBackIds(entries);
    return { entries: entries.map((entry) => viewOf(entry, gone)), state: night.isSignedOff ? 'signedOff' : 'open', lastNumber };
  }
}

function viewOf(entry: LoggedEntry, gone: ReadonlySet<string>): LogEntryView {
  const { nightId: _, playerId: __, contentDigest: ___, teamName: ____, readKindName, takesBackNumber, ...shown } = entry;
  return { ...shown, gameLabel: null, label: readKindName, takenBack: gone.has(shown.id), counting: null, sentence: sentenceOfEntry(entry, takesBackNumber) };
}
