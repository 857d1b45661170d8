import { Controller, Get, Inject } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { OpenItemsView } from './open-items.dto.ts';
import { OpenItems } from './open-items.service.ts';

@ApiTags('billing')
@Controller('api/open-money')
export class OpenItemsController {
  constructor(@Inject(OpenItems) private readonly items: OpenItems) {}

  @Get()
  @Needs('see money')
  async show(): Promise<OpenItemsView> {
    return this.items.show();
  }
}
