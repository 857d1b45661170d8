import { Inject, Injectable } from '@nestjs/common';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeNightDto, NightListQuery, NightView, PersonOfNightDto } from '../season/night.dto.ts';
import { NightService } from '../season/night.service.ts';
import { PapersService } from './papers.service.ts';

/** The calendar's nights, each with how its paper stands: issued, out of date, ready or what is missing. */
@Injectable()
export class NightsWithPaper {
  constructor(
    @Inject(NightService) private readonly nights: NightService,
    @Inject(PapersService) private readonly papers: PapersService,
  ) {}

  async list(query: NightListQuery): Promise<Listed<NightView>> {
    const { data, total } = await this.nights.list(query);
    return { data: await this.withPaper(data), total };
  }

  async one(id: string): Promise<NightView> {
    return this.alone(await this.nights.one(id));
  }

  async change(id: string, version: number, form: ChangeNightDto): Promise<NightView> {
    return this.alone(await this.nights.change(id, version, form));
  }

  async putPeople(id: string, version: number, people: readonly PersonOfNightDto[]): Promise<NightView> {
    return this.alone(await this.nights.putPeople(id, version, people));
  }

  private async alone(night: NightView): Promise<NightView> {
    const [view] = await this.withPaper([night]);
    return view!;
  }

  private async withPaper(nights: readonly NightView[]): Promise<NightView[]> {
    const paper = await this.papers.of(nights.map((night) => night.id));
    return nights.map((night) => ({ ...night, ...paper.get(night.id) }));
  }
}
