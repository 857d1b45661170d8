import { createHash } from 'node:crypto';
import type { NightForPacket } from '../domain/packet/night-for-packet.ts';
import type { Packet } from '../domain/packet/packet.ts';
import type { BlockToPlace, Page } from '../domain/packet/page-plan.ts';
import { headOf, sectionsOf } from '../domain/packet/sections.ts';
import type { Block } from '../domain/packet/sections.ts';
import type { PacketSheet } from '../platform/typesetting/packet-sheet.ts';

/** Everything that is printed of a packet, apart from which page it stands on. */
export type PacketContent = Pick<PacketSheet, 'head' | 'paper' | 'sections'>;

export function contentOf(packet: Packet): PacketContent {
  return { head: headOf(packet), paper: packet.paper, sections: sectionsOf(packet) };
}

export function blocksOf(content: PacketContent): Block[] {
  return content.sections.flatMap((section) => section.blocks);
}

export function blocksToPlace(content: PacketContent): BlockToPlace[] {
  return content.sections.flatMap(({ tab, blocks }) => blocks.map(({ key, startsPage }) => ({ key, tab, startsPage })));
}

/** The same data in the same words, whatever order its fields are kept in. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).toSorted(([one], [other]) => (one < other ? -1 : 1)))
      : part);
}

const digest = (value: unknown): string => createHash('sha256').update(canonical(value)).digest('hex');

export const contentDigest = (content: PacketContent): string => digest(content);

/** The digest of a page: its blocks, and what the running head and the tab at its edge say. */
export function pageDigest(content: PacketContent): (page: Page, isFirstOfTab: boolean) => string {
  const blocks = new Map(blocksOf(content).map((block) => [block.key, block]));
  const tabs = content.sections.map((section) => section.tab);
  return ({ label, tab, keys }, isFirstOfTab) =>
    digest({
      head: content.head, paper: content.paper, label, tab, stack: [tabs.indexOf(tab), Math.max(tabs.length, 10)],
      title: isFirstOfTab ? content.sections.find((section) => section.tab === tab)?.title : null, blocks: keys.map((key) => blocks.get(key)),
    });
}

/** The students whose names the packet of a night may use: those whose families let them be named. */
export function namedIn(night: NightForPacket): string[] {
  const players = night.games.flatMap((game) => [...game.visitors.roster, ...game.home.roster]);
  const honoured = (night.honours ?? []).flatMap((list) => list.students);
  return [...new Set([...players, ...honoured].filter((student) => student.announce === 'name').map((student) => student.playerId))].sort();
}
