import { v7, validate } from 'uuid';

/** A new id, UUID version 7 (RFC 9562): sorts by the time it was made, and is never used as a secret. */
export function newId(): string {
  return v7();
}

export function isId(text: unknown): text is string {
  return typeof text === 'string' && validate(text);
}
