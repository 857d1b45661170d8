import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { coveredGames } from '../../domain/sponsorship/covered-games.ts';
import { cardWorth } from '../../domain/sponsorship/packages/card-worth.ts';
import { termsOfDraft } from '../../domain/sponsorship/terms-of-draft.ts';
import type { Draft } from '../../domain/sponsorship/terms-of-draft.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { CoveredGames } from '../covered-games.service.ts';
import type { GameOfSeason } from '../covered-games.service.ts';
import { valuesOrTrouble } from '../offers/offer-draft.ts';
import type { PackageLineView, PackageListQuery, PackageView } from './package.dto.ts';
import { PACKAGE, PACKAGE_FROM, PACKAGE_LINES, PACKAGE_SORTS } from './package.sql.ts';

type Row = Pick<PackageView, 'id' | 'seasonId' | 'seasonName' | 'name' | 'priceCents' | 'isOffered' | 'note' | 'version'> & { startsOn: Day; endsOn: Day };
type LineRow = Omit<PackageLineView, 'countAtRate' | 'worthCents'> & { packageId: string };

/** Packages as they are shown: what their lines would cost one by one, and what each is worth at the package's price. */
@Injectable()
export class PackageViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  async list(query: PackageListQuery): Promise<Listed<PackageView>> {
    const on = new Conditions('package.department_id')
      .add('package.id = any(?::uuid[])', query.id)
      .add('package.season_id = ?', query.seasonId)
      .when(query.isOffered, 'package.is_offered')
      .when(query.isOffered === false, 'not package.is_offered')
      .add('package.name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${PACKAGE_FROM} where ${on.where}`, on.parameters);
    const rows = await this.work.sql<Row>(`select ${PACKAGE} from ${PACKAGE_FROM} where ${on.where} ${pageOf(query, PACKAGE_SORTS, 'package.id')}`, on.parameters);
    return { data: await this.withLines(rows), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<PackageView> {
    if (!isId(id)) return refuse('not-found');
    const rows = await this.work.sql<Row>(`select ${PACKAGE} from ${PACKAGE_FROM} where package.department_id = $1 and package.id = $2`, [id]);
    const [view] = await this.withLines(rows);
    return view ?? refuse('not-found');
  }

  private async withLines(rows: readonly Row[]): Promise<PackageView[]> {
    if (rows.length === 0) return [];
    const lines = await this.work.sql<LineRow>(PACKAGE_LINES, [rows.map((row) => row.id)]);
    const games = await this.covered.ofSeasons(rows.map((row) => row.seasonId));
    return rows.map((row) => viewOf(row, lines.filter((line) => line.packageId === row.id), games.filter((game) => game.seasonId === row.seasonId)));
  }
}

function viewOf({ startsOn, endsOn, ...row }: Row, lines: readonly LineRow[], games: readonly GameOfSeason[]): PackageView {
  const draft = draftOf({ ...row, startsOn, endsOn }, lines);
  const worth = cardWorth(termsOfDraft({ ...draft, term: { ...draft.term, priceCents: centsOf(0) } }, games));
  const of = new Map(worth.map((one) => [one.lineId, one]));
  return {
    ...row,
    lines: lines.map(({ packageId: _packageId, ...line }) => ({ ...line, countAtRate: of.get(line.id)?.count ?? 0, worthCents: of.get(line.id)?.worthCents ?? 0 })),
    worthCents: worth.reduce((sum, one) => sum + one.worthCents, 0),
    gamesCounted: coveredGames({ id: row.id, counting: 'perGame', reads: 1, startsOn, endsOn, teamIds: [], levels: [] }, games).length,
    ...valuesOrTrouble(draft, games),
  };
}

/** A package as the rule of signing reads a deal: over the whole season, and over all that we announce in it. */
function draftOf(row: Pick<Row, 'id' | 'priceCents' | 'startsOn' | 'endsOn'>, lines: readonly LineRow[]): Draft {
  const { startsOn, endsOn } = row;
  const everywhere = { startsOn: null, endsOn: null, teamIds: [], levels: [], priceEachCents: null, readsAtMost: null, isTaxed: true } as const;
  return {
    dealId: row.id,
    term: { startsOn, endsOn, pricing: 'fixed', priceCents: centsOf(row.priceCents), billAtLeastCents: null, billAtMostCents: null },
    reads: lines.flatMap(({ id, readKindName, counting, quantity, rateCents }) =>
      readKindName !== null && counting !== null
        ? [{ ...everywhere, id, readKindName, counting, reads: quantity, readsAtLeast: counting === 'onOccurrence' && quantity > 0 ? quantity : null, rateCents: centsOf(rateCents) }]
        : [],
    ),
    benefits: lines.flatMap(({ id, benefitName, quantity, rateCents }) =>
      benefitName === null ? [] : [{ id, name: benefitName, quantity, rateCents: centsOf(rateCents), isTaxed: true, earns: 'onDelivery', startsOn: null, endsOn: null }],
    ),
    cancelledGamePolicy: 'credit',
    isInKind: false,
  };
}
