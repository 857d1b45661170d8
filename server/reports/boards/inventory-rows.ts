import { offerHoldsOn } from '../../sponsorship/offers/offer-view.sql.ts';

/** `$2` is what each statement asks for. */
export const INVENTORY_KINDS = `select id as "readKindId", name as "readKindName", place_group as "placeGroup", windows from read_kind
  where department_id = $1 and timing = 'scheduled' order by name collate "und-x-icu", id`;

/** Reads of games by window: counted, placed where the night is not signed off, and held for an open offer. */
export const INVENTORY_READS = `select counted_read.game_id as "gameId", log_entry.window_key as "windowKey", coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id) as "readKindId", 'given' as what, count(*)::int as reads
    from counted_read
      join log_entry on log_entry.department_id = $1 and log_entry.id = counted_read.entry_id and log_entry.kind = 'read' and log_entry.window_key is not null
      join commitment on commitment.department_id = $1 and commitment.id = counted_read.commitment_id
      left join placement on placement.department_id = $1 and placement.id = log_entry.placement_id
      left join makegood on makegood.department_id = $1 and makegood.id = placement.makegood_id
    where counted_read.department_id = $1 and counted_read.game_id = any($2::uuid[]) group by 1, 2, 3
  union all
  select placement.game_id, placement.window_key, coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id), 'sold', count(*)::int
    from placement
      join commitment on commitment.department_id = $1 and commitment.id = placement.commitment_id
      left join makegood on makegood.department_id = $1 and makegood.id = placement.makegood_id
    where placement.department_id = $1 and placement.game_id = any($2::uuid[])
      and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id) group by 1, 2, 3
  union all
  select held_place.game_id, held_place.window_key, offer_line.read_kind_id, 'held', count(*)::int
    from held_place
      join offer_line on offer_line.department_id = $1 and offer_line.id = held_place.offer_line_id
      join offer on offer.department_id = $1 and offer.id = offer_line.offer_id
    where held_place.department_id = $1 and held_place.game_id = any($2::uuid[]) and offer_line.read_kind_id is not null
      and ${offerHoldsOn('$3')} group by 1, 2, 3`;

/** What signed terms of the season still owe of scheduled kinds, less what has its place in a night to come. */
export const OWED_OF_KINDS = `with line as materialized (
    select commitment.id, commitment.contract_id, read_kind.id as kind_id, read_kind.name from commitment
      join term on term.department_id = $1 and term.id = commitment.term_id
      join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id and read_kind.timing = 'scheduled'
    where commitment.department_id = $1 and term.season_id = $2 and term.state = 'signed'),
  owed as (
    select commitment_id, sum(case when to_account = 'owed' then amount else -amount end) as reads from posting
    where department_id = $1 and contract_id = any(array(select contract_id from line)) and journal = 'reads' and 'owed' in (from_account, to_account) group by commitment_id),
  placed as (
    select commitment_id, count(*) as reads from placement
    where department_id = $1 and commitment_id = any(array(select id from line)) and makegood_id is null
      and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id) group by commitment_id)
  select line.kind_id as "readKindId", line.name as "readKindName", sum(greatest(0, coalesce(owed.reads, 0) - coalesce(placed.reads, 0)))::int as reads
  from line left join owed on owed.commitment_id = line.id left join placed on placed.commitment_id = line.id
  group by line.kind_id, line.name order by line.name collate "und-x-icu", line.kind_id`;
