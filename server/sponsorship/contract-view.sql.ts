/** What is open on the contract's invoices, void ones left out. */
const RECEIVABLE = `(select coalesce(sum(standing.balance_cents), 0) from invoice
    join invoice_standing as standing on standing.department_id = invoice.department_id and standing.invoice_id = invoice.id
    where invoice.department_id = $1 and invoice.contract_id = contract.id)`;

const TERM = `jsonb_build_object('id', term.id, 'number', term.number, 'seasonId', term.season_id, 'seasonName', season.name,
    'startsOn', term.starts_on, 'endsOn', term.ends_on, 'pricing', term.pricing, 'priceCents', term.price_cents,
    'billAtLeastCents', term.bill_at_least_cents, 'billAtMostCents', term.bill_at_most_cents, 'billingPlan', term.billing_plan,
    'signedOn', term.signed_on, 'signedByName', term.signed_by_name, 'endedOn', term.ended_on, 'closedOn', term.closed_on,
    'state', term.state, 'version', term.version)`;

/** Held since when and why; null where no hold stands. */
const HOLD = `(select jsonb_build_object('heldOn', hold.held_on, 'reason', hold.reason) from contract_hold as hold
    where hold.department_id = $1 and hold.contract_id = contract.id and hold.lifts_hold_id is null
      and not exists (select from contract_hold as lift where lift.department_id = $1 and lift.lifts_hold_id = hold.id) limit 1)`;

const ASSIGNMENTS = `(select coalesce(jsonb_agg(jsonb_build_object('assignedOn', assignment.assigned_on, 'fromSponsorName', owner.name, 'fromPayerName', paid_by.name,
      'reason', assignment.reason) order by assignment.assigned_on, assignment.id), '[]')
    from contract_assignment as assignment
      join sponsor as owner on owner.department_id = $1 and owner.id = assignment.from_sponsor_id
      join payer as paid_by on paid_by.department_id = $1 and paid_by.id = assignment.from_payer_id
    where assignment.department_id = $1 and assignment.contract_id = contract.id)`;

export const CONTRACT = `contract.id, contract.number, contract.sponsor_id as "sponsorId", sponsor.name as "sponsorName",
  contract.seller_id as "sellerId", seller.name as "sellerName", contract.payer_id as "payerId", payer.name as "payerName", contract.title,
  contract.purchase_order_number as "purchaseOrderNumber", contract.cancelled_game_policy as "cancelledGamePolicy", contract.years,
  contract.increase_basis_points as "increaseBasisPoints", contract.price_varies_with as "priceVariesWith", contract.is_in_kind as "isInKind",
  contract.follows_contract_id as "followsContractId", contract.follows_as as "followsAs", contract.year_number as "yearNumber",
  contract_before.number as "followsContractNumber", contract_after.id as "followedByContractId", contract_after.number as "followedByContractNumber", contract_after.follows_as as "followedByAs",
  contract.category_exception as "categoryException", contract.category_exception_approved_by as "categoryExceptionApprovedBy",
  contract.outside_id as "outsideId", contract.note, contract.version, ${TERM} as term, ${HOLD} as hold, ${ASSIGNMENTS} as assignments, ${RECEIVABLE} as "receivableCents"`;

/** The last term of each contract stands for it. */
export const CONTRACT_FROM = `from contract
  join term on term.department_id = contract.department_id and term.contract_id = contract.id
    and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
  join season on season.department_id = term.department_id and season.id = term.season_id
  join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
  join payer on payer.department_id = contract.department_id and payer.id = contract.payer_id
  left join contract as contract_before on contract_before.department_id = contract.department_id and contract_before.id = contract.follows_contract_id
  left join contract as contract_after on contract_after.department_id = contract.department_id and contract_after.follows_contract_id = contract.id`;

export const CONTRACT_SORTS = {
  sponsorName: 'sponsor.name collate "und-x-icu"',
  number: 'contract.number',
  title: 'contract.title collate "und-x-icu"',
  sellerName: 'seller.name collate "und-x-icu"',
  state: 'term.state',
  startsOn: 'term.starts_on',
  endsOn: 'term.ends_on',
  signedOn: 'term.signed_on',
  priceCents: 'term.price_cents',
};

export const COMMITMENTS = `select commitment.id, commitment.contract_id as "contractId", commitment.place, commitment.read_kind_id as "readKindId",
    read_kind.name as "readKindName", commitment.counting, commitment.reads, commitment.reads_at_least as "readsAtLeast",
    commitment.reads_at_most as "readsAtMost", commitment.whose, commitment.several_count_as_one as "severalCountAsOne",
    commitment.rate_cents as "rateCents", commitment.price_each_cents as "priceEachCents", commitment.is_taxed as "isTaxed", commitment.starts_on as "startsOn",
    commitment.ends_on as "endsOn", commitment.team_ids as "teamIds", commitment.levels, commitment.least_per_game as "leastPerGame",
    commitment.most_per_game as "mostPerGame", commitment.separation, commitment.window_kinds as "windowKinds",
    commitment.blackout_days as "blackoutDays", commitment.pinned_game_ids as "pinnedGameIds", commitment.priority
  from commitment join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
  where commitment.department_id = $1 and commitment.contract_id = any($2::uuid[]) order by commitment.contract_id, commitment.place`;

export const BENEFITS = `select benefit.id, benefit.contract_id as "contractId", benefit.place, benefit.name, benefit.quantity,
    benefit.rate_cents as "rateCents", benefit.fair_value_cents as "fairValueCents", benefit.is_taxed as "isTaxed", benefit.earns, benefit.starts_on as "startsOn",
    benefit.ends_on as "endsOn", benefit.due_on as "dueOn",
    (select coalesce(sum(case when delivery.takes_back_delivery_id is null then delivery.quantity else -delivery.quantity end), 0)
       from benefit_delivery as delivery where delivery.department_id = $1 and delivery.benefit_id = benefit.id) as delivered
  from benefit where benefit.department_id = $1 and benefit.contract_id = any($2::uuid[]) order by benefit.contract_id, benefit.place`;
