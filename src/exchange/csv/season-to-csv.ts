/** A season as CSV, for a spreadsheet: a row for each zone (and planting) and measure, a column for each week. */
import Papa from 'papaparse';
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';
import { csvWords } from '../../language/en/csv.ts';
import { symbolOf } from '../../language/format/quantity.ts';
import { FORMULA_START } from '../../language/format/spreadsheet-text.ts';
import { type Reader, readerFor } from '../../language/reader.ts';

export type Measure = 'gallons' | 'minutes' | 'rain';

export interface CsvChoice {
  readonly units: UnitSystem;
  /** BCP 47: whose language the headings are in; left out, English. */
  readonly locale?: string | undefined;
  /** Which measures; each is a row of its own. */
  readonly measures: readonly Measure[];
  /** Ids of the zones to write, in this order; left out: all. */
  readonly zones?: readonly string[] | undefined;
  /** Of all zones, or of those with these ids. */
  readonly withPlantings?: boolean | ReadonlySet<string> | undefined;
  /** Weeks of the season, from 0, that are left out; the season's sum is of all weeks. */
  readonly withoutWeeks?: ReadonlySet<number> | undefined;
}

/** Decimals that are kept: more than any screen shows, few enough to read. */
const DECIMALS = 3;

/**
 * Numbers have a point and no unit, as data files do; the unit has a column of its own. A name that a spreadsheet would
 * take for a formula is written so that it stays a name. Lines end as RFC 4180 has it.
 */
export function seasonToCsv(season: Season, choice: CsvChoice): string {
  const { firstDay, weeks } = season.garden.span;
  const { measures, units, withPlantings, withoutWeeks } = choice;
  const shown = Array.from({ length: weeks }, (_, week) => week).filter((week) => !withoutWeeks?.has(week));
  const reader = readerFor(choice.locale ?? 'en', units);
  const { headings } = csvWords(reader.language);
  const write = { reader, weeks: shown };
  const zones = choice.zones?.flatMap((id) => season.zones.filter(({ zone }) => zone.id === id)) ?? season.zones;
  const rows = zones.flatMap((zone) => [
    ...measures.map((measure) => zoneRow(zone, measure, write)),
    ...plantingsOf(zone, withPlantings).flatMap((each) =>
      measures.map((measure) => plantingRow(zone, each, measure, write)),
    ),
  ]);
  const dates = shown.map((week) => isoDate(firstDay + 7 * week));
  const { zone, planting, measure, unit, season: sum } = headings;
  const header = [zone, planting, measure, unit, ...dates, sum];
  return `${Papa.unparse([header, ...rows], { escapeFormulae: FORMULA_START, newline: '\r\n' })}\r\n`;
}

function plantingsOf({ zone, plantings }: ZoneSeason, which: CsvChoice['withPlantings']): readonly PlantingSeason[] {
  return which === true || (typeof which === 'object' && which.has(zone.id)) ? plantings : [];
}

type Row = (string | number)[];

const QUANTITIES: Readonly<Record<Measure, Quantity | undefined>> = {
  gallons: 'volume',
  minutes: undefined,
  rain: 'depth',
};

const ZONE_FIELD = { gallons: 'litres', minutes: 'minutes', rain: 'rainCreditMm' } as const;

/** For whom, and which weeks. */
interface Written {
  readonly reader: Reader;
  readonly weeks: readonly number[];
}

function zoneRow(season: ZoneSeason, measure: Measure, written: Written): Row {
  const values = weekly(season.weeks, (week) => zoneFigure(season, ZONE_FIELD[measure], week));
  return row([season.zone.name, ''], measure, values, written);
}

function plantingRow(zone: ZoneSeason, season: PlantingSeason, measure: Measure, written: Written): Row {
  const values = weekly(season.weeks, (week) => plantingValue(zone, season, measure, week));
  return row([zone.zone.name, season.planting.name], measure, values, written);
}

function plantingValue(zone: ZoneSeason, season: PlantingSeason, measure: Measure, week: number): number {
  if (measure === 'gallons') return plantingFigure(season, 'litres', week);
  if (measure === 'minutes') return zoneFigure(zone, 'minutesPerDay', week) * plantingFigure(season, 'openDays', week);
  return plantingFigure(season, 'rainSoakedMm', week) - plantingFigure(season, 'rainDrainedMm', week);
}

function weekly(weeks: number, value: (week: number) => number): number[] {
  return Array.from({ length: weeks }, (_, week) => value(week));
}

function row(names: readonly string[], measure: Measure, values: readonly number[], { reader, weeks }: Written): Row {
  const { units, language } = reader;
  const quantity = QUANTITIES[measure];
  const unit = symbolOf(quantity === undefined ? 'min' : unitOf(quantity, units).name, language);
  const inUnit = values.map((value) => round(quantity === undefined ? value : fromSi(value, quantity, units)));
  const sum = round(inUnit.reduce((total, value) => total + value, 0));
  return [...names, csvWords(language).measures[measure], unit, ...weeks.map((week) => inUnit[week] as number), sum];
}

function round(value: number): number {
  return Number(value.toFixed(DECIMALS));
}
