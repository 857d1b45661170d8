/** SQL: whether one of the teams in a column is of the seasons in a parameter, an array of ids; such a commitment counts over their games. */
export const reachesInto = (teamIds: string, seasonIds: string): string =>
  `exists (select from team as named where named.department_id = $1 and named.season_id = any(${seasonIds}::uuid[]) and named.id = any(${teamIds}))`;
