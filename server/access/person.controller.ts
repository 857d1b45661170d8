import { Body, Controller, Get, Inject, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { ListQuery } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { IfMatch } from '../platform/http/version.ts';
import { Needs } from './needs.ts';
import { ChangeRolesDto, NewPersonDto } from './person.dto.ts';
import type { PersonView } from './person.dto.ts';
import { PersonService } from './person.service.ts';

@ApiTags('access')
@Controller('api/people')
export class PersonController {
  constructor(@Inject(PersonService) private readonly people: PersonService) {}

  @Get()
  @Needs('see people')
  async list(@Query() query: ListQuery): Promise<Listed<PersonView>> {
    return this.people.list(query);
  }

  @Get(':id')
  @Needs('see people')
  async one(@Param('id') id: string): Promise<PersonView> {
    return this.people.one(id);
  }

  @Post()
  @OutsideUnit()
  @Needs('change people')
  async add(@Body() form: NewPersonDto): Promise<PersonView> {
    return this.people.add(form);
  }

  @Patch(':id')
  @Needs('change people')
  async changeRoles(@Param('id') id: string, @IfMatch() version: number, @Body() form: ChangeRolesDto): Promise<PersonView> {
    return this.people.changeRoles(id, version, form);
  }
}
