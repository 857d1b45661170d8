export type { PackageView as Package, PackageLineView as PackageLine } from '../../server/sponsorship/packages/package.dto.ts';
export type { OfferedLine } from '../../server/domain/sponsorship/offers/offered-values.ts';
