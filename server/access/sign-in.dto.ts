import type { Role } from '../domain/access/rights.ts';
import { EmailField, IdField, SecretField } from '../platform/http/fields.ts';

export class SignInDto {
  @EmailField() email: string;
  @SecretField(1, 1000) password: string;
  @IdField({ optional: true }) departmentId?: string;
}

export class ChangePasswordDto {
  @SecretField(1, 1000) current: string;
  @SecretField(1, 1000) next: string;
}

export class ChooseDepartmentDto {
  @IdField() departmentId: string;
}

export interface DepartmentOfMine {
  departmentId: string;
  departmentName: string;
  roles: Role[];
}

/** Who is signed in, for which department, with what roles. */
export interface MeView {
  person: { id: string; name: string; email: string; sayAs: string | null };
  department: { id: string; name: string; zone: string; currency: string; locale: string; settings: Record<string, unknown> };
  roles: Role[];
  memberships: DepartmentOfMine[];
}
