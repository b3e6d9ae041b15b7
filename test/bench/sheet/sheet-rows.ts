/** A garden as rows of texts and numbers: a week a column, a block of rows a zone. */
import type { Garden, GardenPlanting, GardenZone } from '../../../src/engine/garden.ts';
import { AlikeDemands } from '../../../src/engine/season/alike-demands.ts';
import { seasonWeather, type Weather } from '../../../src/engine/weather.ts';
import { columnOf, PLANTING_ROW, ROWS_PER_PLANTING, ROWS_PER_ZONE, type Row, rowOf, ZONE_ROW } from './places.ts';
import { plantingRows } from './planting-rows.ts';
import { weatherSheet } from './weather-sheets.ts';

/** Texts and numbers by sheet, as typed. */
export interface SheetRows {
  readonly cells: Record<'Weather' | 'Shares' | 'Season', Row[]>;
  /** First row of each zone in Season, from 1. */
  readonly zoneRows: readonly number[];
}

export function sheetRows(garden: Garden): SheetRows {
  const weather = seasonWeather({ ...garden, observed: { days: new Map(), weeks: new Map() } });
  const sharesOf = rainShares(garden.site, weather);
  const season: Row[] = [];
  const shares: Row[] = [];
  const zoneRows = garden.zones.map((zone) => {
    const row = season.length + 1;
    const rows = zoneRowsOf(zone, { row, shareRow: shares.length + 1, weather });
    season.push(...rows);
    shares.push(...zone.plantings.map((planting) => sharesOf(planting, zone)));
    return row;
  });
  return {
    cells: {
      Weather: weatherSheet(garden, weather),
      Shares: shares,
      Season: season,
    },
    zoneRows,
  };
}

/** Of each planting, the kept share of each month's rain: typed, since no sheet holds the days of many years. */
function rainShares(site: Garden['site'], weather: Weather): (planting: GardenPlanting, zone: GardenZone) => Row {
  const alike = new AlikeDemands();
  return (planting, { soil, wateringDays }) => {
    const demand = alike.demandOf({ planting, soil }, weather);
    return alike.sharesOf({ demand, isRefill: planting.watering === 'refill', wateringDays }, site, weather);
  };
}

interface ZonePlace {
  readonly row: number;
  readonly shareRow: number;
  readonly weather: Weather;
}

function zoneRowsOf(zone: GardenZone, { row, shareRow: firstShareRow, weather }: ZonePlace): Row[] {
  const weeks = weather.days / 7;
  const places = zone.plantings.map((planting, place) => ({
    planting,
    row: row + ROWS_PER_ZONE + place * ROWS_PER_PLANTING,
    shareRow: firstShareRow + place,
  }));
  return [
    ...ownRows(zone, row, weeks),
    ...places.flatMap(({ planting, row: plantingRow, shareRow }) =>
      plantingRows(planting, { zone, zoneRow: row, row: plantingRow, shareRow, weather }),
    ),
  ];
}

/** Minutes by hand, minutes, litres and rain credit of a zone. */
function ownRows(zone: GardenZone, row: number, weeks: number): Row[] {
  const anyOpen = zone.plantings.some(({ hasShutOff }) => !hasShutOff);
  const plantings = zone.plantings.map((planting, place) => ({
    row: row + ROWS_PER_ZONE + place * ROWS_PER_PLANTING,
    decides: !(anyOpen && planting.hasShutOff),
  }));
  const cells = (offset: number, week: number, of = plantings) =>
    of.map((planting) => `${columnOf(week)}${planting.row + offset}`);
  const deciding = plantings.filter(({ decides }) => decides);
  const dayCount = zone.wateringDays.toString(2).replaceAll('0', '').length;
  const minutes = (week: number) => {
    const byHand = `${columnOf(week)}${row + ZONE_ROW.handMinutes}`;
    const wanted = `MAX(${cells(PLANTING_ROW.wanted, week, deciding).join(',')})`;
    return `=IF(ISNUMBER(${byHand}),${byHand},ROUND(${wanted}/$A$${row},0)*$A$${row}*$B$${row})`;
  };
  const rows: Row[] = [];
  rows[ZONE_ROW.handMinutes] = rowOf(
    [zone.timerStepMinutes, dayCount, zone.efficiency],
    weeks,
    (week) => zone.choices.get(week)?.minutes ?? null,
  );
  rows[ZONE_ROW.minutes] = rowOf([], weeks, minutes);
  rows[ZONE_ROW.litres] = rowOf([], weeks, (week) => `=${cells(PLANTING_ROW.litres, week).join('+')}`);
  rows[ZONE_ROW.rainCredit] = rowOf([], weeks, (week) => {
    const litres = plantings.map(
      (planting) => `${columnOf(week)}${planting.row + PLANTING_ROW.rain}*$A$${planting.row}`,
    );
    return `=(${litres.join('+')})/$C$${row}`;
  });
  return rows;
}
