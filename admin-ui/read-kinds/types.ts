export interface ReadKind {
  id: string;
  version: number;
  name: string;
  timing: 'scheduled' | 'onOccurrence';
  windows: string[];
  defaultSeconds: number;
  sponsorsPerGame: number;
  occurrence: string | null;
}
