/** Sums that the sheet shows: a planting's and the garden's week, and the whole season of each kind of row. */
import { openMinutes, plantingFigure } from '../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../engine/season/season.ts';
import { zoneFigure } from '../engine/season/zone-week.ts';

export interface ZoneTotal {
  readonly litres: number;
  readonly minutes: number;
  /** Rain counted. */
  readonly rainMm: number;
}

/** A zone's whole season. */
export function zoneTotal(zone: ZoneSeason): ZoneTotal {
  const sumOf = (field: 'litres' | 'minutes' | 'rainCreditMm') => {
    let sum = 0;
    for (let week = 0; week < zone.weeks; week++) sum += zoneFigure(zone, field, week);
    return sum;
  };
  return { litres: sumOf('litres'), minutes: sumOf('minutes'), rainMm: sumOf('rainCreditMm') };
}

export interface PlantingTotal {
  readonly litres: number;
  /** Minutes for which its line ran. */
  readonly minutes: number;
  /** Rain that its roots kept, mm. */
  readonly rainMm: number;
  readonly neededLitres: number;
  /** Net irrigation as a share of the need; undefined where nothing to speak of is needed. */
  readonly metShare: number | undefined;
}

/** Needs below this round to nothing in any unit; a ratio to them would say nothing. */
const LEAST_NEED_MM = 0.05;

export function plantingWeek(zone: ZoneSeason, member: PlantingSeason, week: number): PlantingTotal {
  return sumOfWeeks(zone, member, week, week + 1);
}

/** A planting's whole season. */
export function plantingTotal(zone: ZoneSeason, member: PlantingSeason): PlantingTotal {
  return sumOfWeeks(zone, member, 0, member.weeks);
}

function sumOfWeeks(zone: ZoneSeason, member: PlantingSeason, first: number, end: number): PlantingTotal {
  const sum = { litres: 0, minutes: 0, rainMm: 0, neededLitres: 0, neededMm: 0, netMm: 0 };
  for (let week = first; week < end; week++) {
    const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(member, field, week);
    sum.litres += at('litres');
    sum.minutes += openMinutes(zone, member, week);
    sum.rainMm += at('rainSoakedMm') - at('rainDrainedMm');
    sum.neededLitres += at('neededLitres');
    sum.neededMm += at('neededMm');
    sum.netMm += at('irrigationNetMm');
  }
  const { litres, minutes, rainMm, neededLitres, neededMm, netMm } = sum;
  return { litres, minutes, rainMm, neededLitres, metShare: neededMm < LEAST_NEED_MM ? undefined : netMm / neededMm };
}

/** All zones together. */
export interface GardenTotal {
  readonly litres: number;
  /** Minutes of all zones, one after the other. */
  readonly minutes: number;
  /** Gross irrigation that the rain counted stood in for, litres. */
  readonly savedLitres: number;
}

/** Made once for the same season. */
const gardenWeeks = new WeakMap<Season, readonly GardenTotal[]>();

export function gardenWeek(season: Season, week: number): GardenTotal {
  const known = gardenWeeks.get(season) ?? weeksOfZones(season);
  gardenWeeks.set(season, known);
  return known[week] as GardenTotal;
}

/** Zone by zone, as their figures lie. */
function weeksOfZones({ zones, totals: { weeks } }: Season): readonly GardenTotal[] {
  const totals = Array.from({ length: weeks }, () => ({ litres: 0, minutes: 0, savedLitres: 0 }));
  for (const zone of zones) {
    for (const [week, total] of totals.entries()) {
      total.litres += zoneFigure(zone, 'litres', week);
      total.minutes += zoneFigure(zone, 'minutes', week);
      total.savedLitres += zoneFigure(zone, 'rainCreditLitres', week);
    }
  }
  return totals;
}

/** The garden's whole season. */
export function gardenSeason(season: Season): GardenTotal {
  const total = { litres: 0, minutes: 0, savedLitres: 0 };
  for (let week = 0; week < season.totals.weeks; week++) {
    const { litres, minutes, savedLitres } = gardenWeek(season, week);
    total.litres += litres;
    total.minutes += minutes;
    total.savedLitres += savedLitres;
  }
  return total;
}

/** m2 of the plantings that are in the ground in a week. */
export function groundM2(zone: ZoneSeason, week: number): number {
  let areaM2 = 0;
  for (const planting of zone.plantings) {
    if (plantingFigure(planting, 'groundDays', week) > 0) areaM2 += planting.planting.areaM2;
  }
  return areaM2;
}
