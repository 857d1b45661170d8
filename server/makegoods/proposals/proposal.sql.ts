/** "Herons at Kestrels", of the game that an expression names. */
export const gameLabelOf = (game: string): string => `(select coalesce(string_agg(school.nickname, ', ' order by participant.place) filter (where not participant.is_home), 'Visitors') || ' at '
      || coalesce(min(school.nickname) filter (where participant.is_home), 'home')
    from game_participant as participant join team on team.department_id = $1 and team.id = participant.team_id
      join school on school.department_id = $1 and school.id = team.school_id
    where participant.department_id = $1 and participant.game_id = ${game} having count(*) > 0)`;

/** Reads counted as replacements of a makegood, one row each, with their place among the events of the term. */
export const REPLACEMENTS = `select placement.makegood_id as "makegoodId", counted_read.entry_id as "entryId", counted_read.night_id as "nightId", night.held_on as "heldOn",
    counted_read.game_id as "gameId", ${gameLabelOf('counted_read.game_id')} as "gameLabel", coalesce(log_entry.window_key, placement.window_key) as "windowKey"
  from placement
    join log_entry on log_entry.department_id = $1 and log_entry.placement_id = placement.id
    join counted_read on counted_read.department_id = $1 and counted_read.entry_id = log_entry.id
    join ledger_event as event on event.department_id = $1 and event.id = counted_read.event_id
    join night on night.department_id = $1 and night.id = counted_read.night_id
  where placement.department_id = $1 and placement.makegood_id = any($2::uuid[]) and event.happening->>'kind' = 'makegoodGiven'
  order by placement.makegood_id, event.place, counted_read.id`;

// A placement on a night that is signed off counts as placed only where its read was counted.
const PROGRESS = `select
      (select count(*) from placement where placement.department_id = $1 and placement.makegood_id = proposal.makegood_id
        and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = placement.night_id))::int as waiting,
      (select count(*) from placement join log_entry on log_entry.department_id = $1 and log_entry.placement_id = placement.id
          join counted_read on counted_read.department_id = $1 and counted_read.entry_id = log_entry.id
          join ledger_event as event on event.department_id = $1 and event.id = counted_read.event_id
        where placement.department_id = $1 and placement.makegood_id = proposal.makegood_id and event.happening->>'kind' = 'makegoodGiven')::int as given`;

const STANDING = `case proposal.state
      when 'settled' then 'settled' when 'declined' then 'declined' when 'withdrawn' then 'withdrawn'
      when 'open' then case when proposal.shown_on is null then 'open' else 'waitingForAnswer' end
      else case when proposal.makegood_id is null then 'waitingForContract'
        when progress.given >= proposal.replacement_reads then 'settled'
        when progress.waiting + progress.given < proposal.replacement_reads then 'toBePlaced' else 'toBeGiven' end end`;

const FROM = `from makegood_proposal as proposal
  join contract on contract.department_id = $1 and contract.id = proposal.contract_id
  join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  join commitment on commitment.department_id = $1 and commitment.id = proposal.commitment_id
  join read_kind on read_kind.department_id = $1 and read_kind.id = commitment.read_kind_id
  left join read_kind as replacement_kind on replacement_kind.department_id = $1 and replacement_kind.id = proposal.replacement_read_kind_id
  left join contract as next on next.department_id = $1 and next.id = proposal.carried_to_contract_id
  left join credit_memo as memo on memo.department_id = $1 and memo.event_id = proposal.settled_event_id
  cross join lateral (${PROGRESS}) as progress`;

/** Proposals, each with where it stands; a `where` that begins with the department follows. */
export const PROPOSALS = `select * from (select proposal.id, proposal.contract_id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle",
    contract.sponsor_id as "sponsorId", sponsor.name as "sponsorName", proposal.commitment_id as "commitmentId", read_kind.id as "readKindId", read_kind.name as "readKindName",
    proposal.missed_game_id as "missedGameId", proposal.missed_reads as "missedReads", proposal.because, proposal.remedy,
    proposal.replacement_read_kind_id as "replacementReadKindId", replacement_kind.name as "replacementReadKindName", proposal.replacement_reads as "replacementReads",
    proposal.amount_cents as "amountCents", proposal.proposed_on as "proposedOn", proposal.shown_on as "shownOn", proposal.answer_by as "answerBy",
    proposal.accepted_on as "acceptedOn", proposal.declined_on as "declinedOn", proposal.withdrawn_on as "withdrawnOn",
    proposal.answered_by_name as "answeredByName", proposal.answered_how as "answeredHow", proposal.answer_note as "answerNote", proposal.note,
    proposal.makegood_id as "makegoodId", proposal.carried_to_contract_id as "carriedToContractId", next.number as "carriedToNumber",
    memo.id as "creditMemoId", memo.number as "creditMemoNumber", proposal.settled_on as "settledOn", ${STANDING} as standing,
    least(progress.waiting + progress.given, proposal.replacement_reads) as placed, least(progress.given, proposal.replacement_reads) as given,
    case when proposal.settled_on is not null then proposal.missed_reads
      when proposal.makegood_id is null then 0
      else least(proposal.missed_reads, progress.given * proposal.missed_reads / proposal.replacement_reads) end::int as "settledReads",
    proposal.version, proposal.department_id as department
  ${FROM} where proposal.department_id = $1) as line`;

export const MISSED = `select missed_read.proposal_id as "proposalId", missed_read.place, missed_read.night_id as "nightId", missed_read.game_id as "gameId",
    ${gameLabelOf('missed_read.game_id')} as "gameLabel", missed_read.window_key as "windowKey", missed_read.missed_on as "missedOn", missed_read.why
  from missed_read where missed_read.department_id = $1 and missed_read.proposal_id = any($2::uuid[]) order by missed_read.proposal_id, missed_read.place`;

/** `$2` contracts of sponsor `$3`: the last day on which each was another's. */
export const HANDED_ON = `select handed.contract_id as "contractId", max(greatest(handed.assigned_on, (handed.recorded_at at time zone department.zone)::date))::text as "lastOn"
  from contract_assignment as handed join department on department.id = handed.department_id
  where handed.department_id = $1 and handed.contract_id = any($2::uuid[]) and handed.from_sponsor_id <> $3 group by handed.contract_id`;
