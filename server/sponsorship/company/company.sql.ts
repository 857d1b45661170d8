import { offerHoldsOn } from '../offers/offer-view.sql.ts';

/** Columns of an exclusive right; `exclusivity`, `category` and `school` stand in the from. */
export const RIGHT = `exclusivity.id, exclusivity.category_id as "categoryId", category.name as "categoryName", exclusivity.reach, exclusivity.school_id as "schoolId",
    school.short_name as "schoolName", exclusivity.starts_on as "startsOn", exclusivity.ends_on as "endsOn", exclusivity.game_ids as "gameIds", exclusivity.window_kinds as "windowKinds"`;

const RIGHT_FROM = `from exclusivity
    join sponsor_category as category on category.department_id = exclusivity.department_id and category.id = exclusivity.category_id
    left join school on school.department_id = exclusivity.department_id and school.id = exclusivity.school_id`;

/** Rights of deals: `$2` contracts, `$3` offers. */
export const RIGHTS_OF_DEALS = `select ${RIGHT}, coalesce(exclusivity.contract_id, exclusivity.offer_id) as "dealId" ${RIGHT_FROM}
  where exclusivity.department_id = $1 and (exclusivity.contract_id = any($2::uuid[]) or exclusivity.offer_id = any($3::uuid[]))
  order by exclusivity.starts_on, exclusivity.id`;

/** Rights that stand: of signed contracts, and of open offers that hold on the day `$2`. */
export const STANDING_RIGHTS = `select ${RIGHT}, coalesce(exclusivity.contract_id, exclusivity.offer_id) as "dealId", sponsor.id as "sponsorId", sponsor.name as "sponsorName",
    case when contract.id is not null then 'contract ' || coalesce(contract.number, contract.title) else 'offer ' || coalesce(offer.number, offer.title) end as "dealName" ${RIGHT_FROM}
    left join contract on contract.department_id = exclusivity.department_id and contract.id = exclusivity.contract_id
    left join offer on offer.department_id = exclusivity.department_id and offer.id = exclusivity.offer_id
    join sponsor on sponsor.department_id = exclusivity.department_id and sponsor.id = coalesce(contract.sponsor_id, offer.sponsor_id)
  where exclusivity.department_id = $1
    and (exists (select from term where term.department_id = $1 and term.contract_id = exclusivity.contract_id and term.state = 'signed')
      or ${offerHoldsOn('$2')})`;

export const RESERVED = `select reserved.id, reserved.category_id as "categoryId", category.name as "categoryName", reserved.held_by as "heldBy",
    reserved.school_id as "schoolId", school.short_name as "schoolName", reserved.starts_on as "startsOn", reserved.ends_on as "endsOn", reserved.note, reserved.version
  from reserved_category as reserved
    join sponsor_category as category on category.department_id = reserved.department_id and category.id = reserved.category_id
    left join school on school.department_id = reserved.department_id and school.id = reserved.school_id
  where reserved.department_id = $1`;

/** The schools whose teams a line names; null where one line names no team, or there is none: it is read everywhere. */
const schoolsOf = (lines: string): string => `case when coalesce((select bool_or(cardinality(line.team_ids) = 0) from ${lines}), true) then null
    else array(select distinct team.school_id from ${lines} join team on team.department_id = $1 and team.id = any(line.team_ids)
      join school as home on home.department_id = $1 and home.id = team.school_id and home.is_ours)::uuid[] end as "schoolIds"`;
const pinnedOf = (lines: string): string => `array(select distinct pinned.id from ${lines}, unnest(line.pinned_game_ids) as pinned(id))::uuid[] as "pinnedGameIds"`;

const linesOfContract = (of: string): string => `(select commitment.team_ids, commitment.pinned_game_ids from commitment
      where commitment.department_id = $1 and commitment.contract_id = ${of}) as line`;
const linesOfOffer = (of: string): string => `(select offer_line.team_ids, offer_line.pinned_game_ids from offer_line
      where offer_line.department_id = $1 and offer_line.offer_id = ${of} and offer_line.read_kind_id is not null) as line`;

