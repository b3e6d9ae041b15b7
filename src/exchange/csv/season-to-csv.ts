/** A season as CSV, for a spreadsheet: a row for each zone (and planting) and measure, a column for each week. */
import { writeCsv } from 'hucre/csv';
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { runThrough } from '../../engine/run-through.ts';
import { countDays } from '../../engine/season/days-mask.ts';
import { plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { heldMask } from '../../engine/season/week-masks.ts';
import { zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import { fromSi, type Quantity, type UnitSystem, unitOf } from '../../engine/units.ts';
import { weekSum } from '../../engine/weather.ts';
import { csvWords } from '../../language/en/csv.ts';
import { formatFor } from '../../language/format/format.ts';
import { symbolOf } from '../../language/format/quantity.ts';
import { toSpreadsheetText } from '../../language/format/spreadsheet-text.ts';
import { readerFor } from '../../language/reader.ts';
import { groundRows, type WettedDepths, wettedDepths } from './ground-rows.ts';
import { originsOf, type ReadingKind } from './reading-origins.ts';
import { plantingValue, SEASON_FIGURES, type SeasonFigure, zoneValue } from './season-figures.ts';
import { plainRow, type Row, round, textRow, type Written } from './season-rows.ts';
import { stateText } from './state-text.ts';
import { markOf } from './week-marks.ts';

export interface CsvChoice {
  readonly units: UnitSystem;
  /** BCP 47: whose language the headings are in; left out, English. */
  readonly locale?: string | undefined;
  /** Which figures; each is a row of its own. */
  readonly measures: readonly SeasonFigure[];
  /**
   * Rows for what is no figure of a zone: rain and reference ET, and where they come from; each zone's watering days, flow, cut, states, where its runs come from, and
   * notes; each planting's states, what of its ground is wetted and how deep, mulch, roots, pots, leaching, and why it asks for no water.
   */
  readonly withRecords?: boolean | undefined;
  /** Weeks before it that are not logged are said to be assumed; left out: none is. */
  readonly today?: DayNumber | undefined;
  /** Ids of the zones to write, in this order; left out: all. */
  readonly zones?: readonly string[] | undefined;
  /** Of all zones, or of those with these ids. */
  readonly withPlantings?: boolean | ReadonlySet<string> | undefined;
  /** Weeks of the season, from 0, that are left out; the season's sum is of all weeks. */
  readonly withoutWeeks?: ReadonlySet<number> | undefined;
}

/**
 * Numbers have a point and no unit, as data files do; the unit has a column of its own. A cell is empty where nothing is in the ground. A
 * name that a spreadsheet would take for a formula is written so that it stays a name. Lines end as RFC 4180 has it.
 */
export function seasonToCsv(season: Season, choice: CsvChoice): string {
  return runThrough(seasonCsvSteps(season, choice));
}

/** The same a zone at a time. */
export function* seasonCsvSteps(season: Season, choice: CsvChoice): Generator<undefined, string> {
  const { firstDay, weeks } = season.garden.span;
  const { units, withoutWeeks, withRecords } = choice;
  const shown = Array.from({ length: weeks }, (_, week) => week).filter((week) => !withoutWeeks?.has(week));
  const reader = readerFor(choice.locale ?? 'en', units);
  const write: Written = { reader, season, weeks: shown, today: choice.today };
  const dates = shown.map((week) => isoDate(firstDay + 7 * week));
  const { zone, planting, measure, unit, season: sum } = csvWords(reader.language).headings;
  const header = [zone, planting, measure, unit, ...dates, sum];
  const parts = [textOf([header, ...(withRecords ? weatherRows(write) : [])])];
  const zones = choice.zones?.flatMap((id) => season.zones.filter((each) => each.zone.id === id)) ?? season.zones;
  for (const each of zones) {
    yield;
    parts.push(textOf(rowsOf(each, choice, write)));
  }
  return parts.join('');
}

const LINE_END = '\r\n';

const textOf = (rows: readonly Row[]): string =>
  rows.length === 0 ? '' : writeCsv(rows.map((row) => row.map(asCell))) + LINE_END;

const asCell = (cell: Row[number]): Row[number] => (typeof cell === 'string' ? toSpreadsheetText(cell) : cell);

function rowsOf(zone: ZoneSeason, { measures, withPlantings, withRecords }: CsvChoice, write: Written): readonly Row[] {
  const plantings = plantingsOf(zone, withPlantings);
  const depths: WettedDepths = withRecords && plantings.length > 0 ? wettedDepths(zone, write) : new Map();
  return [
    ...measures.map((measure) => zoneRow(zone, measure, write)),
    ...(withRecords ? recordRows(zone, write) : []),
    ...plantings.flatMap((each) => [
      ...measures.map((measure) => plantingRow(zone, each, measure, write)),
      ...(withRecords ? [plantingStates(zone, each, write), ...groundRows(zone, each, depths, write)] : []),
    ]),
  ];
}

function plantingsOf({ zone, plantings }: ZoneSeason, which: CsvChoice['withPlantings']): readonly PlantingSeason[] {
  return which === true || (typeof which === 'object' && which.has(zone.id)) ? plantings : [];
}

function zoneRow(zone: ZoneSeason, figure: SeasonFigure, written: Written): Row {
  const values = weekly(zone.weeks, (week) => zoneValue(zone, figure, week));
  return figureRow([zone.zone.name, '', nameOf(figure, written)], SEASON_FIGURES[figure].quantity, values, written);
}

function plantingRow(zone: ZoneSeason, planting: PlantingSeason, figure: SeasonFigure, written: Written): Row {
  const values = weekly(zone.weeks, (week) => plantingValue(planting, figure, week, zone));
  const names = [zone.zone.name, planting.planting.name, nameOf(figure, written)];
  return figureRow(names, SEASON_FIGURES[figure].quantity, values, written);
}

function nameOf(figure: SeasonFigure, { reader }: Written): string {
  const { measures, more } = csvWords(reader.language);
  return { ...measures, ...more }[figure];
}

function weatherRows(written: Written): readonly Row[] {
  const { season, reader } = written;
  const { weather, garden, cuts } = season;
  const { more } = csvWords(reader.language);
  const format = formatFor(reader);
  const fromRow = (name: string, kind: ReadingKind) =>
    textRow(['', '', name], (week) => originsOf(season, kind, week, format), written);
  const byWeek = (mm: Float64Array) => weekly(garden.span.weeks, (week) => weekSum(mm, week));
  return [
    figureRow(['', '', more.rainFell], 'depth', byWeek(weather.rain.mm), written),
    fromRow(more.rainFrom, 'rain'),
    figureRow(['', '', more.eto], 'depth', byWeek(weather.eto.mm), written),
    fromRow(more.etoFrom, 'eto'),
    ...(cuts === undefined
      ? []
      : [
          figureRow(['', '', more.cutAsked], 'volume', [...cuts.askedLitres], written),
          figureRow(['', '', more.cutUntaken], 'volume', [...cuts.untakenLitres], written),
        ]),
  ];
}

/** Its watering days, its flow at the pressure that is there and, in a season with a cut, what that takes: figures that do not add up. */
function stateRows(zone: ZoneSeason, written: Written): readonly Row[] {
  const { reader, season } = written;
  const { more } = csvWords(reader.language);
  const { name } = zone.zone;
  const flow = (week: number) => round(fromSi(zoneFigure(zone, 'flowLpm', week), 'supplyFlow', reader.units));
  const symbol = symbolOf(unitOf('supplyFlow', reader.units).name, reader.language);
  return [
    plainRow([name, '', more.wateringDays, ''], (week) => countDays(heldMask(zone.zone, week)), written),
    plainRow([name, '', more.flow, symbol], flow, written),
    ...(season.cuts === undefined
      ? []
      : [plainRow([name, '', more.cutShare, ''], (week) => round(zoneFigure(zone, 'cutShare', week)), written)]),
  ];
}

/** States, where the runs come from, and notes; those only where there is one. */
function recordRows(zone: ZoneSeason, written: Written): readonly Row[] {
  const { reader, season, today } = written;
  const { more } = csvWords(reader.language);
  const { firstDay } = season.garden.span;
  const format = formatFor(reader);
  const noteOf = (week: number) => zone.zone.choices.get(week)?.note ?? '';
  const mark = (week: number) => markOf({ zone, week, firstDay: firstDay + 7 * week, today }, format);
  const state = (week: number) => stateText(zoneState(zone, week), reader);
  return [
    ...stateRows(zone, written),
    textRow([zone.zone.name, '', more.state], state, written),
    textRow([zone.zone.name, '', more.mark], mark, written),
    ...(written.weeks.some((week) => noteOf(week) !== '')
      ? [textRow([zone.zone.name, '', more.note], noteOf, written)]
      : []),
  ];
}

function plantingStates(zone: ZoneSeason, planting: PlantingSeason, written: Written): Row {
  const { more } = csvWords(written.reader.language);
  const state = (week: number) => stateText(plantingState(planting, week), written.reader);
  return textRow([zone.zone.name, planting.planting.name, more.state], state, written);
}

function weekly<Value>(weeks: number, value: (week: number) => Value): Value[] {
  return Array.from({ length: weeks }, (_, week) => value(week));
}

function figureRow(
  names: readonly string[],
  quantity: Quantity | undefined,
  values: readonly (number | undefined)[],
  { reader, weeks }: Written,
): Row {
  const { units, language } = reader;
  const unit = symbolOf(quantity === undefined ? 'min' : unitOf(quantity, units).name, language);
  const inUnit = values.map((value) =>
    value === undefined ? '' : round(quantity === undefined ? value : fromSi(value, quantity, units)),
  );
  const sum = round(inUnit.reduce((total: number, value) => total + (value === '' ? 0 : value), 0));
  return [...names, unit, ...weeks.map((week) => inUnit[week] as number | ''), sum];
}
