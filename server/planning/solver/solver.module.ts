import { Module } from '@nestjs/common';
import { PlanSolver } from './plan-solver.service.ts';

/** One solver for the whole process; its threads end with the server. */
@Module({ providers: [{ provide: PlanSolver, useFactory: () => new PlanSolver() }], exports: [PlanSolver] })
export class SolverModule {}
