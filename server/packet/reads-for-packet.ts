import { mentionCueKey, placementCueKey } from '../domain/packet/night-for-packet.ts';
import { presentedIn } from '../domain/packet/presentation.ts';
import type { MentionForPacket, PlacementForPacket, SponsorFacts, WordsForPacket } from '../domain/packet/night-for-packet.ts';
import type { CopyToRead } from '../planning/copy-shelf.ts';
import type { SignedCommitment } from '../planning/signed-commitments.service.ts';
import type { NightRow, PlacementRow } from './night-rows.ts';
import type { NightFacts } from './nights-for-packets.service.ts';
import { happeningWords, packetWindow } from './words-for-packet.ts';

export function placementForPacket(row: PlacementRow, night: NightRow, facts: NightFacts): PlacementForPacket {
  const window = packetWindow(row.windowKey);
  const copy = facts.shelf.choose({ ...row, day: night.heldOn, preferred: row.copyVersionId });
  return {
    ...wordsOf(row, copy),
    facts: factsOf(row.commitmentId, copy, facts),
    cueKey: placementCueKey(row.gameId, row.windowKey, row.place),
    placementId: row.id,
    window,
    windowKey: row.windowKey.replace(/^timeout/, 'timeOut'),
    place: row.place,
    priority: facts.commitments.get(row.commitmentId)?.priority ?? 2,
    presents: presentedIn(window, row.presents),
  };
}

export function mentionForPacket(commitment: SignedCommitment, gameId: string, night: NightRow, facts: NightFacts): MentionForPacket {
  const copy = facts.shelf.choose({ ...commitment, day: night.heldOn, gameId });
  return {
    ...wordsOf(commitment, copy),
    facts: factsOf(commitment.id, copy, facts),
    cueKey: mentionCueKey(gameId, commitment.id),
    commitmentId: commitment.id,
    occurrence: happeningWords(commitment.occurrence ?? 'bankShot'),
    whose: commitment.whose,
    severalCountAsOne: commitment.severalCountAsOne,
  };
}

function factsOf(commitmentId: string, copy: CopyToRead, { commitments }: NightFacts): SponsorFacts | undefined {
  const row = commitments.get(commitmentId);
  if (!row) return undefined;
  const { commitmentId: _, priority: __, ...own } = row;
  return { ...own, copyId: copy.copyId, waitingVersion: copy.waitingNumber };
}

type Read = Pick<PlacementRow, 'sponsorName' | 'sponsorSayAs' | 'readKindName' | 'defaultSeconds'>;

function wordsOf({ sponsorName, sponsorSayAs, readKindName, defaultSeconds }: Read, copy: CopyToRead): Omit<WordsForPacket, 'cueKey'> {
  return {
    sponsorName,
    sponsorSayAs,
    readKind: readKindName,
    copyText: copy.text,
    copyVersion: copy.number,
    copyLanguage: copy.language,
    copySecondLanguage: copy.secondLanguage,
    copySecondText: copy.secondText,
    isApproved: copy.isApproved,
    fallbackText: copy.fallbackText,
    seconds: defaultSeconds,
  };
}
