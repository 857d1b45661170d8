import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { IfMatch } from '../../platform/http/version.ts';
import { PackageViews } from './package-views.service.ts';
import { ChangePackageDto, PackageDto, PackageListQuery } from './package.dto.ts';
import type { PackageView } from './package.dto.ts';
import { PackageService } from './package.service.ts';

@ApiTags('sponsorship')
@Controller('api/packages')
export class PackageController {
  constructor(
    @Inject(PackageService) private readonly packages: PackageService,
    @Inject(PackageViews) private readonly views: PackageViews,
  ) {}

  @Get()
  @Needs('see contracts')
  async list(@Query() query: PackageListQuery): Promise<Listed<PackageView>> {
    return this.views.list(query);
  }

  @Get(':id')
  @Needs('see contracts')
  async one(@Param('id') id: string): Promise<PackageView> {
    return this.views.one(id);
  }

  @Post()
  @Needs('make offers')
  async add(@Body() form: PackageDto): Promise<PackageView> {
    return this.packages.add(form);
  }

  @Patch(':id')
  @Needs('make offers')
  async change(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangePackageDto): Promise<PackageView> {
    return this.packages.change(id, version, form);
  }
}
