/** What somebody in the building may ask the table to read. The last three never come from the public form: their wording is fixed. */
export const REQUEST_KINDS = ['vehicle', 'fundraiser', 'music', 'other', 'lostChild', 'foundItem', 'medical'] as const;
export type RequestKind = (typeof REQUEST_KINDS)[number];

/** What the public form of a night may ask. */
export const PUBLIC_REQUEST_KINDS = ['vehicle', 'fundraiser', 'music', 'other'] as const satisfies readonly RequestKind[];
export type PublicRequestKind = (typeof PUBLIC_REQUEST_KINDS)[number];

/** Every request waits first and ends as read, declined or expired. */
export const REQUEST_STATES = ['waiting', 'approved', 'read', 'declined', 'expired'] as const;
export type RequestState = (typeof REQUEST_STATES)[number];

/** What becomes of a request: an entry's `detail.answer` says it. */
export type RequestAnswerKind = Exclude<RequestState, 'waiting'>;

/** Asked at the table, by the public form of the night, or by the office. */
export type RequestSource = 'table' | 'public' | 'office';

/** The filled form: a field's key and its plain text. */
export type RequestFields = Readonly<Record<string, string>>;

/** One answer to a request. Answers are added, or taken back with the entry that gave them; none is ever edited. */
export interface RequestAnswer {
  readonly answer: RequestAnswerKind;
  /** why it was declined */
  readonly reason: string | null;
  /** who allowed that a person is named */
  readonly nameAllowedBy: string | null;
  /** the words of the song were read from end to end */
  readonly wordsChecked: boolean;
  /** the entry of the night's log that gave it; null for an answer from the office */
  readonly entryId: string | null;
  /** by the clock of whoever answered; only shown */
  readonly answeredAt: string;
  readonly answeredByName: string | null;
}

/** A request that the server keeps: it came by the public form, or the office wrote it down. */
export interface KeptRequest {
  readonly id: string;
  readonly source: Exclude<RequestSource, 'table'>;
  readonly kind: RequestKind;
  readonly fields: RequestFields;
  readonly askedAt: string;
  readonly answers: readonly RequestAnswer[];
}

/** A request as the table and the office see it. */
export interface NightRequest {
  readonly id: string;
  readonly source: RequestSource;
  readonly kind: RequestKind;
  readonly fields: RequestFields;
  readonly askedAt: string;
  readonly state: RequestState;
  readonly answers: readonly RequestAnswer[];
  /** it may name a person, so the director has to allow it before it is approved */
  readonly namesPerson: boolean;
}
