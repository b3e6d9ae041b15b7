/** A season as a workbook (.xlsx) that computes on: what a person changes in it moves what follows from that. */
import type { DayNumber } from '../../engine/calendar.ts';
import { runThrough } from '../../engine/run-through.ts';
import type { Season } from '../../engine/season/season.ts';
import { nearestWeek } from '../../engine/season/week-span.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { readerFor } from '../../language/reader.ts';
import type { WorkbookContent } from './sheet-content.ts';
import { explainedSheet } from './sheets/explained-sheet.ts';
import { plantingsSheet } from './sheets/plantings-sheet.ts';
import { runsSheet } from './sheets/runs-sheet.ts';
import { seasonSheet } from './sheets/season-sheet.ts';
import { supplySheet } from './sheets/supply-sheet.ts';
import { weatherSheet } from './sheets/weather-sheet.ts';
import { writingOf } from './sheets/writing.ts';
import { writeWorkbook } from './write-workbook.ts';

export interface WorkbookChoice {
  readonly planName: string;
  readonly units: UnitSystem;
  /** BCP 47: whose language the words are in; left out, English. */
  readonly locale?: string | undefined;
  /** Weeks before it that are not logged are said to be assumed; its week is the one whose run times are shown first. */
  readonly today?: DayNumber | undefined;
}

/**
 * The file. Every formula has the result that its own cells come to; beside a season's sum of formulas stands the figure of the daily
 * calculation. A name is text, whatever it looks like.
 */
export function seasonToWorkbook(season: Season, choice: WorkbookChoice): Promise<Uint8Array> {
  return writeWorkbook(runThrough(workbookSteps(season, choice)));
}

/** What will stand in it, a planting at a time; `writeWorkbook` makes the file of it. */
export function* workbookSteps(season: Season, choice: WorkbookChoice): Generator<undefined, WorkbookContent> {
  const writing = writingOf(season, readerFor(choice.locale ?? 'en', choice.units), choice.today);
  const weather = weatherSheet(writing);
  const plantings = yield* plantingsSheet(writing, weather);
  const zones = yield* seasonSheet(writing, plantings);
  const week = choice.today === undefined ? 0 : nearestWeek(season.garden.span, choice.today);
  const runs = yield* runsSheet(writing, week);
  yield;
  const supply = supplySheet(writing, zones, plantings);
  return {
    title: choice.planName,
    sheets: [zones.content, weather.content, plantings.content, supply, runs, explainedSheet(choice.planName, writing)],
  };
}
