/** `$2` commitments. Every read and mention in the log, with what the ledger counts of it. Whose account it was written by: never whose link. */
export const LOGGED_READS = `select entry.id as "entryId", entry.night_id as "nightId", entry.game_id as "gameId", entry.commitment_id as "commitmentId", entry.kind, entry.outcome,
    entry.reason, entry.cue_key as "cueKey", coalesce(entry.occurrence, 0) as occurrence, entry.happening_entry_id as "happeningEntryId",
    entry.placement_id as "placementId", entry.window_key as "windowKey", entry.occurred_at as at, copy.title as "copyTitle", copy_version.number as "copyVersionNumber",
    later.id is not null as "isTakenBack", person.name as "byName",
    array(select counted_read.occurrence from counted_read where counted_read.department_id = $1 and counted_read.entry_id = entry.id order by counted_read.occurrence)::int[] as counted
  from log_entry as entry
    left join log_entry as later on later.department_id = $1 and later.takes_back_entry_id = entry.id
    left join copy_version on copy_version.department_id = $1 and copy_version.id = entry.copy_version_id
    left join copy on copy.department_id = $1 and copy.id = copy_version.copy_id
    left join link on link.department_id = $1 and link.id = entry.logged_by_link_id
    left join person on person.id = coalesce(entry.logged_by_person_id, link.person_id)
  where entry.department_id = $1 and entry.commitment_id = any($2::uuid[]) and entry.kind in ('read', 'mention')
  order by entry.night_id, entry.number`;

/** `$2` commitments. What was agreed for missed reads, and the days of those. */
export const MAKEGOODS = `select makegood.id, makegood.commitment_id as "commitmentId", makegood.missed_reads as missed, makegood.replacement_reads as replacements,
    read_kind.name as "readKindName", game.played_on as "missedGameOn",
    array(select missed_read.missed_on from missed_read
        join makegood_proposal on makegood_proposal.department_id = $1 and makegood_proposal.id = missed_read.proposal_id
      where missed_read.department_id = $1 and makegood_proposal.makegood_id = makegood.id order by missed_read.place)::text[] as "missedOn"
  from makegood
    join read_kind on read_kind.department_id = makegood.department_id and read_kind.id = makegood.replacement_read_kind_id
    left join game on game.department_id = makegood.department_id and game.id = makegood.missed_game_id
  where makegood.department_id = $1 and makegood.commitment_id = any($2::uuid[])`;

/** `$2` commitments. */
export const DISPUTES = `select id, entry_id as "entryId", occurrence from read_dispute
  where department_id = $1 and commitment_id = any($2::uuid[]) and entry_id is not null`;

/** `$2` nights. How many came, where anybody said: the last that was recorded, else what the sign-off says. */
export const NIGHTS = `select night.id, night.held_on as "heldOn", sign_off.id is not null as "isSignedOff",
    case when recorded.id is not null then recorded.attendance else sign_off.attendance end as attendance,
    case when recorded.attendance is not null then recorded.how when recorded.id is null and sign_off.attendance is not null then 'signOff' end as "attendanceHow"
  from night
    left join sign_off on sign_off.department_id = $1 and sign_off.night_id = night.id
    left join lateral (select night_attendance.id, night_attendance.attendance, night_attendance.how from night_attendance
      where night_attendance.department_id = $1 and night_attendance.night_id = night.id order by night_attendance.recorded_at desc, night_attendance.id desc limit 1) as recorded on true
  where night.department_id = $1 and night.id = any($2::uuid[]) order by night.held_on, night.id`;

/** `$2` nights. */
export const GAMES_OF_NIGHTS = `select night_id as "nightId", game_id as "gameId" from game_night
  where department_id = $1 and night_id = any($2::uuid[]) order by night_id, place, game_id`;
