import type { Day } from '../../domain/day.ts';
import type { Level } from '../../domain/season/game.ts';
import { CONTRACT_CHOICES } from '../../domain/sponsorship/rollover/fate.ts';
import type { ContractChoice } from '../../domain/sponsorship/rollover/fate.ts';
import { ChoiceField, CountField, DayField, IdField, ListOf, TextField } from '../../platform/http/fields.ts';

export class ContractChoiceDto {
  @IdField() contractId: string;
  @ChoiceField(CONTRACT_CHOICES) choice: ContractChoice;
}

export class RollOverDto {
  @TextField(1, 120) name: string;
  /** without days: 52 weeks after those of the season before */
  @DayField({ optional: true }) startsOn?: string;
  @DayField({ optional: true }) endsOn?: string;
  /** how much higher prices of rate card and packages are, in hundredths of a percent, to the cent */
  @CountField(0, 10_000, { optional: true }) increaseBasisPoints?: number;
  /** the day on which agreed years are carried on; today without it */
  @DayField({ optional: true }) signedOn?: string;
  /** what is chosen otherwise than proposed */
  @ListOf(() => ContractChoiceDto, { most: 1000 }, { optional: true }) choices?: ContractChoiceDto[];
}

export interface RolledTeam {
  name: string;
  level: Level;
  schoolName: string;
  isOurs: boolean;
  headCoach: string | null;
}

export interface RolledPrice {
  name: string;
  beforeCents: number;
  priceCents: number;
}

/** What becomes of one contract. */
export interface RolledContract {
  contractId: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  yearNumber: number;
  years: number;
  choice: ContractChoice;
  /** what may be chosen, the proposed first */
  choices: readonly ContractChoice[];
  because: string;
  /** why the next year is a draft for now; empty where it is signed at once */
  waits: string[];
  /** what is not taken along, and what to look at */
  notes: string[];
  isSigned: boolean;
  /** null where it is left, and while it is only tried */
  nextContractId: string | null;
  nextNumber: string | null;
  nextYearNumber: number | null;
  startsOn: Day | null;
  endsOn: Day | null;
  priceCents: number;
  nextPriceCents: number | null;
  /** what its lines cost one by one at the new rate card; null where nobody can say yet */
  cardCents: number | null;
}

/** What carries on as it is, because it belongs to the department and not to a season. */
export interface CarriesOn {
  schools: number;
  venues: number;
  scripts: number;
  readKinds: number;
  windowPlaces: number;
  players: number;
  playersWithSayAs: number;
  /** players whose family chose something else than the full name */
  playersKeptQuiet: number;
}

/** An approved copy version that ends before the new season begins. */
export interface EndedCopy {
  copyId: string;
  sponsorName: string;
  title: string;
  endsOn: Day;
}

export interface RollOverView {
  fromSeasonId: string;
  fromSeasonName: string;
  /** null while it is only tried */
  seasonId: string | null;
  name: string;
  startsOn: Day;
  endsOn: Day;
  teams: RolledTeam[];
  rateCard: RolledPrice[];
  packages: RolledPrice[];
  carriesOn: CarriesOn;
  endedCopies: EndedCopy[];
  contracts: RolledContract[];
}
