/** What some zones' season comes to, in the figures that a remedy promises. */

import { fieldByWeek } from '../../engine/season/field-by-week.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { type Season, SUPPLY_FIELDS, ZONE_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';

export interface MixFigures {
  /** Gross irrigation. */
  readonly litres: number;
  /** Irrigation that went below the roots. */
  readonly drainedLitres: number;
  /** What the plants would have used beyond what they could. */
  readonly unmetLitres: number;
  /** Days short of water, all plantings together. */
  readonly shortDays: number;
}

/** Sums over the weeks of the named zones; a zone that is not in the season adds nothing. */
export function mixFigures(season: Season, zoneIds: readonly string[]): MixFigures {
  return sumOver(season.zones.filter(({ zone }) => zoneIds.includes(zone.id)));
}

/** Of the whole garden. */
export function gardenFigures({ zones, totals: { figures } }: Season): MixFigures {
  const litres = fieldByWeek(figures, SUPPLY_FIELDS.litres);
  // Added up as every other view has it: the same water by another way may round to another number.
  return { ...sumOver(zones), litres: litres.reduce((sum, week) => sum + week, 0) };
}

function sumOver(zones: readonly ZoneSeason[]): MixFigures {
  const figures = { litres: 0, drainedLitres: 0, unmetLitres: 0, shortDays: 0 };
  for (const zone of zones) addZone(figures, zone);
  return figures;
}

function addZone(sums: { -readonly [Key in keyof MixFigures]: number }, zone: ZoneSeason): void {
  const zoneFigure = (field: number, week: number) => zone.figures.at(field, week);
  for (let week = 0; week < zone.weeks; week++) {
    sums.litres += zoneFigure(ZONE_FIELDS.litres, week);
    sums.unmetLitres += zoneFigure(ZONE_FIELDS.demandLitres, week) - zoneFigure(ZONE_FIELDS.usedLitres, week);
    for (const planting of zone.plantings) {
      const { areaM2 } = planting.planting;
      sums.drainedLitres += plantingFigure(planting, 'irrigationDrainedMm', week) * areaM2;
      sums.shortDays += plantingFigure(planting, 'shortDays', week);
    }
  }
}
