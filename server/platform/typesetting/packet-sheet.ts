import type { PacketHead, Section } from '../../domain/packet/sections.ts';
import { teamMarks } from './team-marks.ts';
import type { TeamColours, TeamMark } from './team-marks.ts';

/** A page of the binder as it was once planned: its label stays while the packet changes around it. */
export interface PlannedPage {
  /** `7`, or `7a` for what ran over from page 7. */
  readonly label: string;
  readonly tab: string;
  /** The version in which this page last changed: "version 2". */
  readonly versionText: string;
  /** The first characters of the digest of what is on the page. */
  readonly digestText: string;
  /** Keys of the blocks on it, in order. */
  readonly keys: readonly string[];
}

/** The first sheet of a change set: what to do with the binder. */
export interface ChangeCover {
  readonly title: string;
  /** "version 2" */
  readonly sinceText: string;
  /** "version 3" */
  readonly versionText: string;
  readonly reasonText: string | null;
  readonly lines: readonly {
    readonly action: 'swap' | 'add' | 'takeOut';
    readonly label: string;
    readonly tab: string;
    /** What changed on it, in words. */
    readonly what: string;
  }[];
}

/** A packet to be set. Nothing of it depends on the clock: the same sheet gives the same bytes. */
export interface PacketSheet {
  readonly head: PacketHead;
  readonly paper: 'letter' | 'a4';
  /** "version 3"; null for a draft, which says so on every page. */
  readonly versionText: string | null;
  readonly sections: readonly Section[];
  /** Null lets the pages fall as they will: for drafts, and to find the pages of a first issue. */
  readonly pages: readonly PlannedPage[] | null;
  /** How many pages the whole packet has, printed as "page 7 of 31"; counted where `pages` is null. */
  readonly pageCount: number | null;
  /** Labels of the pages to print; null for all of them. */
  readonly only: readonly string[] | null;
  readonly cover: ChangeCover | null;
}

interface Coloured {
  readonly colours: { readonly visitors: TeamColours; readonly home: TeamColours };
}

const isColoured = (data: unknown): data is Coloured => typeof data === 'object' && data !== null && 'colours' in data;

/** The sheet with the tints of its teams. */
export function packetTexts(sheet: PacketSheet): Record<string, unknown> {
  const known = new Map<string, { readonly home: TeamMark; readonly visitors: TeamMark }>();
  const marksFor = ({ colours }: Coloured) => {
    const key = JSON.stringify(colours);
    const marks = known.get(key) ?? teamMarks(colours.home, colours.visitors);
    known.set(key, marks);
    return marks;
  };
  return {
    ...sheet,
    sections: sheet.sections.map((section) => ({
      ...section,
      blocks: section.blocks.map((block) => (isColoured(block.data) ? { ...block, data: { ...block.data, marks: marksFor(block.data) } } : block)),
    })),
  };
}
