import { DefaultNamingStrategy } from 'typeorm';

/** `priceCents` is the column `price_cents`, `RateCardLine` the table `rate_card_line`. */
export class SnakeCase extends DefaultNamingStrategy {
  override tableName(className: string, customName: string | undefined): string {
    return customName ?? snake(className);
  }

  override columnName(propertyName: string, customName: string | undefined, prefixes: string[]): string {
    return [...prefixes, customName ?? snake(propertyName)].join('_');
  }
}

/** @example snake('startsOn') === 'starts_on' */
export function snake(name: string): string {
  return name.replace(/(?<=[a-z0-9])[A-Z]/g, (letter) => `_${letter}`).toLowerCase();
}

/** @example camel('starts_on') === 'startsOn' */
export function camel(name: string): string {
  return name.replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}
