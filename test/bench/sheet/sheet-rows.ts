/** A garden as rows of texts and numbers: a week a column, a block of rows a zone. */
import type { Garden, GardenZone } from '../../../src/engine/garden.ts';
import { seasonWeather, type Weather } from '../../../src/engine/weather.ts';
import { columnOf, PLANTING_ROW, ROWS_PER_PLANTING, ROWS_PER_ZONE, type Row, rowOf, ZONE_ROW } from './places.ts';
import { factorCell, plantingRows } from './planting-rows.ts';
import { monthSheet, shareRow, weatherSheet } from './weather-sheets.ts';

/** Texts and numbers by sheet, as typed. */
export interface SheetRows {
  readonly cells: Record<'Weather' | 'Months' | 'Shares' | 'Season', Row[]>;
  /** First row of each zone in Season, from 1. */
  readonly zoneRows: readonly number[];
}

export function sheetRows(garden: Garden): SheetRows {
  const weather = seasonWeather({ ...garden, observed: { days: new Map(), weeks: new Map() } });
  const season: Row[] = [];
  const shares: Row[] = [];
  const zoneRows = garden.zones.map((zone) => {
    const row = season.length + 1;
    const { rows, shareRows } = zoneRowsOf(zone, { row, shareRow: shares.length + 1, weather });
    season.push(...rows);
    shares.push(...shareRows);
    return row;
  });
  return {
    cells: {
      Weather: weatherSheet(garden, weather),
      Months: monthSheet(garden, weather),
      Shares: shares,
      Season: season,
    },
    zoneRows,
  };
}

interface ZonePlace {
  readonly row: number;
  readonly shareRow: number;
  readonly weather: Weather;
}

function zoneRowsOf(zone: GardenZone, { row, shareRow: firstShareRow, weather }: ZonePlace) {
  const weeks = weather.days / 7;
  const places = zone.plantings.map((planting, place) => ({
    planting,
    row: row + ROWS_PER_ZONE + place * ROWS_PER_PLANTING,
    shareRow: firstShareRow + place,
  }));
  return {
    rows: [
      ...ownRows(zone, row, weeks),
      ...places.flatMap(({ planting, row: plantingRow, shareRow: own }) =>
        plantingRows(planting, {
          zone,
          zoneRow: row,
          row: plantingRow,
          shareRow: own,
          weather,
        }),
      ),
    ],
    shareRows: places.map(({ row: plantingRow, shareRow: own }) =>
      shareRow(own, weather, { etcRow: plantingRow + PLANTING_ROW.etc, factorCell: factorCell(plantingRow) }),
    ),
  };
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
    return `=IF(ISNUMBER(${byHand}),${byHand},ROUNDUP(${wanted}/$A$${row},0)*$A$${row}*$B$${row})`;
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
