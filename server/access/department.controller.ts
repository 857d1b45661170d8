import { Body, Controller, Get, Inject, Patch } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { IfMatch } from '../platform/http/version.ts';
import { ChangeDepartmentDto } from './department.dto.ts';
import type { DepartmentView } from './department.dto.ts';
import { DepartmentService } from './department.service.ts';
import { Needs } from './needs.ts';

@ApiTags('access')
@Controller('api/department')
export class DepartmentController {
  constructor(@Inject(DepartmentService) private readonly departments: DepartmentService) {}

  @Get()
  @Needs('be here')
  async here(): Promise<DepartmentView> {
    return this.departments.here();
  }

  @Patch()
  @Needs('change the department')
  async change(@IfMatch() version: number, @Body() form: ChangeDepartmentDto): Promise<DepartmentView> {
    return this.departments.change(version, form);
  }
}
