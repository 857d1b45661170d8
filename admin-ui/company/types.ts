export type { CompanyExceptionView as CompanyException, ExclusivityView as Exclusivity, ObstacleView as Obstacle } from '../../server/sponsorship/company/company.dto.ts';
export type { ReservedCategoryView as ReservedCategory } from '../../server/sponsorship/company/reserved-category.dto.ts';

export interface Listed<T> {
  data: T[];
  total: number;
}
