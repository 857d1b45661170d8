import { ROLES } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import { ChoicesField, EmailField, OptionalTextField, SecretField, TextField } from '../platform/http/fields.ts';

export class NewPersonDto {
  @TextField(1, 120) name: string;
  @EmailField() email: string;
  @OptionalTextField(120) sayAs?: string | null;
  @SecretField(1, 1000) password: string;
  @ChoicesField(ROLES, { least: 1 }) roles: Role[];
}

export class ChangeRolesDto {
  @ChoicesField(ROLES, { least: 1 }) roles: Role[];
}

/** A person as the department sees them; the id is the membership's. */
export interface PersonView {
  id: string;
  personId: string;
  name: string;
  email: string;
  sayAs: string | null;
  roles: Role[];
  version: number;
}
