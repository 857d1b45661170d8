export interface Category {
  id: string;
  version: number;
  name: string;
  isBlocked: boolean;
  isFood: boolean;
}
