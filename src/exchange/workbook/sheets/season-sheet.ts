/** Zones against weeks: minutes, which a person may change, water, rain counted, states, and what a week's sum would run. */
import type { PlantingSeason, SUPPLY_FIELDS, ZoneSeason } from '../../../engine/season/season.ts';
import { zoneFigure, zoneState } from '../../../engine/season/zone-week.ts';
import { zoneValue } from '../../csv/season-figures.ts';
import { stateText } from '../../csv/state-text.ts';
import { markOf } from '../../csv/week-marks.ts';
import { type Cells, greatestOf, over, sumOf, sumOfProducts, type Term, times } from '../formula.ts';
import { type CellContent, fixed, formula, mine, type Row, type SheetContent, text } from '../sheet-content.ts';
import type { PlantingFigures, PlantingsSheet } from './plantings-sheet.ts';
import {
  plainRow,
  rowNames,
  rowsOfWeek,
  summedRow,
  sumOfMeasure,
  sumOfWeeks,
  valuesOf,
  weekCell,
  weekly,
  weekSheet,
} from './week-rows.ts';
import { plantingRow, type Writing, type ZoneWriting, zoneRow } from './writing.ts';

/** Measures of all zones together, in the order of their rows. */
export const TOTALS = ['volume', 'rain', 'gross'] as const;
export type Total = (typeof TOTALS)[number];

export interface SeasonSheet {
  readonly content: SheetContent;
  /** What the formulas come to, by week. */
  readonly totals: Readonly<Record<Total, readonly number[]>>;
}

/** A zone at a time. */
export function* seasonSheet(writing: Writing, plantings: PlantingsSheet): Generator<undefined, SeasonSheet> {
  const { weeks } = writing.season.garden.span;
  const rows: Row[] = [];
  const totals: Record<Total, number[]> = { volume: zeros(weeks), rain: zeros(weeks), gross: zeros(weeks) };
  for (const [index, zone] of writing.zones.entries()) {
    const written = zoneCells(zone, plantings.figures[index] ?? [], writing);
    rows.push(...written.rows);
    for (const total of TOTALS) {
      written.values[total].forEach((value, week) => {
        totals[total][week] = (totals[total][week] as number) + value;
      });
    }
    yield;
  }
  rows.push(...TOTALS.map((total, index) => totalRow(total, writing.seasonTotalsRow + index, totals[total], writing)));
  return {
    content: weekSheet(writing.names.season, rows, writing),
    totals,
  };
}

const zeros = (weeks: number): number[] => weekly(weeks, () => 0);

function measureOf(row: 'volume' | 'rain' | 'gross', { csv, say }: Writing): string {
  return { volume: csv.measures.volume, rain: csv.measures.rain, gross: say.rows.gross }[row];
}

const BY_DAY = { volume: 'litres', rain: 'rainStayedLitres', gross: 'litres' } as const satisfies Readonly<
  Record<Total, keyof typeof SUPPLY_FIELDS>
>;

function totalRow(total: Total, row: number, values: readonly number[], writing: Writing): Row {
  const { season, say, format, amount } = writing;
  const cells = values.map((value, week) => formula(sumOfMeasure(row, week, value), 'volume'));
  const byDay = season.zones.reduce(
    (sum, zone) => sum + sumOfWeeks(zone.weeks, (week) => zoneFigure(zone, BY_DAY[total], week)),
    0,
  );
  const names = rowNames(
    { zone: say.allZones, measure: measureOf(total, writing), unit: format.unit('volume') },
    writing,
  );
  return summedRow(names, { row, kind: 'volume', cells, byDay: amount(byDay, 'volume') });
}

/** While it ran; of a week without a run what it would flow. */
export function meanFlowLpm(zone: ZoneSeason, week: number): number {
  const ran = zoneFigure(zone, 'minutes', week);
  return ran > 0 ? zoneFigure(zone, 'litres', week) / ran : zoneFigure(zone, 'flowLpm', week);
}

interface ZoneCells {
  readonly rows: readonly Row[];
  readonly values: Readonly<Record<Total, readonly number[]>>;
}

