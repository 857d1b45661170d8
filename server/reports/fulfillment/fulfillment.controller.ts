import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { FulfillmentView } from './fulfillment.dto.ts';
import { FulfillmentService } from './fulfillment.service.ts';

@ApiTags('reports')
@Controller('api/contracts/:id/fulfillment')
export class FulfillmentController {
  constructor(@Inject(FulfillmentService) private readonly fulfillment: FulfillmentService) {}

  @Get()
  @Needs('see contracts')
  async of(@Param('id') id: string): Promise<FulfillmentView> {
    return this.fulfillment.ofContract(id);
  }
}
