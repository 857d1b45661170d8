export interface Person {
  id: string;
  version: number;
  personId?: string;
  name: string;
  email: string;
  sayAs: string | null;
  roles: string[];
}
