/** What each planting needs in each week: factors of the daily calculation, and formulas over weather and area. */

import { openMinutes, plantingFigure, plantingState } from '../../../engine/season/planting-week.ts';
import { PLANTING_FIELDS as P, type PlantingSeason, type ZoneSeason } from '../../../engine/season/season.ts';
import type { PlantingVolume } from '../../../engine/season/volume-depths.ts';
import { atLeastZero, less, over, type Term, times } from '../formula.ts';
import {
  type CellContent,
  cellName,
  fixed,
  formula,
  mine,
  type NumberKind,
  type Row,
  type SheetContent,
} from '../sheet-content.ts';
import { ETO_ROW, RAIN_ROW, type WeatherSheet } from './weather-sheet.ts';
import { plainRow, rowNames, summedRow, sumOfMeasure, sumOfWeeks, weekCell, weekly, weekSheet } from './week-rows.ts';
import {
  PLANTING_ROWS,
  type PlantingRow,
  plantingRow,
  SEASON_COLUMN,
  volumePerDepth,
  type Writing,
  type ZoneWriting,
} from './writing.ts';

/** What the formulas of a planting's row come to, by week; 0 where nothing is in the ground. */
export type PlantingFigures = Readonly<Record<'flow' | 'use' | 'rain' | 'gross' | 'minutes', readonly number[]>>;

export interface PlantingsSheet {
  readonly content: SheetContent;
  /** In the order of its rows, by zone. */
  readonly figures: readonly (readonly PlantingFigures[])[];
  readonly use: readonly number[];
}

/** A zone at a time. */
export function* plantingsSheet(writing: Writing, weather: WeatherSheet): Generator<undefined, PlantingsSheet> {
  const rows: Row[] = [];
  const figures: (readonly PlantingFigures[])[] = [];
  for (const zone of writing.zones) {
    const written: PlantingCells[] = [];
    for (let index = 0; index < zone.plantings.length; index += 1) {
      written.push(plantingCells(zone, index, weather, writing));
      yield;
    }
    for (const row of PLANTING_ROWS) rows.push(...written.map((each) => each.rows[row]));
    figures.push(written.map((each) => each.figures));
  }
  const { weeks } = writing.season.garden.span;
  const use = weekly(weeks, (week) =>
    figures.flat().reduce((sum, planting) => sum + (planting.use[week] as number), 0),
  );
  rows.push(totalRow(use, writing));
  return {
    content: weekSheet(writing.names.plantings, rows, writing),
    figures,
    use,
  };
}

function totalRow(use: readonly number[], writing: Writing): Row {
  const { say, csv, format, amount, season, plantingTotalsRow: row } = writing;
  const names = rowNames({ zone: say.allZones, measure: csv.more.demand, unit: format.unit('volume') }, writing);
  const cells = use.map((value, week) => formula(sumOfMeasure(row, week, value), 'volume'));
  const byDay = season.zones
    .flatMap(({ plantings }) => plantings)
    .reduce((sum, planting) => sum + seasonVolume(planting, 'demandLitres'), 0);
  return summedRow(names, { row, kind: 'volume', cells, byDay: amount(byDay, 'volume') });
}

interface PlantingCells {
  readonly rows: Readonly<Record<PlantingRow, Row>>;
  readonly figures: PlantingFigures;
}

function plantingCells(zone: ZoneWriting, index: number, weather: WeatherSheet, writing: Writing): PlantingCells {
  const planting = zone.plantings[index] as PlantingSeason;
  const { season, amount } = writing;
  const { weeks } = season.garden.span;
  const unitVolume = volumePerDepth(writing.reader.units);
  const rowOf = (row: PlantingRow) => plantingRow(zone, row, index);
  const allWeeks = (row: PlantingRow, value: number): Term => ({ text: cellName(rowOf(row), SEASON_COLUMN), value });
  const area = amount(planting.planting.areaM2, 'area');
  const efficiency = meanEfficiency(zone.zone, planting);
  const ground = times(allWeeks('area', area), unitVolume);
  const figures = {
    flow: zeros(weeks),
    use: zeros(weeks),
    rain: zeros(weeks),
    gross: zeros(weeks),
    minutes: zeros(weeks),
  };
  const cells = Object.fromEntries(PLANTING_ROWS.map((row) => [row, [] as CellContent[]])) as Record<
    PlantingRow,
    CellContent[]
  >;
  for (let week = 0; week < weeks; week += 1) {
    if (plantingState(planting, week) === 'off') {
      for (const row of PLANTING_ROWS) cells[row].push(undefined);
      continue;
    }
    const facts = factsOf({ zone: zone.zone, planting, week, writing, weather });
    const fact = (row: 'coefficient' | 'rainShare' | 'fromSoil' | 'flow') => weekCell('', rowOf(row), week, facts[row]);
    const eto = weekCell(writing.on.weather, ETO_ROW, week, weather.eto[week] as number);
    const rainFell = weekCell(writing.on.weather, RAIN_ROW, week, weather.rain[week] as number);
    const use = times(fact('coefficient'), eto, ground);
    const rain = times(fact('rainShare'), rainFell, ground);
    const here = (row: PlantingRow, { value }: Term) => weekCell('', rowOf(row), week, value);
    const soil = times(fact('fromSoil'), ground);
    const needed = atLeastZero(less(here('use', use), here('rain', rain), soil));
    const gross = over(here('needed', needed), allWeeks('efficiency', efficiency));
    const minutes = over(here('gross', gross), fact('flow'));
    cells.coefficient.push(fixed(facts.coefficient, 'factor'));
    cells.rainShare.push(fixed(facts.rainShare, 'share'));
    cells.fromSoil.push(fixed(facts.fromSoil, 'depth'));
    cells.flow.push(fixed(facts.flow, 'flow'));
    const computed = { use, rain, needed, gross, minutes };
    for (const [row, term] of Object.entries(computed)) {
      cells[row as keyof typeof computed].push(formula(term, KINDS[row as keyof typeof computed]));
    }
    figures.flow[week] = facts.flow;
    figures.use[week] = use.value;
    figures.rain[week] = rain.value;
    figures.gross[week] = gross.value;
    figures.minutes[week] = minutes.value;
  }
  return { rows: rowsOf({ zone, planting, area, efficiency, cells, rowOf, writing }), figures };
}

