/** The contract with its last term, which stands for it. */
export const CONTRACTS = `select contract.id, contract.number, contract.title, contract.sponsor_id as "sponsorId", sponsor.name as "sponsorName", term.id as "termId",
    term.season_id as "seasonId", season.name as "seasonName", term.starts_on as "startsOn", term.ends_on as "endsOn", term.state
  from contract
    join term on term.department_id = contract.department_id and term.contract_id = contract.id
      and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
    join season on season.department_id = term.department_id and season.id = term.season_id
    join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  where contract.department_id = $1 and contract.id = any($2::uuid[])`;

export const DELIVERIES = `select delivery.benefit_id as "benefitId", delivery.delivered_on as "deliveredOn", delivery.quantity, delivery.proof,
    exists (select from benefit_delivery as later where later.department_id = $1 and later.takes_back_delivery_id = delivery.id) as "isTakenBack"
  from benefit_delivery as delivery join benefit on benefit.department_id = $1 and benefit.id = delivery.benefit_id
  where delivery.department_id = $1 and benefit.contract_id = any($2::uuid[]) and delivery.takes_back_delivery_id is null
  order by delivery.delivered_on, delivery.id`;

const SIGNED_OFF = (nightId: string) => `exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = ${nightId})`;

/** Placements about which no entry stands in the log, by its id or by its cue. @param nights which of them, as SQL on the id of a night */
const placedAndNotLogged = (nights: (nightId: string) => string): string => `with about as materialized (
    select entry.placement_id, entry.cue_key from log_entry as entry
    where entry.department_id = $1 and entry.commitment_id = any($2::uuid[]) and entry.kind = 'read' and ${nights('entry.night_id')}
      and not exists (select from log_entry as later where later.department_id = $1 and later.takes_back_entry_id = entry.id))
  select placement.id, placement.commitment_id as "commitmentId", placement.makegood_id as "makegoodId", placement.game_id as "gameId", placement.night_id as "nightId",
    placement.window_key as "windowKey"
  from placement join game on game.department_id = placement.department_id and game.id = placement.game_id
    join night on night.department_id = placement.department_id and night.id = placement.night_id
    join commitment on commitment.department_id = placement.department_id and commitment.id = placement.commitment_id
    join term on term.department_id = commitment.department_id and term.id = commitment.term_id
  where placement.department_id = $1 and placement.commitment_id = any($2::uuid[]) and game.status not in ('cancelled', 'postponed')
    and (term.ended_on is null or term.ended_on > night.held_on) and ${nights('placement.night_id')}
    and placement.id not in (select about.placement_id from about where about.placement_id is not null)
    and 'game:' || placement.game_id || '/' || placement.window_key || '/' || placement.place not in (select about.cue_key from about where about.cue_key is not null)
  order by placement.id`;

/** `$2` commitments. What is planned for nights that nobody has signed off, and not logged yet. */
export const PLANNED = placedAndNotLogged((nightId) => `not ${SIGNED_OFF(nightId)}`);

/** `$2` commitments. What was planned on nights signed off, and of which the log says nothing. */
export const UNLOGGED = placedAndNotLogged(SIGNED_OFF);

/** `$2` commitments. Reads counted in each game whose night is signed off, and nothing where there were none. */
export const READ_IN_GAMES = `select counted_read.commitment_id as "commitmentId", counted_read.game_id as "gameId", count(*) as reads
  from counted_read where counted_read.department_id = $1 and counted_read.commitment_id = any($2::uuid[]) group by counted_read.commitment_id, counted_read.game_id`;

/** `$2` games. Those of which every night is signed off. */
export const GAMES_SIGNED_OFF = `select game_night.game_id as id from game_night
    left join sign_off on sign_off.department_id = $1 and sign_off.night_id = game_night.night_id
  where game_night.department_id = $1 and game_night.game_id = any($2::uuid[]) group by game_night.game_id having bool_and(sign_off.id is not null)`;

/** `$2` games. What a game is called, and against whom it is. */
export const GAMES = `select game.id, game.level, game.played_on as "playedOn", game.status,
    coalesce(string_agg(school.nickname, ', ' order by participant.place) filter (where not participant.is_home), 'Visitors')
      || ' at ' || coalesce(min(school.nickname) filter (where participant.is_home), 'home') as label,
    string_agg(coalesce(school.short_name, school.name), ', ' order by participant.place) filter (where not school.is_ours) as "opponentName"
  from game left join game_participant as participant on participant.department_id = $1 and participant.game_id = game.id
    left join team on team.department_id = $1 and team.id = participant.team_id
    left join school on school.department_id = $1 and school.id = team.school_id
  where game.department_id = $1 and game.id = any($2::uuid[]) group by game.department_id, game.id order by game.played_on, game.starts_at nulls last, game.id`;

/** `$2` seasons. What was planned in each window on nights signed off, whoever's, and how much of it counts as given. */
export const WINDOW_RECORDS = `select game.season_id as "seasonId", placement.window_key as "windowKey", count(*) as planned, count(counted_read.id) as given
  from placement
    join game on game.department_id = placement.department_id and game.id = placement.game_id
    join sign_off on sign_off.department_id = placement.department_id and sign_off.night_id = placement.night_id
    left join counted_read on counted_read.department_id = $1 and counted_read.night_id = placement.night_id and counted_read.game_id = placement.game_id
      and counted_read.occurrence = 0 and counted_read.cue_key = 'game:' || placement.game_id || '/' || placement.window_key || '/' || placement.place
  where placement.department_id = $1 and game.season_id = any($2::uuid[]) and game.status not in ('cancelled', 'postponed')
  group by game.season_id, placement.window_key`;
