export const PACKAGE = `package.id, package.season_id as "seasonId", season.name as "seasonName", season.starts_on as "startsOn", season.ends_on as "endsOn",
  package.name, package.price_cents as "priceCents", package.is_offered as "isOffered", package.note, package.version`;

export const PACKAGE_FROM = `package join season on season.department_id = package.department_id and season.id = package.season_id`;

export const PACKAGE_SORTS = {
  name: 'package.name collate "und-x-icu"', priceCents: 'package.price_cents', seasonName: 'season.starts_on', isOffered: 'package.is_offered',
};

export const PACKAGE_LINES = `select line.id, line.package_id as "packageId", line.place, line.read_kind_id as "readKindId", read_kind.name as "readKindName",
    line.benefit_name as "benefitName", line.counting, line.quantity, line.rate_cents as "rateCents", line.least_per_game as "leastPerGame", line.most_per_game as "mostPerGame"
  from package_line as line left join read_kind on read_kind.department_id = line.department_id and read_kind.id = line.read_kind_id
  where line.department_id = $1 and line.package_id = any($2::uuid[]) order by line.package_id, line.place`;

/** The season's rate card. */
export const RATES = `select read_kind_id as "readKindId", benefit_name as "benefitName", price_cents as "priceCents"
  from rate_card_line where department_id = $1 and season_id = $2`;
