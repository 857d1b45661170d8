export interface CopyVersion {
  id: string;
  number: number;
  language: 'en' | 'es';
  text: string;
  startsOn: string | null;
  endsOn: string | null;
  approvedOn: string | null;
  approvedByName: string | null;
  approvedHow: 'link' | 'recordedByDirector' | null;
}

export interface Copy {
  id: string;
  version: number;
  sponsorId: string;
  sponsorName: string;
  readKindId: string;
  readKindName: string;
  title: string;
  fallbackText: string;
  stoppedAt: string | null;
  state: 'approved' | 'waiting' | 'stopped';
  versions: CopyVersion[];
}
