import type { Language, MentionForPacket, NightForPacket, PacketWindow, PlacementForPacket, WordsForPacket } from './night-for-packet.ts';
import type { Cue, SecondText, TeamSheet } from './packet.ts';
import type { TextAtFault } from './readiness.ts';
import type { Moment, Render, Script } from './script.ts';
import { scriptsFor } from './script.ts';
import type { Segment } from './segment.ts';
import { direction, secondsOf, segmentsOf, spoken } from './segment.ts';
import type { Variables } from './variables-of-night.ts';
import type { Voice } from './voice.ts';
import { inLanguage } from './voice.ts';

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

type Draft = Partial<Cue> & Pick<Cue, 'cueKey' | 'moment' | 'title' | 'segments'>;

/** Where a cue stands: a window of a game; a notice or an emergency stands in none. */
export interface Spot {
  readonly gameId: string | null;
  readonly window: PacketWindow | null;
  readonly windowKey: string | null;
}

export const NOWHERE: Spot = { gameId: null, window: null, windowKey: null };

/** Collects the cues of a night in order and numbers them. */
export class CueBuilder {
  readonly cues: Cue[] = [];
  readonly broken: TextAtFault[] = [];
  readonly empty: TextAtFault[] = [];
  /** By cue key: the script a cue was made from. */
  readonly scriptIds = new Map<string, string>();

  constructor(
    readonly night: NightForPacket,
    readonly library: readonly Script[],
    private readonly render: Render,
    readonly voice: Voice,
  ) {}

  put(cue: Draft): void {
    const second = cue.second ?? null;
    this.cues.push({
      code: '', startsText: null, whoText: null, ...NOWHERE, language: 'en', isSponsored: false, placementId: null, commitmentId: null,
      sponsorName: null, sponsorSayAs: null, copyVersion: null, usesFallback: false, lineUp: null, caution: null, ownPage: false, lineUpStartsAt: 0,
      seconds: secondsOf(cue.segments) + (second?.seconds ?? 0), ...cue, second, number: this.cues.length + 1,
    });
  }

  /** What is said and done, in seconds of the announcer's own rate. */
  said(text: string, language: Language): Segment[] {
    return segmentsOf(text, inLanguage(this.voice, language));
  }

  /** A script that cannot be filled in becomes a direction and a line of readiness, never a blank in the gym. */
  filled({ title, scriptId = undefined }: Pick<Script, 'title' | 'scriptId'>, text: string, language: Language, variables: Variables): Segment[] {
    try {
      const words = this.render(text, variables);
      for (const name of this.holesIn(text, variables, words)) this.empty.push({ title, reason: `{{ ${name} }}`, scriptId: scriptId ?? null });
      return this.said(words, language);
    } catch (reason) {
      this.broken.push({ title, reason: reason instanceof Error ? reason.message : String(reason), scriptId: scriptId ?? null });
      return [direction(`This script could not be filled in (${title}); mend it before the night`)];
    }
  }

  /** Variables that stand for nothing tonight and are said all the same: put "false" in their place, and the words change. */
  private holesIn(text: string, variables: Variables, words: string): string[] {
    const empty = Object.keys(variables).filter((name) => variables[name] === null && new RegExp(`\\b${name}\\b`).test(text));
    return empty.filter((name) => this.render(text, { ...variables, [name]: false }) !== words);
  }

  /** The same message in the script's second language, or null. */
  second(script: Script, variables: Variables): SecondText | null {
    const { secondLanguage, secondText } = script;
    if (!secondLanguage || !secondText) return null;
    const segments = this.filled({ ...script, title: `${script.title}, second language` }, secondText, secondLanguage, variables);
    return segments.length === 0 ? null : { language: secondLanguage, segments, seconds: secondsOf(segments) };
  }

  private keyOf({ scriptId = undefined }: Script, cueKey: string): string {
    if (scriptId !== undefined) this.scriptIds.set(cueKey, scriptId);
    return cueKey;
  }

  /** Every script of a moment that is on, in the language it is written in. */
  moment(moment: Moment, spot: Spot, variables: Variables, choose: (scripts: Script[]) => Script[] = (scripts) => scripts): void {
    for (const script of choose(scriptsFor(this.library, moment))) {
      const segments = this.filled(script, script.text, script.language, variables);
      if (segments.length === 0) continue;
      this.put({
        cueKey: this.keyOf(script, `${spot.gameId === null ? 'night' : `game:${spot.gameId}`}/${script.key}`), ...spot,
        moment, title: script.title, language: script.language, segments, second: this.second(script, variables),
        caution: moment === 'prayer' ? PRAYER_CAUTION : null,
      });
    }
  }