const zeros = (weeks: number): number[] => weekly(weeks, () => 0);

const KINDS = {
  use: 'volume',
  rain: 'volume',
  needed: 'volume',
  gross: 'volume',
  minutes: 'minutes',
} as const satisfies Partial<Record<PlantingRow, NumberKind>>;

function rowsOf({
  zone,
  planting,
  area,
  efficiency,
  cells,
  rowOf,
  writing,
}: {
  readonly zone: ZoneWriting;
  readonly planting: PlantingSeason;
  readonly area: number;
  readonly efficiency: number;
  readonly cells: Readonly<Record<PlantingRow, readonly CellContent[]>>;
  readonly rowOf: (row: PlantingRow) => number;
  readonly writing: Writing;
}): Readonly<Record<PlantingRow, Row>> {
  const { say, csv, format, amount } = writing;
  const names = (measure: string, unit = '', isMine = false) =>
    rowNames({ zone: zone.zone.zone.name, planting: planting.planting.name, measure, unit, isMine }, writing);
  const volume = format.unit('volume');
  const summed = (row: keyof typeof KINDS, measure: string, unit: string, byDay: number) =>
    summedRow(names(measure, unit), { row: rowOf(row), kind: KINDS[row], cells: cells[row], byDay });
  const litres = (field: PlantingVolume) => amount(seasonVolume(planting, field), 'volume');
  const ran = sumOfWeeks(planting.weeks, (week) => openMinutes(zone.zone, planting, week));
  return {
    area: [...names(say.rows.area, format.unit('area'), true), mine(area, 'area')],
    efficiency: [...names(say.rows.efficiency), fixed(efficiency, 'share')],
    coefficient: plainRow(names(say.rows.coefficient), cells.coefficient),
    rainShare: plainRow(names(say.rows.rainShare), cells.rainShare),
    fromSoil: plainRow(names(say.rows.fromSoil, format.unit('depth')), cells.fromSoil),
    flow: plainRow(names(say.rows.flow, format.unit('supplyFlow')), cells.flow),
    use: summed('use', csv.more.demand, volume, litres('demandLitres')),
    rain: summed('rain', csv.measures.rain, volume, litres('rainStayedLitres')),
    needed: summed('needed', csv.more.needed, volume, litres('irrigationStayedLitres')),
    gross: summed('gross', say.rows.gross, volume, litres('litres')),
    minutes: summed('minutes', say.rows.minutesNeeded, format.minuteUnit, ran),
  };
}

const seasonVolume = (planting: PlantingSeason, field: PlantingVolume): number =>
  sumOfWeeks(planting.weeks, (week) => plantingFigure(planting, field, week));

/** Net over gross of all that it got; where it got nothing, its zone's. */
function meanEfficiency({ zone }: ZoneSeason, planting: PlantingSeason): number {
  let net = 0;
  let gross = 0;
  for (let week = 0; week < planting.weeks; week += 1) {
    net += planting.at(P.irrigationNetMm, week);
    gross += planting.at(P.irrigationGrossMm, week);
  }
  return gross > 0 && net > 0 ? net / gross : zone.efficiency;
}

interface FactsInput {
  readonly zone: ZoneSeason;
  readonly planting: PlantingSeason;
  readonly week: number;
  readonly writing: Writing;
  readonly weather: WeatherSheet;
}

/** Factors of a week, in the plan's units, as the daily calculation came to them. */
function factsOf({ zone, planting, week, writing: { amount }, weather }: FactsInput) {
  const depth = (mm: number) => amount(mm, 'depth');
  const at = (field: number) => planting.at(field, week);
  const eto = weather.eto[week] as number;
  const rain = weather.rain[week] as number;
  const kept = at(P.rainSoakedMm) - at(P.rainDrainedMm);
  const opened = openMinutes(zone, planting, week);
  const flowLpm = opened > 0 ? plantingFigure(planting, 'litres', week) / opened : at(P.flowLpm);
  return {
    coefficient: eto > 0 ? depth(at(P.demandMm)) / eto : 0,
    rainShare: rain > 0 ? depth(kept) / rain : usualShare(planting, weather, depth),
    fromSoil: depth(at(P.depletionEndMm) - at(P.depletionStartMm)),
    flow: amount(flowLpm, 'supplyFlow'),
  };
}

/** Of a week without rain, should there be some: what the roots keep over the season. */
function usualShare(planting: PlantingSeason, weather: WeatherSheet, depth: (mm: number) => number): number {
  let kept = 0;
  let fell = 0;
  for (let week = 0; week < planting.weeks; week += 1) {
    if (plantingState(planting, week) === 'off') continue;
    kept += depth(planting.at(P.rainSoakedMm, week) - planting.at(P.rainDrainedMm, week));
    fell += weather.rain[week] as number;
  }
  return fell > 0 ? kept / fell : 1;
}
