/** A season as CSV, for a spreadsheet: a row for each zone (and planting) and measure, a column for each week. */
import Papa from 'papaparse';
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';

export type Measure = 'gallons' | 'minutes' | 'rain';

export interface CsvChoice {
  readonly units: UnitSystem;
  /** Which measures; each is a row of its own. */
  readonly measures: readonly Measure[];
  /** Ids of the zones to write, in this order; left out: all. */
  readonly zones?: readonly string[] | undefined;
  readonly withPlantings?: boolean | undefined;
}

/** Decimals that are kept: more than any screen shows, few enough to read. */
const DECIMALS = 3;

/**
 * Numbers have a point and no unit, as data files do; the unit has a column of its own. A name that a spreadsheet would
 * take for a formula is written so that it stays a name. Lines end as RFC 4180 has it.
 */
export function seasonToCsv(season: Season, choice: CsvChoice): string {
  const { firstDay, weeks } = season.garden.span;
  const dates = Array.from({ length: weeks }, (_, week) => isoDate(firstDay + 7 * week));
  const zones = choice.zones?.flatMap((id) => season.zones.filter(({ zone }) => zone.id === id)) ?? season.zones;
  const rows = zones.flatMap((zone) => [
    ...choice.measures.map((measure) => zoneRow(zone, measure, choice.units)),
    ...(choice.withPlantings
      ? zone.plantings.flatMap((each) =>
          choice.measures.map((measure) => plantingRow(zone, each, measure, choice.units)),
        )
      : []),
  ]);
  const header = ['Zone', 'Planting', 'Measure', 'Unit', ...dates, 'Season'];
  return `${Papa.unparse([header, ...rows], { escapeFormulae: true, newline: '\r\n' })}\r\n`;
}

type Row = (string | number)[];

const LABELS: Readonly<Record<Measure, string>> = {
  gallons: 'Water to apply',
  minutes: 'Minutes to run',
  rain: 'Rain counted',
};

const QUANTITIES: Readonly<Record<Measure, Quantity | undefined>> = {
  gallons: 'volume',
  minutes: undefined,
  rain: 'depth',
};

const ZONE_FIELD = { gallons: 'litres', minutes: 'minutes', rain: 'rainCreditMm' } as const;

function zoneRow(season: ZoneSeason, measure: Measure, units: UnitSystem): Row {
  const values = weekly(season.weeks, (week) => zoneFigure(season, ZONE_FIELD[measure], week));
  return row([season.zone.name, ''], measure, values, units);
}

function plantingRow(zone: ZoneSeason, season: PlantingSeason, measure: Measure, units: UnitSystem): Row {
  const values = weekly(season.weeks, (week) => plantingValue(zone, season, measure, week));
  return row([zone.zone.name, season.planting.name], measure, values, units);
}

function plantingValue(zone: ZoneSeason, season: PlantingSeason, measure: Measure, week: number): number {
  if (measure === 'gallons') return plantingFigure(season, 'litres', week);
  if (measure === 'minutes') return zoneFigure(zone, 'minutesPerDay', week) * plantingFigure(season, 'openDays', week);
  return plantingFigure(season, 'rainSoakedMm', week) - plantingFigure(season, 'rainDrainedMm', week);
}

function weekly(weeks: number, value: (week: number) => number): number[] {
  return Array.from({ length: weeks }, (_, week) => value(week));
}

function row(names: readonly string[], measure: Measure, values: readonly number[], units: UnitSystem): Row {
  const quantity = QUANTITIES[measure];
  const unit = quantity === undefined ? 'min' : unitOf(quantity, units).name;
  const shown = values.map((value) => round(quantity === undefined ? value : fromSi(value, quantity, units)));
  const sum = round(shown.reduce((total, value) => total + value, 0));
  return [...names, LABELS[measure], unit, ...shown, sum];
}

function round(value: number): number {
  return Number(value.toFixed(DECIMALS));
}
