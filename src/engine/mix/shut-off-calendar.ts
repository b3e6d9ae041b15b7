/** A shut-off's season as somebody follows it in the garden: so many weeks open on these days, then on those. */
import { countDays } from '../season/days-mask.ts';
import { plantingFigure } from '../season/planting-week.ts';
import type { ZoneSeason } from '../season/season.ts';
import { weekMask } from '../season/week-masks.ts';
import { zoneFigure } from '../season/zone-week.ts';

/** Weeks in a row in which a shut-off stands the same. */
export interface ShutOffStretch {
  readonly firstWeek: number;
  readonly lastWeek: number;
  /** Watering days on which it is open, k of n. */
  readonly openDays: number;
  readonly wateringDays: number;
  /** Those days, bit 0 = the week's first day. */
  readonly openMask: number;
}

/**
 * The stretches of the weeks in which a planting is in the ground and its zone runs; weeks of neither kind stand in no
 * stretch and end none, since nobody needs to turn a valve in them. Throws a RangeError for a planting that is not in the zone.
 */
export function shutOffCalendar(zone: ZoneSeason, plantingId: string): readonly ShutOffStretch[] {
  const planting = zone.plantings.find((candidate) => candidate.planting.id === plantingId);
  if (planting === undefined) throw new RangeError(`no planting "${plantingId}" in zone "${zone.zone.id}"`);
  const stretches: ShutOffStretch[] = [];
  for (let week = 0; week < zone.weeks; week++) {
    if (zoneFigure(zone, 'minutes', week) === 0 || plantingFigure(planting, 'groundDays', week) === 0) continue;
    const openMask = plantingFigure(planting, 'openMask', week);
    const openDays = countDays(openMask);
    const wateringDays = countDays(weekMask(zone.zone, week));
    const last = stretches.at(-1);
    const isSame = last?.openMask === openMask && last.wateringDays === wateringDays;
    if (isSame) stretches[stretches.length - 1] = { ...last, lastWeek: week };
    else stretches.push({ firstWeek: week, lastWeek: week, openDays, wateringDays, openMask });
  }
  return stretches;
}
