/** What a week of a zone or a planting is read by, one row a measure. Whoever must answer for each has a `Record<WeekMeasure, ...>`. */
import { openMinutes, plantingFigure } from './season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from './season/season.ts';
import { zoneFigure } from './season/zone-week.ts';
import type { Quantity } from './units.ts';

export interface WeekMeasureFacts {
  /** What its figures are of, in the engine's unit; undefined for minutes. */
  readonly quantity: Quantity | undefined;
  readonly ofZone: (zone: ZoneSeason, week: number) => number;
  readonly ofPlanting: (planting: PlantingSeason, week: number, zone: ZoneSeason) => number;
}

export const WEEK_MEASURES = {
  /** Gross, as a meter would show it. */
  volume: {
    quantity: 'volume',
    ofZone: (zone, week) => zoneFigure(zone, 'litres', week),
    ofPlanting: (planting, week) => plantingFigure(planting, 'litres', week),
  },
  /** Of a planting those for which its line ran. */
  minutes: {
    quantity: undefined,
    ofZone: (zone, week) => zoneFigure(zone, 'minutes', week),
    ofPlanting: (planting, week, zone) => openMinutes(zone, planting, week),
  },
  /** Rain counted; of a planting what its roots kept. */
  rain: {
    quantity: 'depth',
    ofZone: (zone, week) => zoneFigure(zone, 'rainCreditMm', week),
    ofPlanting: (planting, week) =>
      plantingFigure(planting, 'rainSoakedMm', week) - plantingFigure(planting, 'rainDrainedMm', week),
  },
} as const satisfies Readonly<Record<string, WeekMeasureFacts>>;

export type WeekMeasure = keyof typeof WEEK_MEASURES;
