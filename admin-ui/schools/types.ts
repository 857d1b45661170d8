export interface School {
  id: string;
  version: number;
  name: string;
  shortName: string;
  nickname: string;
  sayAs: string | null;
  isOurs: boolean;
  firstColour: string;
  secondColour: string;
  accountCode: string | null;
  outsideId: string | null;
}
