import type { LinkView } from '../../access/link.dto.ts';
import { FlagField, IdField, TextField } from '../../platform/http/fields.ts';

export class OpenTableDto {
  @IdField() nightId: string;
}

export class TableQuery {
  /** where this browser holds the links of several nights; the one opened last where it is left out */
  @IdField({ optional: true }) nightId?: string;
}

export class TableLinkDto {
  /** for whom, as the log says it */
  @TextField(1, 80) label: string;
  /** an adult may sign the night off; a student spotter may not */
  @FlagField() maySignOff: boolean;
}

/** Who is let in to a night's table. */
export interface TableView {
  nightId: string;
  /** the person, or for whom the link was given out */
  workerName: string;
  maySignOff: boolean;
  endsAt: string;
  /** the own way of somebody who had signed in, or a link that was given out */
  kind: 'own' | 'givenOut';
}

/** Address and PIN are told this once and kept nowhere. */
export interface NewTableLinkView extends LinkView {
  /** whole where the server knows by which name it is reached; else from the slash on */
  address: string;
  pin: string;
}
