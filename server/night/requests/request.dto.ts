import { REQUEST_FORMS } from '../../domain/night/desk/requests/request-form.ts';
import { PUBLIC_REQUEST_KINDS, REQUEST_KINDS } from '../../domain/night/desk/requests/request.ts';
import type { NightRequest, PublicRequestKind, RequestKind } from '../../domain/night/desk/requests/request.ts';
import { ChoiceField, FlagField, IdField, OptionalTextField, RecordField, TextField } from '../../platform/http/fields.ts';

const longest = (key: string): number => Math.max(...Object.values(REQUEST_FORMS).flat().filter((field) => field.key === key).map((field) => field.mostCharacters));

/** Every field that any kind asks for; which of them a kind needs is the rule's to say. */
export class RequestFieldsDto {
  @OptionalTextField(longest('car')) car?: string | null;
  @OptionalTextField(longest('where')) where?: string | null;
  /** with its spaces and hyphens */
  @OptionalTextField(20) plate?: string | null;
  @OptionalTextField(longest('wrong')) wrong?: string | null;
  @OptionalTextField(longest('group')) group?: string | null;
  @OptionalTextField(longest('what')) what?: string | null;
  @OptionalTextField(longest('day')) day?: string | null;
  @OptionalTextField(longest('purpose')) purpose?: string | null;
  @OptionalTextField(longest('title')) title?: string | null;
  @OptionalTextField(longest('artist')) artist?: string | null;
  @OptionalTextField(longest('text')) text?: string | null;
  @OptionalTextField(longest('thing')) thing?: string | null;
  @OptionalTextField(longest('askAt')) askAt?: string | null;
}

export class RequestDto {
  @ChoiceField(REQUEST_KINDS) kind: RequestKind;
  @RecordField(() => RequestFieldsDto) fields: RequestFieldsDto;
}

export class AskDto {
  /** made by the asker's phone, so that a request sent twice is one */
  @IdField() id: string;
  @ChoiceField(PUBLIC_REQUEST_KINDS) kind: PublicRequestKind;
  @RecordField(() => RequestFieldsDto) fields: RequestFieldsDto;
  /** nobody sees this field, so nobody fills it in */
  @OptionalTextField(200) website?: string | null;
}

export class ApproveRequestDto {
  /** who allowed that a person is named, where the director does not approve it in person */
  @OptionalTextField(120) nameAllowedBy?: string | null;
  @FlagField({ optional: true }) wordsChecked?: boolean;
}

export class DeclineRequestDto {
  @TextField(1, 200) reason: string;
}

export type NightRequestView = NightRequest;

/** What somebody in the building sees of a night's form. */
export interface AskFormView {
  title: string;
  departmentName: string;
  kinds: readonly PublicRequestKind[];
  isOpen: boolean;
}

export interface AskedView {
  state: 'waiting';
}

/** What the director sees of it. */
export interface RequestFormView {
  isOpen: boolean;
  /** a code was printed that opens the form whenever it is open */
  hasCode: boolean;
  endsAt: string;
}

/** The address is shown this once and kept nowhere; null where the code that is printed stays good. */
export interface OpenedRequestFormView extends RequestFormView {
  address: string | null;
}