  lineUp(sheet: TeamSheet, spot: Spot, variables: Variables, starters: readonly Segment[]): void {
    const moment = sheet.side === 'home' ? 'lineUpHome' : 'lineUpVisitors';
    const script = scriptsFor(this.library, moment)[0];
    const opening = script === undefined ? [] : this.filled(script, script.text, script.language, variables);
    this.put({
      cueKey: `game:${spot.gameId}/${moment}`, ...spot, moment, title: `Line-up: ${sheet.shortName} ${sheet.nickname}`,
      segments: [...opening, ...starters], second: script === undefined ? null : this.second(script, variables), lineUp: sheet, lineUpStartsAt: opening.length, ownPage: true,
    });
  }

  private words(words: WordsForPacket): { segments: Segment[]; usesFallback: boolean; text: string | null; second: SecondText | null } {
    const usable = words.isApproved && words.copyText !== null && words.copyText.trim() !== '';
    const text = usable ? words.copyText : words.fallbackText;
    if (text === null || text.trim() === '') {
      return { segments: [direction(`No approved words for ${words.sponsorName}: do not read`)], usesFallback: true, text: null, second: null };
    }
    const other = usable && words.copySecondLanguage && words.copySecondText ? this.said(words.copySecondText, words.copySecondLanguage) : [];
    const second = other.length === 0 ? null : { language: words.copySecondLanguage!, segments: other, seconds: secondsOf(other) };
    return { segments: this.said(text, words.copyLanguage ?? 'en'), usesFallback: !usable, text, second };
  }

  private sponsored(words: WordsForPacket, usesFallback: boolean): Partial<Cue> {
    return {
      isSponsored: true, sponsorName: words.sponsorName, sponsorSayAs: words.sponsorSayAs,
      copyVersion: usesFallback ? null : words.copyVersion, usesFallback, language: words.copyLanguage ?? 'en',
    };
  }

  placement(placement: PlacementForPacket, gameId: string, variables: Variables): void {
    const { segments, usesFallback, text, second } = this.words(placement);
    const script = placement.presents && text !== null ? scriptsFor(this.library, 'sponsorPresentation')[0] : undefined;
    const presenting = { ...variables, sponsor: placement.sponsorName, presents: placement.presents, copy: text };
    const copy = usesFallback ? text : (placement.copySecondText ?? text);
    this.put({
      cueKey: placement.cueKey, gameId, moment: script ? 'sponsorPresentation' : 'sponsorRead', window: placement.window, windowKey: placement.windowKey,
      title: placement.readKind, placementId: placement.placementId,
      segments: script ? this.filled(script, script.text, script.language, presenting) : segments,
      second: (script && this.second(script, { ...presenting, copy })) ?? second,
      ...this.sponsored(placement, usesFallback),
    });
  }

  mention(mention: MentionForPacket, gameId: string, homeNickname: string): void {
    const { segments, usesFallback, second } = this.words(mention);
    const time = MENTION_TIMES[this.night.settings.bankShotMention];
    const whose = mention.whose === 'ours' ? `by the ${homeNickname}` : 'by either team';
    this.put({
      cueKey: mention.cueKey, gameId, moment: 'mention', window: 'deadBall', windowKey: 'deadBall', commitmentId: mention.commitmentId,
      title: mention.readKind, caution: time.caution, second,
      segments: [direction(`For every ${mention.occurrence} ${whose}. ${time.when}`), ...segments, ...this.mentionCheck(secondsOf(segments) + (second?.seconds ?? 0))],
      ...this.sponsored(mention, usesFallback),
    });
  }

  private mentionCheck(seconds: number): Segment[] {
    const isLong = this.night.settings.bankShotMention === 'deadBall' && seconds > 4;
    return isLong ? [direction('Longer than four seconds: hold it for the next break')] : [];
  }

  verse(text: string, spot: Spot): void {
    this.put({
      cueKey: `game:${spot.gameId}/anthem-words`, ...spot, window: null, windowKey: null, moment: 'anthem', title: 'The anthem, first verse', ownPage: true,
      segments: [direction('Only if the singer or the recording fails'), spoken(text, this.voice)], seconds: 0,
    });
  }

  emergency(moment: Moment, variables: Variables): void {
    for (const script of scriptsFor(this.library, moment)) {
      this.put({
        cueKey: this.keyOf(script, `night/${script.key}`), moment, title: script.title, language: script.language,
        segments: this.filled(script, script.text, script.language, variables), second: this.second(script, variables), caution: EMERGENCY_CAUTION,
      });
    }
  }
}
