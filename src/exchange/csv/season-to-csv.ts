/** A season as CSV, for a spreadsheet: a row for each zone (and planting) and measure, a column for each week. */
import Papa from 'papaparse';
import { isoDate } from '../../engine/calendar.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { fromSi, type UnitSystem, unitOf } from '../../engine/units.ts';
import { WEEK_MEASURES, type WeekMeasure } from '../../engine/week-measures.ts';
import { csvWords } from '../../language/en/csv.ts';
import { symbolOf } from '../../language/format/quantity.ts';
import { FORMULA_START } from '../../language/format/spreadsheet-text.ts';
import { type Reader, readerFor } from '../../language/reader.ts';

export interface CsvChoice {
  readonly units: UnitSystem;
  /** BCP 47: whose language the headings are in; left out, English. */
  readonly locale?: string | undefined;
  /** Which measures; each is a row of its own. */
  readonly measures: readonly WeekMeasure[];
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

/** For whom, and which weeks. */
interface Written {
  readonly reader: Reader;
  readonly weeks: readonly number[];
}

function zoneRow(season: ZoneSeason, measure: WeekMeasure, written: Written): Row {
  const values = weekly(season.weeks, (week) => WEEK_MEASURES[measure].ofZone(season, week));
  return row([season.zone.name, ''], measure, values, written);
}

function plantingRow(zone: ZoneSeason, season: PlantingSeason, measure: WeekMeasure, written: Written): Row {
  const values = weekly(season.weeks, (week) => WEEK_MEASURES[measure].ofPlanting(season, week, zone));
  return row([zone.zone.name, season.planting.name], measure, values, written);
}

function weekly(weeks: number, value: (week: number) => number): number[] {
  return Array.from({ length: weeks }, (_, week) => value(week));
}

function row(
  names: readonly string[],
  measure: WeekMeasure,
  values: readonly number[],
  { reader, weeks }: Written,
): Row {
  const { units, language } = reader;
  const { quantity } = WEEK_MEASURES[measure];
  const unit = symbolOf(quantity === undefined ? 'min' : unitOf(quantity, units).name, language);
  const inUnit = values.map((value) => round(quantity === undefined ? value : fromSi(value, quantity, units)));
  const sum = round(inUnit.reduce((total, value) => total + value, 0));
  return [...names, csvWords(language).measures[measure], unit, ...weeks.map((week) => inUnit[week] as number), sum];
}

function round(value: number): number {
  return Number(value.toFixed(DECIMALS));
}
