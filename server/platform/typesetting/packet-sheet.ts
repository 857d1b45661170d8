/** What is printed around a packet: the packet itself is set as it is. */
export interface PacketSheet<P> {
  readonly packet: P;
  /** 1, 2, 3 …: the issue of this night's packet; null for a draft, which says so on every page. */
  readonly issueNumber: number | null;
  /** In words, local time: "December 4, 2026, 3:12 PM". */
  readonly printedAtText: string;
  /** The first characters of the content's digest, so that two prints can be compared. */
  readonly digestText: string | null;
}
