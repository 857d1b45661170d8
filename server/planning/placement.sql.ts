/** Placements with whose read it is and of which kind: a replacement is read as the kind that was agreed for it. */
export const PLACEMENT_FROM = `from placement
  join commitment on commitment.department_id = placement.department_id and commitment.id = placement.commitment_id
  join contract on contract.department_id = commitment.department_id and contract.id = commitment.contract_id
  join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  left join makegood on makegood.department_id = placement.department_id and makegood.id = placement.makegood_id
  join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = coalesce(makegood.replacement_read_kind_id, commitment.read_kind_id)
  where placement.department_id = $1`;
