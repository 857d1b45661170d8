import type { LinkKind, LinkState } from '../domain/access/link-rights.ts';
import { InstantField, OptionalTextField, SecretField, TextField } from '../platform/http/fields.ts';

export class LinkDto {
  /** for whom, as the list says it */
  @TextField(1, 120) label: string;
  @InstantField({ optional: true }) notBeforeAt?: string;
  @InstantField() expiresAt: string;
}

export class LinkVisitDto {
  @SecretField(20, 200) token: string;
  @OptionalTextField(12) pin?: string | null;
}

export interface LinkView {
  id: string;
  kind: LinkKind;
  subjectId: string;
  label: string | null;
  notBeforeAt: string;
  expiresAt: string;
  revokedAt: string | null;
  madeAt: string | null;
  madeByName: string | null;
  state: LinkState;
  /** an adult's link, which may sign the night off */
  maySignOff: boolean;
  /** whose own way in it is; null for a link that was given out */
  personName: string | null;
}

/** The token is shown this once and kept nowhere. */
export interface NewLinkView extends LinkView {
  token: string;
}

/** What the link opened. */
export interface LinkVisitView {
  kind: LinkKind;
  expiresAt: string;
}
