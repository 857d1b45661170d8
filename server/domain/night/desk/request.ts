/** What somebody in the building may ask the table to read. The last three never come from the public form: their wording is fixed. */
export const REQUEST_KINDS = ['vehicle', 'fundraiser', 'music', 'other', 'lostChild', 'foundItem', 'medical'] as const;
export type RequestKind = (typeof REQUEST_KINDS)[number];

/** Every request waits first and ends as read, declined or expired. */
export const REQUEST_STATES = ['waiting', 'approved', 'read', 'declined', 'expired'] as const;
export type RequestState = (typeof REQUEST_STATES)[number];
