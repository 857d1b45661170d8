import type { Day } from '../domain/day.ts';

type Language = 'en' | 'es';

/** One version of one copy, or a copy that has no version yet. */
export interface ShelfRow {
  copyId: string;
  sponsorId: string;
  readKindId: string;
  fallbackText: string;
  isStopped: boolean;
  rotates: boolean;
  versionId: string | null;
  number: number;
  language: Language;
  text: string;
  secondLanguage: Language | null;
  secondText: string | null;
  startsOn: Day | null;
  endsOn: Day | null;
  isApproved: boolean;
}

/** The words for one read on one day; without a version the neutral line is all there is. */
export interface CopyToRead {
  readonly copyId: string | null;
  /** a newer version of the same copy that waits for its approval */
  readonly waitingNumber: number | null;
  readonly versionId: string | null;
  readonly number: number | null;
  readonly text: string | null;
  readonly language: Language;
  /** the same message in the other language; both together are one read */
  readonly secondLanguage: Language | null;
  readonly secondText: string | null;
  readonly isApproved: boolean;
  readonly fallbackText: string | null;
}

/** Which read, on which day, in which game, and the version its placement was given. */
export interface ReadToWord {
  readonly sponsorId: string;
  readonly readKindId: string;
  readonly day: Day;
  readonly gameId: string;
  readonly preferred?: string | null;
}

const NOTHING: CopyToRead = {
  ...{ copyId: null, waitingNumber: null, versionId: null, number: null, text: null, language: 'en', secondLanguage: null, secondText: null, isApproved: false, fallbackText: null },
};

/** The copy of some sponsors, loaded once and asked often. */
export class CopyShelf {
  /**
   * @param rows newest copy first, and of one copy the newest version first
   * @param turns the game's place among the games of its home team, from 0
   */
  constructor(
    private readonly rows: readonly ShelfRow[],
    private readonly turns: ReadonlyMap<string, number> = new Map(),
  ) {}

  /**
   * The words to read: approved, in their days and not stopped, the newest version. A placement's own copy wins; copies
   * that rotate take turns by game. Otherwise the words that wait for approval, marked as such, so that the neutral line is read.
   */
  choose({ sponsorId, readKindId, day, gameId, preferred = null }: ReadToWord): CopyToRead {
    const own = this.rows.filter((row) => row.sponsorId === sponsorId && row.readKindId === readKindId);
    const live = own.filter((row) => !row.isStopped);
    const usable = newestOfEachCopy(live.filter((row) => row.isApproved && (row.startsOn ?? day) <= day && (row.endsOn ?? day) >= day));
    const copyId = own.find((row) => row.versionId === preferred)?.copyId;
    const best = usable.find((row) => row.copyId === copyId && !row.rotates) ?? this.onTurn(usable, gameId) ?? usable[0];
    const newer = live.find((row) => row.copyId === best?.copyId && !row.isApproved && row.number > best.number);
    if (best) return toRead(best, true, newer?.number ?? null);
    const waiting = live.find((row) => !row.isApproved && row.versionId !== null);
    if (waiting) return toRead(waiting, false, null);
    const first = live[0] ?? own[0];
    return { ...NOTHING, copyId: first?.copyId ?? null, fallbackText: first?.fallbackText ?? null };
  }

  /** The approved version in use, for a new placement. */
  versionFor(read: ReadToWord): string | null {
    const chosen = this.choose(read);
    return chosen.isApproved ? chosen.versionId : null;
  }

  /** Oldest first, so that a copy added in midseason takes its turn behind the others. */
  private onTurn(usable: readonly ShelfRow[], gameId: string): ShelfRow | undefined {
    const rotating = usable.filter((row) => row.rotates).toReversed();
    return rotating[(this.turns.get(gameId) ?? 0) % Math.max(1, rotating.length)];
  }
}

function newestOfEachCopy(rows: readonly ShelfRow[]): ShelfRow[] {
  return rows.filter((row, place) => rows.findIndex((other) => other.copyId === row.copyId) === place);
}

function toRead(row: ShelfRow, isApproved: boolean, waitingNumber: number | null): CopyToRead {
  const { copyId, versionId, number, text, language, secondLanguage, secondText, fallbackText } = row;
  return { copyId, waitingNumber, versionId, number, text, language, secondLanguage, secondText, isApproved, fallbackText };
}
