import type { MentionForPacket, NightForPacket, PacketWindow, PlacementForPacket, WordsForPacket } from './night-for-packet.ts';
import type { Cue, TeamSheet } from './packet.ts';
import type { Moment, Render, Script } from './script.ts';
import { scriptsFor } from './script.ts';
import type { Segment } from './segment.ts';
import { direction, secondsOf, segmentsOf, spoken } from './segment.ts';

export type Variables = Readonly<Record<string, unknown>>;

const MENTION_TIMES = {
  nextWindow: { when: 'Hold it: read it in the next time-out or break', caution: null },
  deadBall: { when: 'At the next dead ball, four seconds or less', caution: null },
  atOnce: {
    when: 'At the basket',
    caution: 'Published announcer guidance (NFHS basketball point of emphasis, 2014-15) says nothing is announced while the clock runs. Your department chose otherwise.',
  },
} as const;

const PRAYER_CAUTION =
  'Prayer over a public school’s loudspeaker: see Santa Fe v. Doe (2000) and Kennedy v. Bremerton (2022), and ask the district’s counsel.';

const EMERGENCY_CAUTION = 'All sponsor reads stop at once, and none is read next to this.';

/** Collects the cues of a night in order and numbers them. */
export class CueBuilder {
  readonly cues: Cue[] = [];
  readonly broken: { title: string; reason: string }[] = [];

  constructor(
    private readonly night: NightForPacket,
    private readonly library: readonly Script[],
    private readonly render: Render,
  ) {}

  private get rate(): number {
    return this.night.settings.wordsPerMinute;
  }

  private add(cue: Partial<Cue> & Pick<Cue, 'cueKey' | 'moment' | 'title' | 'segments'>): void {
    this.cues.push({
      code: '', startsText: null, whoText: null, second: null, gameId: null, window: null, language: 'en', isSponsored: false, placementId: null, commitmentId: null,
      sponsorName: null, sponsorSayAs: null, copyVersion: null, usesFallback: false, lineUp: null, caution: null, ownPage: false, lineUpStartsAt: 0,
      seconds: secondsOf(cue.segments), ...cue, number: this.cues.length + 1,
    });
  }

  /** A script that cannot be filled in becomes a direction and a line of readiness, never a blank in the gym. */
  private filled(title: string, text: string, variables: Variables): Segment[] {
    try {
      return segmentsOf(this.render(text, variables), this.rate);
    } catch (reason) {
      this.broken.push({ title, reason: reason instanceof Error ? reason.message : String(reason) });
      return [direction(`This script could not be filled in (${title}); mend it before the night`)];
    }
  }

  /** Every script of a moment that is on, in the language it is written in. */
  moment(moment: Moment, gameId: string | null, window: PacketWindow | null, variables: Variables, choose: (script: Script) => boolean = () => true): void {
    for (const script of scriptsFor(this.library, moment).filter(choose)) {
      const segments = this.filled(script.title, script.text, variables);
      if (segments.length === 0) continue;
      this.add({
        cueKey: `${gameId === null ? 'night' : `game:${gameId}`}/${script.key}`,
        gameId, moment, window, title: script.title, language: script.language, segments,
        caution: moment === 'prayer' ? PRAYER_CAUTION : null,
      });
    }
  }

  lineUp(sheet: TeamSheet, gameId: string, variables: Variables, starters: readonly Segment[]): void {
    const moment = sheet.side === 'home' ? 'lineUpHome' : 'lineUpVisitors';
    const script = scriptsFor(this.library, moment)[0];
    const opening = script === undefined ? [] : this.filled(script.title, script.text, variables);
    this.add({
      cueKey: `game:${gameId}/${moment}`, gameId, moment, window: 'pregame', title: `Line-up: ${sheet.shortName} ${sheet.nickname}`,
      segments: [...opening, ...starters], lineUp: sheet, lineUpStartsAt: opening.length, ownPage: true,
    });
  }

  private words(words: WordsForPacket): { segments: Segment[]; usesFallback: boolean; text: string | null } {
    const usable = words.isApproved && words.copyText !== null && words.copyText.trim() !== '';
    const text = usable ? words.copyText : words.fallbackText;
    if (text === null || text.trim() === '') {
      return { segments: [direction(`No approved words for ${words.sponsorName}: do not read`)], usesFallback: true, text: null };
    }
    return { segments: segmentsOf(text, this.rate), usesFallback: !usable, text };
  }

  private sponsored(words: WordsForPacket, usesFallback: boolean): Partial<Cue> {
    return {
      isSponsored: true, sponsorName: words.sponsorName, sponsorSayAs: words.sponsorSayAs,
      copyVersion: usesFallback ? null : words.copyVersion, usesFallback, language: words.copyLanguage ?? 'en',
    };
  }

  placement(placement: PlacementForPacket, gameId: string, variables: Variables): void {
    const { segments, usesFallback, text } = this.words(placement);
    const presentation = placement.presents && text !== null ? scriptsFor(this.library, 'sponsorPresentation')[0] : undefined;
    this.add({
      cueKey: placement.cueKey, gameId, moment: presentation ? 'sponsorPresentation' : 'sponsorRead', window: placement.window,
      title: placement.readKind, placementId: placement.placementId,
      segments: presentation
        ? this.filled(presentation.title, presentation.text, { ...variables, sponsor: placement.sponsorName, presents: placement.presents, copy: text })
        : segments,
      ...this.sponsored(placement, usesFallback),
    });
  }

  mention(mention: MentionForPacket, gameId: string, homeNickname: string): void {
    const { segments, usesFallback } = this.words(mention);
    const time = MENTION_TIMES[this.night.settings.bankShotMention];
    const whose = mention.whose === 'ours' ? `by the ${homeNickname}` : 'by either team';
    this.add({
      cueKey: mention.cueKey, gameId, moment: 'mention', window: 'deadBall', commitmentId: mention.commitmentId,
      title: mention.readKind, caution: time.caution,
      segments: [direction(`For every ${mention.occurrence} ${whose}. ${time.when}`), ...segments, ...this.mentionCheck(segments)],
      ...this.sponsored(mention, usesFallback),
    });
  }

  private mentionCheck(segments: readonly Segment[]): Segment[] {
    const isLong = this.night.settings.bankShotMention === 'deadBall' && secondsOf(segments) > 4;
    return isLong ? [direction('Longer than four seconds: hold it for the next break')] : [];
  }

  verse(text: string, gameId: string): void {
    this.add({
      cueKey: `game:${gameId}/anthem-words`, gameId, moment: 'anthem', title: 'The anthem, first verse', ownPage: true,
      segments: [direction('Only if the singer or the recording fails'), spoken(text, this.rate)], seconds: 0,
    });
  }

  emergency(moment: 'injury' | 'weather' | 'evacuation' | 'threat', variables: Variables): void {
    for (const script of scriptsFor(this.library, moment)) {
      this.add({
        cueKey: `night/${script.key}`, moment, title: script.title, language: script.language,
        segments: this.filled(script.title, script.text, variables), caution: EMERGENCY_CAUTION,
      });
    }
  }
}