const SPONSOR_THERE = `sponsor.id as "sponsorId", sponsor.name as "sponsorName", sponsor.category_id as "categoryId"`;

/** Signed contracts of sponsors of the categories `$2`, and offers to such that hold on the day `$3`. */
export const DEALS_THERE = `select contract.id as "dealId", false as "isOffered", ${SPONSOR_THERE}, 'contract ' || coalesce(contract.number, contract.title) as "dealName",
    term.starts_on as "startsOn", term.ends_on as "endsOn", ${schoolsOf(linesOfContract('contract.id'))}, ${pinnedOf(linesOfContract('contract.id'))}
  from term
    join contract on contract.department_id = term.department_id and contract.id = term.contract_id
    join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  where term.department_id = $1 and term.state = 'signed' and sponsor.category_id = any($2::uuid[])
  union all
  select offer.id, true, ${SPONSOR_THERE}, 'offer ' || coalesce(offer.number, offer.title), offer.starts_on, offer.ends_on, ${schoolsOf(linesOfOffer('offer.id'))}, ${pinnedOf(linesOfOffer('offer.id'))}
  from offer join sponsor on sponsor.department_id = offer.department_id and sponsor.id = offer.sponsor_id
  where offer.department_id = $1 and sponsor.category_id = any($2::uuid[]) and ${offerHoldsOn('$3')}
  order by "startsOn", "dealName"`;

/** Where a deal itself is read: `$2`. */
export const REACH_OF_CONTRACT = `select ${schoolsOf(linesOfContract('$2'))}, ${pinnedOf(linesOfContract('$2'))} from department where department.id = $1`;
export const REACH_OF_OFFER = `select ${schoolsOf(linesOfOffer('$2'))}, ${pinnedOf(linesOfOffer('$2'))} from department where department.id = $1`;

/** Exceptions of deals, with whose right each goes past: `$2` contracts, `$3` offers. Those of an offer stand for the contract that was made of it. */
export const EXCEPTIONS_OF_DEALS = `select one.id, case when one.contract_id = any($2::uuid[]) or one.offer_id = any($3::uuid[]) then coalesce(one.contract_id, one.offer_id) else made.contract_id end as "dealId",
    coalesce(one.exclusivity_id, one.against_deal_id, one.reserved_category_id, one.blocked_category_id) as "againstId",
    one.reason, one.approved_by_name as "approvedByName", one.approved_on as "approvedOn",
    coalesce(reserved.held_by, blocked.name, contract.title, offer.title, 'a right that is gone') as against
  from company_exception as one
    left join offer as made on made.department_id = one.department_id and made.id = one.offer_id
    left join reserved_category as reserved on reserved.department_id = one.department_id and reserved.id = one.reserved_category_id
    left join sponsor_category as blocked on blocked.department_id = one.department_id and blocked.id = one.blocked_category_id
    left join exclusivity on exclusivity.department_id = one.department_id and exclusivity.id = one.exclusivity_id
    left join contract on contract.department_id = one.department_id and contract.id = coalesce(exclusivity.contract_id, one.against_deal_id)
    left join offer on offer.department_id = one.department_id and offer.id = coalesce(exclusivity.offer_id, one.against_deal_id)
  where one.department_id = $1 and (one.contract_id = any($2::uuid[]) or one.offer_id = any($3::uuid[]) or made.contract_id = any($2::uuid[]))
  order by one.recorded_at, one.id`;

/** Deals that were let in although the deal `$2`, or the offer it was made of, was there: their rights are not in its way. */
export const LET_IN_BESIDE = `select unnest(array[one.contract_id, made.contract_id, one.offer_id]) as "dealId"
  from company_exception as one left join offer as made on made.department_id = one.department_id and made.id = one.offer_id
  where one.department_id = $1 and (one.against_deal_id = $2 or one.against_deal_id in (select offer.id from offer where offer.department_id = $1 and offer.contract_id = $2))`;
