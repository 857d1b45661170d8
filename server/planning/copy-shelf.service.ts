import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

interface ShelfRow {
  copyId: string;
  sponsorId: string;
  readKindId: string;
  fallbackText: string;
  isStopped: boolean;
  versionId: string | null;
  number: number;
  language: 'en' | 'es';
  text: string;
  startsOn: Day | null;
  endsOn: Day | null;
  isApproved: boolean;
}

/** The words for one read on one day; without a version the neutral line is all there is. */
export interface CopyToRead {
  readonly versionId: string | null;
  readonly number: number | null;
  readonly text: string | null;
  readonly language: 'en' | 'es';
  readonly isApproved: boolean;
  readonly fallbackText: string | null;
}

const NOTHING: CopyToRead = { versionId: null, number: null, text: null, language: 'en', isApproved: false, fallbackText: null };

/** The copy of some sponsors, loaded once and asked often. */
export class CopyShelf {
  constructor(private readonly rows: readonly ShelfRow[]) {}

  /**
   * The words to read: approved, in their days and not stopped, the newest version; of the same copy as
   * `preferred` where that can be. Otherwise the words that wait for approval, marked as such.
   */
  choose(sponsorId: string, readKindId: string, day: Day, preferred: string | null = null): CopyToRead {
    const own = this.rows.filter((row) => row.sponsorId === sponsorId && row.readKindId === readKindId);
    const live = own.filter((row) => !row.isStopped);
    const usable = live.filter((row) => row.isApproved && (row.startsOn ?? day) <= day && (row.endsOn ?? day) >= day);
    const copyId = own.find((row) => row.versionId === preferred)?.copyId;
    const best = usable.find((row) => row.copyId === copyId) ?? usable[0];
    if (best) return toRead(best, true);
    const waiting = live.find((row) => !row.isApproved && row.versionId !== null);
    if (waiting) return toRead(waiting, false);
    return { ...NOTHING, fallbackText: own[0]?.fallbackText ?? null };
  }

  /** The approved version in use on a day, for a new placement. */
  versionFor(sponsorId: string, readKindId: string, day: Day): string | null {
    const chosen = this.choose(sponsorId, readKindId, day);
    return chosen.isApproved ? chosen.versionId : null;
  }
}

function toRead(row: ShelfRow, isApproved: boolean): CopyToRead {
  const { versionId, number, text, language, fallbackText } = row;
  return { versionId, number, text, language, isApproved, fallbackText };
}

@Injectable()
export class CopyShelves {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async of(sponsorIds: readonly string[]): Promise<CopyShelf> {
    if (sponsorIds.length === 0) return new CopyShelf([]);
    return new CopyShelf(
      await this.work.sql<ShelfRow>(
        `select copy.id as "copyId", copy.sponsor_id as "sponsorId", copy.read_kind_id as "readKindId", copy.fallback_text as "fallbackText",
           copy.stopped_at is not null as "isStopped", copy_version.id as "versionId", copy_version.number, copy_version.language, copy_version.text,
           copy_version.starts_on as "startsOn", copy_version.ends_on as "endsOn", copy_version.approved_on is not null as "isApproved"
         from copy left join copy_version on copy_version.department_id = copy.department_id and copy_version.copy_id = copy.id
        where copy.department_id = $1 and copy.sponsor_id = any($2::uuid[])
        order by copy.id desc, copy_version.number desc`,
        [[...new Set(sponsorIds)]],
      ),
    );
  }
}
