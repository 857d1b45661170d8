/** `$2` is today by the department's calendar. */
export const OFFER_STATE = `(case when offer.state = 'open' and offer.lapses_on < $2::date then 'lapsed' else offer.state end)`;

/**
 * The offer keeps its places, and what it promises of others, on that day: it is open, or a contract was drawn up of it that
 * nobody has signed yet.
 */
export const offerHoldsOn = (day: string): string => `(offer.holds_inventory and offer.lapses_on >= ${day}::date and (offer.state = 'open'
    or exists (select from term as drawn_up where drawn_up.department_id = offer.department_id and drawn_up.contract_id = offer.contract_id and drawn_up.state = 'draft')))`;

export const OFFER = `offer.id, offer.number, offer.sponsor_id as "sponsorId", sponsor.name as "sponsorName", sponsor.category_id as "categoryId",
  category.name as "categoryName", offer.seller_id as "sellerId", seller.name as "sellerName", offer.payer_id as "payerId", payer.name as "payerName",
  offer.season_id as "seasonId", season.name as "seasonName", offer.package_id as "packageId", package.name as "packageName", offer.title,
  offer.pricing, offer.price_cents as "priceCents", offer.bill_at_least_cents as "billAtLeastCents", offer.bill_at_most_cents as "billAtMostCents",
  offer.price_varies_with as "priceVariesWith", offer.cancelled_game_policy as "cancelledGamePolicy", offer.billing_plan as "billingPlan",
  offer.starts_on as "startsOn", offer.ends_on as "endsOn", offer.years, offer.increase_basis_points as "increaseBasisPoints",
  offer.lapses_on as "lapsesOn", offer.holds_inventory as "holdsInventory", offer.put_on as "putOn", offer.beyond_places_reason as "beyondPlacesReason",
  person.name as "beyondPlacesPersonName", offer.declined_on as "declinedOn", offer.declined_reason as "declinedReason",
  offer.withdrawn_on as "withdrawnOn", offer.contract_id as "contractId", contract.number as "contractNumber", offer.note, offer.version,
  ${OFFER_STATE} as state, ${offerHoldsOn('$2')} as "holdsNow",
  case when ${OFFER_STATE} = 'open' then offer.lapses_on - $2::date end as "lapsesInDays"`;

export const OFFER_FROM = `from offer
  join sponsor on sponsor.department_id = offer.department_id and sponsor.id = offer.sponsor_id
  join sponsor_category as category on category.department_id = sponsor.department_id and category.id = sponsor.category_id
  join seller on seller.department_id = offer.department_id and seller.id = offer.seller_id
  join season on season.department_id = offer.department_id and season.id = offer.season_id
  left join payer on payer.department_id = offer.department_id and payer.id = offer.payer_id
  left join package on package.department_id = offer.department_id and package.id = offer.package_id
  left join contract on contract.department_id = offer.department_id and contract.id = offer.contract_id
  left join person on person.id = offer.beyond_places_person_id`;

/** What asks for somebody's hand stands first: what holds places and lapses within a week, open, drafts, lapsed, the rest. */
const ATTENTION = `case ${OFFER_STATE} when 'open' then case when offer.holds_inventory and offer.lapses_on <= $2::date + 7 then 0 else 1 end
    when 'draft' then 2 when 'lapsed' then 3 else 4 end, offer.lapses_on`;

export const OFFER_SORTS = {
  attention: ATTENTION,
  lapsesOn: 'offer.lapses_on',
  sponsorName: 'sponsor.name collate "und-x-icu"',
  number: 'offer.number',
  title: 'offer.title collate "und-x-icu"',
  state: OFFER_STATE,
  putOn: 'offer.put_on',
  priceCents: 'offer.price_cents',
};

export const READ_LINES = `select line.id, line.offer_id as "offerId", line.place, line.read_kind_id as "readKindId", read_kind.name as "readKindName",
    line.counting, line.quantity as reads, line.reads_at_least as "readsAtLeast", line.reads_at_most as "readsAtMost", line.whose,
    line.several_count_as_one as "severalCountAsOne", line.rate_cents as "rateCents", line.price_each_cents as "priceEachCents", line.is_taxed as "isTaxed",
    line.starts_on as "startsOn", line.ends_on as "endsOn", line.team_ids as "teamIds", line.levels, line.least_per_game as "leastPerGame",
    line.most_per_game as "mostPerGame", line.separation, line.window_kinds as "windowKinds", line.blackout_days as "blackoutDays",
    line.pinned_game_ids as "pinnedGameIds", line.priority
  from offer_line as line join read_kind on read_kind.department_id = line.department_id and read_kind.id = line.read_kind_id
  where line.department_id = $1 and line.offer_id = any($2::uuid[]) order by line.offer_id, line.place`;

export const BENEFIT_LINES = `select line.id, line.offer_id as "offerId", line.place, line.benefit_name as name, line.quantity, line.rate_cents as "rateCents",
    line.fair_value_cents as "fairValueCents", line.is_taxed as "isTaxed", line.earns, line.starts_on as "startsOn", line.ends_on as "endsOn", line.due_on as "dueOn"
  from offer_line as line where line.department_id = $1 and line.offer_id = any($2::uuid[]) and line.benefit_name is not null
  order by line.offer_id, line.place`;

export const EXCLUSIVITIES = `select exclusivity.id, exclusivity.offer_id as "offerId", exclusivity.category_id as "categoryId", category.name as "categoryName",
    exclusivity.reach, exclusivity.school_id as "schoolId", school.name as "schoolName", exclusivity.starts_on as "startsOn", exclusivity.ends_on as "endsOn",
    exclusivity.game_ids as "gameIds", exclusivity.window_kinds as "windowKinds"
  from exclusivity join sponsor_category as category on category.department_id = exclusivity.department_id and category.id = exclusivity.category_id
    left join school on school.department_id = exclusivity.department_id and school.id = exclusivity.school_id
  where exclusivity.department_id = $1 and exclusivity.offer_id = any($2::uuid[]) order by exclusivity.starts_on, exclusivity.id`;

export const EXCEPTIONS = `select id, offer_id as "offerId", exclusivity_id as "exclusivityId", reserved_category_id as "reservedCategoryId", blocked_category_id as "blockedCategoryId", reason,
    approved_by_name as "approvedByName", approved_on as "approvedOn"
  from company_exception where department_id = $1 and offer_id = any($2::uuid[]) order by recorded_at, id`;
