import { Controller, Get, Inject } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../access/needs.ts';
import { TheVisitor } from '../access/visitor.ts';
import type { Visitor } from '../access/visitor.ts';
import type { HomeView } from './home.dto.ts';
import { HomeProofService } from './home-proof.service.ts';
import { HomeService } from './home.service.ts';

@ApiTags('reports')
@Controller('api/home')
export class HomeController {
  constructor(
    @Inject(HomeService) private readonly home: HomeService,
    @Inject(HomeProofService) private readonly proof: HomeProofService,
  ) {}

  /** Which nights are next, which commitments are behind, what is unpaid, what changed lately. */
  @Get()
  @Needs('be here')
  async show(@TheVisitor() visitor: Visitor): Promise<HomeView> {
    return { ...(await this.home.show(visitor.roles)), proof: await this.proof.show(visitor.roles) };
  }
}
