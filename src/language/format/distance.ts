import type { Reader } from '../reader.ts';

const KM_PER_MILE = 1.609344;

/** A distance over land as one would say it, in whole miles or kilometers, from a hundred on in tens: `30 mi`, `920 km`. */
export function formatDistance(km: number, { locale, units }: Pick<Reader, 'locale' | 'units'>): string {
  const [value, unit] = units === 'us' ? [km / KM_PER_MILE, 'mile'] : [km, 'kilometer'];
  const rounded = value < 100 ? Math.round(value) : 10 * Math.round(value / 10);
  return new Intl.NumberFormat(locale, { style: 'unit', unit }).format(rounded).replaceAll(' ', '\u00a0');
}
