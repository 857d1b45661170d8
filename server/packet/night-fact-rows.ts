import type { Announce, SponsorFacts } from '../domain/packet/night-for-packet.ts';

/** What the office knows beside the calendar; `$2` is the list of ids each statement asks for. */

export interface CommitmentFactsRow extends Omit<SponsorFacts, 'copyId' | 'waitingVersion'> {
  commitmentId: string;
  priority: number;
}

/** Of some commitments: whose they are, and what speaks against reading them. */
export const COMMITMENT_FACTS = `select commitment.id as "commitmentId", commitment.priority, contract.id as "contractId",
    case when contract.category_exception is not null then coalesce(contract.category_exception_approved_by, 'the director') end as "exceptionApprovedBy",
    term.state <> 'draft' as "isSigned", sponsor.id as "sponsorId", sponsor_category.id as "categoryId", sponsor_category.name as "categoryName",
    sponsor_category.is_blocked as "isBlocked", sponsor_category.is_food as "isFood", read_kind.id as "readKindId", read_kind.sponsors_per_game as "sponsorsPerGame"
  from commitment join term on term.department_id = $1 and term.id = commitment.term_id
  join contract on contract.department_id = $1 and contract.id = commitment.contract_id
  join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  join sponsor_category on sponsor_category.department_id = $1 and sponsor_category.id = sponsor.category_id
  join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id
  where commitment.department_id = $1 and commitment.id = any($2::uuid[])`;

export interface HonouredRow {
  nightId: string;
  honoursListId: string;
  title: string;
  kind: 'seniors' | 'honours';
  window: 'pregame' | 'halftime' | 'postgame';
  secondsEach: number;
  openingText: string | null;
  /** null for a list nobody stands on yet */
  playerId: string | null;
  name: string;
  sayAs: string | null;
  announce: Announce;
  escorts: string | null;
  line: string | null;
}

/** One row a student, in the order they are read; an erased name is announced as nobody's. */
export const HONOURS = `select honours_list.night_id as "nightId", honours_list.id as "honoursListId", honours_list.title, honours_list.kind,
    honours_list.window_kind as window, honours_list.seconds_each as "secondsEach", honours_list.opening_text as "openingText", player.id as "playerId", player.name,
    player.say_as as "sayAs", case when player.erased_at is null then player.announce when player.announce = 'name' then 'aMember' else player.announce end as announce,
    honoured_student.escorts, honoured_student.line
  from honours_list left join honoured_student on honoured_student.department_id = $1 and honoured_student.honours_list_id = honours_list.id
  left join player on player.department_id = $1 and player.id = honoured_student.player_id
  where honours_list.department_id = $1 and honours_list.night_id = any($2::uuid[]) order by honours_list.title, honours_list.id, honoured_student.place`;

export interface IssuedRow {
  nightId: string;
  number: number;
  /** games whose day, hour or place changed since */
  movedGameIds: string[];
}

/** The latest issue of nights that are not signed off, and what of the calendar changed after it. */
export const ISSUED = `select latest.night_id as "nightId", latest.number, array(
    select game_night.game_id from game_night where game_night.department_id = $1 and game_night.night_id = latest.night_id and exists (
      select 1 from audit_row where audit_row.department_id = $1 and audit_row.recorded_at > latest.recorded_at and (
        (audit_row.table_name = 'game' and audit_row.row_id = game_night.game_id and audit_row.fields && array['starts_at', 'played_on', 'starts_after_game_id', 'starts_after_minutes'])
        or (audit_row.table_name = 'night' and audit_row.row_id = latest.night_id and audit_row.fields && array['held_on', 'venue_id', 'floor_id']))))::uuid[] as "movedGameIds"
  from (select distinct on (night_id) night_id, number, recorded_at from packet_issue where department_id = $1 and night_id = any($2::uuid[]) order by night_id, number desc) as latest
  where not exists (select 1 from sign_off where sign_off.department_id = $1 and sign_off.night_id = latest.night_id)`;
