/** A season's weeks as a flat list, to lay a law beside each. */
import type { GardenPlanting, GardenZone } from '../../src/engine/garden.ts';
import { fieldByWeek } from '../../src/engine/season/field-by-week.ts';
import { type PlantingWeek, plantingWeek } from '../../src/engine/season/planting-week.ts';
import { type Season, SUPPLY_FIELDS } from '../../src/engine/season/season.ts';
import type { WeekFigures } from '../../src/engine/season/week-figures.ts';
import { type ZoneWeek, zoneWeek } from '../../src/engine/season/zone-week.ts';

/** Fields of a zone's minutes on each day of a week. */
export const MINUTES_BY_DAY = [
  'minutesDay0',
  'minutesDay1',
  'minutesDay2',
  'minutesDay3',
  'minutesDay4',
  'minutesDay5',
  'minutesDay6',
] as const;

export interface PlantingRow {
  readonly zone: GardenZone;
  readonly planting: GardenPlanting;
  readonly week: PlantingWeek;
}

export function plantingRows({ zones, garden }: Season): readonly PlantingRow[] {
  const weeks = Array.from({ length: garden.span.weeks }, (_, week) => week);
  return zones.flatMap(({ zone, plantings }) =>
    plantings.flatMap((season) =>
      weeks.map((week) => ({ zone, planting: season.planting, week: plantingWeek(season, week) })),
    ),
  );
}

export function zoneRows({ zones, garden }: Season): readonly { readonly zone: GardenZone; readonly week: ZoneWeek }[] {
  const weeks = Array.from({ length: garden.span.weeks }, (_, week) => week);
  return zones.flatMap((season) => weeks.map((week) => ({ zone: season.zone, week: zoneWeek(season, week) })));
}

/** Litres of the whole garden by week. */
export function litresByWeek({ totals }: Season): readonly number[] {
  return [...fieldByWeek(totals.figures, SUPPLY_FIELDS.litres)];
}

/** The figures of all zones and their plantings, in order, as they are now, for a comparison to the last bit. */
export function allFigures({ zones, totals }: Season): readonly (readonly number[])[] {
  return [...zones, totals].map(({ figures }) => allOf(figures));
}

/** Week after week, field after field. */
export function allOf(figures: WeekFigures): readonly number[] {
  const { weeks, fields } = figures;
  return Array.from({ length: weeks * fields }, (_, at) => figures.at(at % fields, Math.floor(at / fields)));
}
