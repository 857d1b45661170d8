import { OFFER_STATE } from '../../sponsorship/offers/offer-view.sql.ts';

export const SEASONS_BY_DAY = `select id, name, sport, starts_on as "startsOn", ends_on as "endsOn", follows_season_id as "followsSeasonId"
  from season where department_id = $1 order by starts_on desc, name`;

/** The contracts of a season that were signed, with whom one talks to about the next. */
export const LAST_TERM = `select contract.id as "contractId", contract.number, contract.title, contract.is_in_kind as "isInKind", contract.seller_id as "sellerId", contract.payer_id as "payerId",
    contract.years, contract.year_number as "yearNumber", term.id as "termId", term.ends_on as "endsOn", term.state, term.pricing, term.price_cents as "fixedCents",
    sponsor.id as "sponsorId", sponsor.name as "sponsorName", sponsor.contact_name as "contactName", sponsor.last_contact_on as "lastContactOn",
    sponsor.next_step as "nextStep", sponsor.next_step_on as "nextStepOn", sponsor.caller_person_id as "callerPersonId", person.name as "callerName",
    sponsor.lost_on as "lostOn", sponsor.lost_reason as "lostReason"
  from term join contract on contract.department_id = $1 and contract.id = term.contract_id
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
    left join person on person.id = sponsor.caller_person_id
  where term.department_id = $1 and term.season_id = $2 and term.state <> 'draft' order by sponsor.name collate "und-x-icu", contract.number, contract.id`;

/** What contracts come to now, what of it is to be billed, and what is open on their invoices; `$3` is today. */
export const MONEY_OF_CONTRACTS = `select agreed.contract_id as "contractId", agreed."agreedCents", agreed."toBillCents", coalesce(due."openCents", 0) as "openCents", coalesce(due."overdueCents", 0) as "overdueCents"
  from (select contract_id, sum(case when from_account = 'promised' then amount when to_account = 'promised' then -amount else 0 end) as "agreedCents",
      sum(case when to_account = 'toBill' then amount when from_account = 'toBill' then -amount else 0 end) as "toBillCents"
    from posting where department_id = $1 and contract_id = any($2::uuid[]) and journal = 'agreed' group by contract_id) as agreed
    left join (select invoice.contract_id, sum(standing.balance_cents) as "openCents", coalesce(sum(standing.balance_cents) filter (where invoice.due_on < $3::date), 0) as "overdueCents"
      from invoice join invoice_standing as standing on standing.department_id = $1 and standing.invoice_id = invoice.id
      where invoice.department_id = $1 and invoice.contract_id = any($2::uuid[]) group by invoice.contract_id) as due on due.contract_id = agreed.contract_id`;

/** Contracts that follow those in `$2`, and what else the sponsors in `$3` have for the next season (`$4`), or after `$5` where none is there yet. */
export const CONTRACTS_AFTER = `select contract.id, contract.number, contract.title, contract.sponsor_id as "sponsorId", contract.follows_contract_id as "followsContractId",
    contract.follows_as as "followsAs", contract.year_number as "yearNumber", term.state = 'draft' as "isDraft"
  from contract join term on term.department_id = $1 and term.contract_id = contract.id
  where contract.department_id = $1 and (contract.follows_contract_id = any($2::uuid[]) or (contract.follows_contract_id is null and contract.sponsor_id = any($3::uuid[])
    and not (contract.id = any($2::uuid[])) and case when $4::uuid is null then term.starts_on > $5::date else term.season_id = $4 end))
  order by term.state = 'draft', term.starts_on, contract.id`;

export const OFFERS_AFTER = `select offer.id, offer.sponsor_id as "sponsorId", offer.title, ${OFFER_STATE} as state, offer.declined_reason as "declinedReason"
  from offer where offer.department_id = $1 and offer.sponsor_id = any($3::uuid[])
    and case when $4::uuid is null then offer.starts_on > $5::date else offer.season_id = $4 end
  order by coalesce(offer.put_on, offer.starts_on) desc, offer.id`;

export const RATES_OF_SEASONS = `select season_id as "seasonId", read_kind_id as "readKindId", benefit_name as "benefitName", price_cents as "priceCents"
  from rate_card_line where department_id = $1 and season_id = any($2::uuid[])`;

export const PACKAGES_OF_SEASONS = `select package.id, package.season_id as "seasonId", package.name, package.price_cents as "priceCents",
    coalesce(string_agg(line.quantity || ' × ' || coalesce(read_kind.name, line.benefit_name) || case line.counting when 'perGame' then ' a game' when 'perNight' then ' a night' else '' end, ', ' order by line.place), '') as carries
  from package left join package_line as line on line.department_id = $1 and line.package_id = package.id
    left join read_kind on read_kind.department_id = $1 and read_kind.id = line.read_kind_id
  where package.department_id = $1 and package.season_id = any($2::uuid[]) and package.is_offered group by package.department_id, package.id order by package.price_cents, package.id`;
