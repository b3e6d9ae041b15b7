/** A planting's rows: its Kc as typed, then demand, effective rain, minutes wanted, irrigation, depletion and litres. */
import type { GardenPlanting, GardenZone } from '../../../src/engine/garden.ts';
import { plantCoefficientOn } from '../../../src/engine/season/plant-coefficients.ts';
import type { Weather } from '../../../src/engine/weather.ts';
import { columnOf, PLANTING_ROW, type Row, rowOf, WEATHER_ROW, ZONE_ROW } from './places.ts';
import { shareCell } from './weather-sheets.ts';

export interface PlantingPlace {
  readonly zone: GardenZone;
  /** First row of the zone and of the planting in Season, and the planting's row in Shares; from 1. */
  readonly zoneRow: number;
  readonly row: number;
  readonly shareRow: number;
  readonly weather: Weather;
}

export function plantingRows(planting: GardenPlanting, place: PlantingPlace): Row[] {
  const names = namesOf(planting, place);
  const weeks = place.weather.days / 7;
  const rows: Row[] = [];
  rows[PLANTING_ROW.kc] = rowOf(parametersOf(planting, place), weeks, (week) => kcOf(planting, place.weather, week));
  rows[PLANTING_ROW.etc] = rowOf([], weeks, (week) => `=${names.kc(week)}*${names.eto(week)}`);
  rows[PLANTING_ROW.rain] = rowOf([], weeks, (week) => rainFormula(names, week));
  rows[PLANTING_ROW.wanted] = rowOf([], weeks, (week) => wantedFormula(planting, names, week, weeks));
  rows[PLANTING_ROW.irrigation] = rowOf([], weeks, (week) => irrigationFormula(planting, names, week));
  rows[PLANTING_ROW.depletion] = rowOf([], weeks, (week) => depletionFormula(names, week));
  rows[PLANTING_ROW.litres] = rowOf(
    [],
    weeks,
    (week) => `=${names.irrigation(week)}/${names.efficiency}*${names.area}`,
  );
  return rows;
}

function parametersOf(planting: GardenPlanting, { zone }: PlantingPlace) {
  const tawMm = 1000 * zone.soil.availableWater * planting.rootZone.depthM;
  const allowedMm = planting.rootZone.allowedDepletion * tawMm;
  const [line, later] = planting.lines;
  const rate = (flowLph = 0) => (flowLph / planting.areaM2 / 60) * zone.efficiency;
  return [
    planting.areaM2,
    tawMm,
    planting.rootZone.allowedDepletion,
    planting.rootZone.targetDepletion * allowedMm,
    rate(line?.flowLph),
    rate(later?.flowLph),
    planting.rootZone.startDepletion * allowedMm,
    allowedMm,
  ];
}

/** Mean of the week's days, those out of the ground counting as 0. */
function kcOf(planting: GardenPlanting, { firstDay }: Weather, week: number): number {
  const days = Array.from({ length: 7 }, (_, offset) => firstDay + 7 * week + offset);
  const inGround = days.filter((day) => day >= planting.from && day <= planting.to);
  return inGround.reduce((sum, day) => sum + plantCoefficientOn(planting, day), 0) / 7;
}

/** What each cell is called. Columns of parameters are those of `parametersOf`. */
function namesOf(planting: GardenPlanting, { row, zoneRow, shareRow, weather }: PlantingPlace) {
  const weekly = (offset: number) => (week: number) => `${columnOf(week)}${row + offset}`;
  const ofWeather = (weatherRow: number) => (week: number) => `Weather!${columnOf(week)}$${weatherRow}`;
  const parameter = (column: string) => `$${column}$${row}`;
  const depletion = weekly(PLANTING_ROW.depletion);
  const etc = weekly(PLANTING_ROW.etc);
  const laterFrom = planting.lines[1]?.from ?? Number.POSITIVE_INFINITY;
  const adjusted = (week: number) => `MAX(0.1,MIN(0.8,${parameter('C')}+0.04*(5-${etc(week)}/7)))*${parameter('B')}`;
  return {
    area: parameter('A'),
    taw: parameter('B'),
    target: parameter('D'),
    rate: (week: number) => parameter(weather.firstDay + 7 * week >= laterFrom ? 'F' : 'E'),
    efficiency: `$C$${zoneRow}`,
    dayCount: `$B$${zoneRow}`,
    eto: ofWeather(WEATHER_ROW.eto),
    normalRain: ofWeather(WEATHER_ROW.normalRain),
    readRain: ofWeather(WEATHER_ROW.readRain),
    share: (week: number) => shareCell(shareRow, weather, week),
    kc: weekly(PLANTING_ROW.kc),
    etc,
    rain: weekly(PLANTING_ROW.rain),
    wanted: weekly(PLANTING_ROW.wanted),
    irrigation: weekly(PLANTING_ROW.irrigation),
    depletion,
    before: (week: number) => (week === 0 ? parameter('G') : depletion(week - 1)),
    raw: (week: number) => (planting.rootZone.adjustsDepletion ? adjusted(week) : parameter('H')),
    minutes: (week: number) => `${columnOf(week)}$${zoneRow + ZONE_ROW.minutes}`,
  };
}

type Names = ReturnType<typeof namesOf>;

function rainFormula({ kc, readRain, normalRain, share }: Names, week: number): string {
  const normal = `${normalRain(week)}*${share(week)}`;
  return `=IF(${kc(week)}=0,0,IF(ISNUMBER(${readRain(week)}),${readRain(week)},${normal}))`;
}

function wantedFormula({ watering }: GardenPlanting, names: Names, week: number, weeks: number): string {
  const { kc, before, etc, rain, target, rate, dayCount, raw } = names;
  const dry = `${before(week)}+${etc(week)}-${rain(week)}`;
  const minutes = `MAX(0,${dry}-${target})/${rate(week)}/${dayCount}`;
  if (watering === 'keep') return `=IF(${kc(week)}=0,0,${minutes})`;
  const next = Math.min(week + 1, weeks - 1);
  return `=IF(${dry}+${etc(next)}-${rain(next)}>${raw(week)},${minutes},0)`;
}

function irrigationFormula({ hasShutOff }: GardenPlanting, names: Names, week: number): string {
  const { kc, rate, minutes, wanted, dayCount } = names;
  const all = `${minutes(week)}*${rate(week)}`;
  if (!hasShutOff) return `=IF(${kc(week)}=0,0,${all})`;
  const share = `MIN(1,ROUNDUP(${wanted(week)}*${dayCount}^2/${minutes(week)},0)/${dayCount})`;
  return `=IF(OR(${minutes(week)}=0,${wanted(week)}=0),0,${all}*${share})`;
}

function depletionFormula(names: Names, week: number): string {
  const { before, raw, taw, etc, rain, irrigation } = names;
  const stress = `IF(${before(week)}>${raw(week)},(${taw}-${before(week)})/(${taw}-${raw(week)}),1)`;
  return `=MIN(${taw},MAX(0,${before(week)}+${stress}*${etc(week)}-${rain(week)}-${irrigation(week)}))`;
}
