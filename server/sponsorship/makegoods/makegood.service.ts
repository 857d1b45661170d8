import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { Commitment } from '../commitment.entity.ts';
import { ContractRecords } from '../contract-records.service.ts';
import { LineGames } from '../line-games.service.ts';
import { ReadKind } from '../read-kind.entity.ts';
import { TermLedger } from '../term-ledger.service.ts';
import type { MakegoodDto, MakegoodView } from './makegood.dto.ts';
import { Makegood } from './makegood.entity.ts';

const LIST = `select makegood.id, makegood.commitment_id as "commitmentId", missed_kind.name as "readKindName", makegood.missed_game_id as "missedGameId",
    game.played_on as "missedGamePlayedOn", makegood.missed_reads as missed, makegood.replacement_read_kind_id as "replacementReadKindId",
    replacement_kind.name as "replacementReadKindName", makegood.replacement_reads as replacements, makegood.agreed_on as "agreedOn",
    makegood.agreed_with as "agreedWith",
    (select count(*) from placement where placement.department_id = $1 and placement.makegood_id = makegood.id)::int as placed
  from makegood
    join commitment on commitment.department_id = makegood.department_id and commitment.id = makegood.commitment_id
    join read_kind as missed_kind on missed_kind.department_id = commitment.department_id and missed_kind.id = commitment.read_kind_id
    join read_kind as replacement_kind on replacement_kind.department_id = makegood.department_id and replacement_kind.id = makegood.replacement_read_kind_id
    left join game on game.department_id = makegood.department_id and game.id = makegood.missed_game_id
  where makegood.department_id = $1 and commitment.contract_id = $2 order by makegood.agreed_on, makegood.id`;

/** What was agreed with a sponsor for reads that were missed: other reads, given later. */
@Injectable()
export class MakegoodService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(LineGames) private readonly games: LineGames,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  async ofContract(contractId: string): Promise<Listed<MakegoodView>> {
    const { contract, term } = await this.records.load(contractId);
    const rows = await this.work.sql<Omit<MakegoodView, 'given' | 'settled'>>(LIST, [contract.id]);
    const position = await this.terms.position(term.id);
    const agreed = position?.lines.flatMap((line) => line.slots.flatMap((slot) => slot.makegoods)) ?? [];
    const data = rows.map((row) => {
      const { given = 0, settled = 0 } = agreed.find((one) => one.makegoodId === row.id) ?? {};
      return { ...row, given, settled };
    });
    return { data, total: data.length };
  }

  /**
   * The missed reads stay owed until their replacements are given.
   *
   * @throws Refused `contract-not-signed`, `unknown-commitment`, `unknown-read-kind`, `game-needed`, `more-than-owed`
   */
  async agree(contractId: string, form: MakegoodDto): Promise<void> {
    const { contract, term } = await this.records.lock(contractId);
    const commitment = (await this.work.first(Commitment, { id: form.commitmentId, termId: term.id })) ?? refuse('unknown-commitment', {}, { commitmentId: 'is not of this contract' });
    if ((await this.work.count(ReadKind, { id: form.replacementReadKindId })) === 0) refuse('unknown-read-kind');
    const position = (await this.terms.position(term.id)) ?? refuse('contract-not-signed');
    const id = form.id ?? newId();
    const { gameId = null, missed, replacements, agreedOn, agreedWith, replacementReadKindId } = form;
    await this.work.insert(Makegood, { id, commitmentId: commitment.id, missedGameId: gameId, missedReads: missed, replacementReadKindId, replacementReads: replacements, agreedOn, agreedWith });
    const line = await this.games.of(position, commitment.id, gameId);
    const because = { cause: 'contract', causeId: contract.id, occurredOn: agreedOn as Day };
    await this.terms.happen(term.id, [{ happening: { kind: 'makegoodAgreed', makegoodId: id, ...line, missed, replacements }, because }]);
  }
}
