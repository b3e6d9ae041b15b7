/** A zone's whole season. */
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';

export interface ZoneTotal {
  readonly litres: number;
  readonly minutes: number;
  readonly rainMm: number;
}

export function zoneTotal(zone: ZoneSeason): ZoneTotal {
  return { litres: sumOf(zone, 'litres'), minutes: sumOf(zone, 'minutes'), rainMm: sumOf(zone, 'rainCreditMm') };
}

function sumOf(zone: ZoneSeason, field: 'litres' | 'minutes' | 'rainCreditMm'): number {
  let sum = 0;
  for (let week = 0; week < zone.weeks; week++) sum += zoneFigure(zone, field, week);
  return sum;
}