function zoneCells(writingZone: ZoneWriting, figures: readonly PlantingFigures[], writing: Writing): ZoneCells {
  const { zone } = writingZone;
  const { amount, say, csv, format } = writing;
  const { weeks } = zone;
  const rowOf = (row: Parameters<typeof zoneRow>[1]) => zoneRow(writingZone, row);
  const minutes = weekly(weeks, (week) => zoneValue(zone, 'minutes', week));
  const flows = weekly(weeks, (week) => amount(meanFlowLpm(zone, week), 'supplyFlow'));
  const withFlow = (row: 'minutes' | 'minutesNeeded', values: readonly (number | undefined)[]): CellContent[] =>
    weekly(weeks, (week) => {
      if (minutes[week] === undefined) return undefined;
      const ran = weekCell('', rowOf(row), week, values[week] ?? 0);
      return formula(times(ran, weekCell('', rowOf('flow'), week, flows[week] as number)), 'volume');
    });
  const needed = weekly(weeks, (week) =>
    minutes[week] === undefined ? undefined : formula(minutesNeeded(writingZone, figures, week, writing), 'minutes'),
  );
  const cells = {
    minutes: minutes.map((value) => (value === undefined ? undefined : mine(value, 'minutes'))),
    flow: flows.map((value, week) => (minutes[week] === undefined ? undefined : fixed(value, 'flow'))),
    volume: withFlow('minutes', minutes),
    rain: weekly(weeks, (week) =>
      minutes[week] === undefined ? undefined : rainCounted(writingZone, figures, week, writing),
    ),
    minutesNeeded: needed,
    gross: withFlow('minutesNeeded', valuesOf(needed)),
  };
  const names = (measure: string, unit = '', isMine = false) =>
    rowNames({ zone: zone.zone.name, measure, unit, isMine }, writing);
  const volume = format.unit('volume');
  const litres = (total: Total) =>
    amount(
      sumOfWeeks(weeks, (week) => zoneFigure(zone, BY_DAY[total], week)),
      'volume',
    );
  const summed = (row: Total) =>
    summedRow(names(measureOf(row, writing), volume), {
      row: rowOf(row),
      kind: 'volume',
      cells: cells[row],
      byDay: litres(row),
    });
  const inMinutes = (row: 'minutes' | 'minutesNeeded', measure: string) =>
    summedRow(names(measure, format.minuteUnit, row === 'minutes'), {
      row: rowOf(row),
      kind: 'minutes',
      cells: cells[row],
      byDay: sumOfWeeks(weeks, (week) => zoneFigure(zone, 'minutes', week)),
    });
  return {
    rows: [
      plainRow(names(csv.more.state), stateCells(writingZone, writing)),
      inMinutes('minutes', csv.measures.minutes),
      plainRow(names(say.rows.flow, format.unit('supplyFlow')), cells.flow),
      summed('volume'),
      summed('rain'),
      inMinutes('minutesNeeded', say.rows.minutesNeeded),
      summed('gross'),
      plainRow(names(csv.more.mark), markCells(writingZone, writing)),
      plainRow(names(csv.more.note), noteCells(writingZone)),
    ],
    values: { volume: valuesOf(cells.volume), rain: valuesOf(cells.rain), gross: valuesOf(cells.gross) },
  };
}

const stateCells = ({ zone }: ZoneWriting, { reader }: Writing): CellContent[] =>
  weekly(zone.weeks, (week) => text(stateText(zoneState(zone, week), reader)));

function markCells({ zone }: ZoneWriting, { season, format, today }: Writing): CellContent[] {
  const { firstDay } = season.garden.span;
  return weekly(zone.weeks, (week) => text(markOf({ zone, week, firstDay: firstDay + 7 * week, today }, format)));
}

const noteCells = ({ zone }: ZoneWriting): CellContent[] =>
  weekly(zone.weeks, (week) => text(zone.zone.choices.get(week)?.note ?? ''));

/** Empty where none of its plantings is in the ground. */
function rainCounted(
  zone: ZoneWriting,
  figures: readonly PlantingFigures[],
  week: number,
  writing: Writing,
): CellContent {
  if (zone.plantings.length === 0) return undefined;
  const range = rowsOfWeek(writing.on.plantings, plantingRow(zone, 'rain', 0), zone.plantings.length, week);
  return formula(
    sumOf(
      range,
      figures.map(({ rain }) => rain[week] as number),
    ),
    'volume',
  );
}

/** By the zone's rule, from what its plantings ask for; those behind a shut-off count where no other gets water. */
function minutesNeeded(zone: ZoneWriting, figures: readonly PlantingFigures[], week: number, { on }: Writing): Term {
  const flowing = (count: number) => figures.slice(0, count).some(({ flow }) => (flow[week] as number) > 0);
  const count = flowing(zone.open) ? zone.open : figures.length;
  const cellsOf = (row: 'minutes' | 'flow'): Cells => ({
    range: rowsOfWeek(on.plantings, plantingRow(zone, row, 0), count, week),
    values: figures.slice(0, count).map((each) => each[row][week] as number),
  });
  if (figures.length === 0) return { text: '0', value: 0 };
  const { rule } = zone.zone.zone;
  const named = rule.kind === 'planting' ? indexOf(zone.plantings, rule.plantingId) : -1;
  const ofNamed = figures[named];
  if (ofNamed !== undefined && (ofNamed.flow[week] as number) > 0) {
    return weekCell(on.plantings, plantingRow(zone, 'minutes', named), week, ofNamed.minutes[week] as number);
  }
  const minutes = cellsOf('minutes');
  if (rule.kind !== 'area-weighted') return greatestOf(minutes.range, minutes.values);
  const flow = cellsOf('flow');
  return over(sumOfProducts(minutes, flow), sumOf(flow.range, flow.values));
}

const indexOf = (plantings: readonly PlantingSeason[], id: string): number =>
  plantings.findIndex(({ planting }) => planting.id === id);
