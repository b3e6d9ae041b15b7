/** What all sheets of a workbook share: whose they are, what they are called, and where a zone's and a planting's rows stand. */
import type { DayNumber } from '../../../engine/calendar.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../../engine/season/season.ts';
import { fromSi, type Quantity, type UnitSystem } from '../../../engine/units.ts';
import { csvWords } from '../../../language/en/csv.ts';
import { workbookWords } from '../../../language/en/workbook.ts';
import { type Format, formatFor } from '../../../language/format/format.ts';
import { toSpreadsheetText } from '../../../language/format/spreadsheet-text.ts';
import type { Reader } from '../../../language/reader.ts';
import { inSheet, sheetName } from '../sheet-content.ts';

/** Columns before those of the weeks: zone, planting, measure, unit, whether to change it, and three of the season. */
export const FIRST_WEEK_COLUMN = 8;
export const SEASON_COLUMN = 5;

/** Rows of a planting on the sheet of plantings, in their order; `area` and `efficiency` are one figure for all weeks. */
export const PLANTING_ROWS = [
  'area',
  'efficiency',
  'coefficient',
  'rainShare',
  'fromSoil',
  'flow',
  'use',
  'rain',
  'needed',
  'gross',
  'minutes',
] as const;
export type PlantingRow = (typeof PLANTING_ROWS)[number];

/** Rows of a zone on the sheet of the season. */
export const ZONE_ROWS = [
  'state',
  'minutes',
  'flow',
  'volume',
  'rain',
  'minutesNeeded',
  'gross',
  'mark',
  'note',
] as const;
export type ZoneRow = (typeof ZONE_ROWS)[number];

const SHEET_IDS = ['season', 'weather', 'plantings', 'supply', 'runs', 'explained'] as const;
type SheetId = (typeof SHEET_IDS)[number];

export interface Writing {
  readonly season: Season;
  readonly reader: Reader;
  readonly format: Format;
  readonly say: ReturnType<typeof workbookWords>;
  readonly csv: ReturnType<typeof csvWords>;
  readonly today: DayNumber | undefined;
  readonly names: Readonly<Record<SheetId, string>>;
  /** What stands before a cell's name of another sheet. */
  readonly on: Readonly<Record<SheetId, string>>;
  /** In the season's order. */
  readonly zones: readonly ZoneWriting[];
  /** First row, from 0, of the season's and the plantings' totals. */
  readonly seasonTotalsRow: number;
  readonly plantingTotalsRow: number;
  /** An engine value in the plan's unit. */
  amount(si: number, quantity: Quantity): number;
}

export interface ZoneWriting {
  readonly zone: ZoneSeason;
  /** Those that no shut-off can close stand first. */
  readonly plantings: readonly PlantingSeason[];
  readonly open: number;
  /** First of its rows, from 0, on the two sheets. */
  readonly seasonRow: number;
  readonly plantingsRow: number;
}

export function writingOf(season: Season, reader: Reader, today: DayNumber | undefined): Writing {
  const { units, language } = reader;
  const say = workbookWords(language);
  const names: Partial<Record<SheetId, string>> = {};
  for (const id of SHEET_IDS) names[id] = sheetName(say.sheets[id], Object.values(names));
  const allNames = names as Record<SheetId, string>;
  const on = Object.fromEntries(SHEET_IDS.map((id) => [id, inSheet(allNames[id])])) as Record<SheetId, string>;
  let seasonRow = 1;
  let plantingsRow = 1;
  const zones = season.zones.map((zone): ZoneWriting => {
    const plantings = zone.plantings.toSorted(
      (one, other) => Number(one.planting.hasShutOff) - Number(other.planting.hasShutOff),
    );
    const open = plantings.filter(({ planting }) => !planting.hasShutOff).length;
    const writing = { zone, plantings, open, seasonRow, plantingsRow };
    seasonRow += ZONE_ROWS.length;
    plantingsRow += PLANTING_ROWS.length * plantings.length;
    return writing;
  });
  return {
    season,
    reader,
    format: formatFor(reader),
    say,
    csv: csvWords(language),
    today,
    names: allNames,
    on,
    zones,
    seasonTotalsRow: seasonRow,
    plantingTotalsRow: plantingsRow,
    amount: (si, quantity) => fromSi(si, quantity, units),
  };
}

/** Volume of a depth of one on an area of one, as it stands in a formula, and what it comes to. */
export function volumePerDepth(units: UnitSystem) {
  return units === 'us' ? { text: '144/231', value: 144 / 231 } : { text: '1', value: 1 };
}

/** In place; a name that begins as text that is kept from being a formula gets one apostrophe more, so that it comes back as it was. */
export const nameText = (name: string): string => (name.startsWith("'") ? toSpreadsheetText(name) : name);

export const zoneRow = ({ seasonRow }: ZoneWriting, row: ZoneRow): number => seasonRow + ZONE_ROWS.indexOf(row);

export const plantingRow = ({ plantingsRow, plantings }: ZoneWriting, row: PlantingRow, planting: number): number =>
  plantingsRow + PLANTING_ROWS.indexOf(row) * plantings.length + planting;
