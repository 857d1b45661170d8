import type { ReadStanding } from '../types.ts';

export interface Cause {
  kind: string;
  id: string;
  label: string;
}

export interface DeliveryLine {
  id: string;
  occurredOn: string;
  bookedOn: string;
  sentence: string;
  commitmentId: string | null;
  readKindName: string | null;
  reads: Partial<Record<string, number>>;
  after: Partial<ReadStanding>;
  cause: Cause | null;
}

export interface AccountLine {
  id: string;
  occurredOn: string;
  bookedOn?: string;
  sentence: string;
  amounts: Partial<Record<string, number>>;
  after: Partial<Record<string, number>>;
  cause: Cause | null;
}
