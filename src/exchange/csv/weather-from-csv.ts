/** A rain gauge's log, or daily weather, from a CSV file: a day on each row, taken into the plan's own observations. */
import { type DayNumber, dayNumber, isoDate } from '../../engine/calendar.ts';
import { runThrough } from '../../engine/run-through.ts';
import { fromSi, type Quantity, type UnitSystem } from '../../engine/units.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { roundByShare, roundForPerson } from '../../plan/edits/round-for-person.ts';
import { readingSource, withSources } from '../../plan/reading-sources.ts';
import type { Plan, PlanDay } from '../../plan/schema/plan-schema.ts';
import { dailyWeatherSteps, type FileDay, type WeatherUnits } from '../weather-file/read-daily-weather.ts';
import type { ImportChange, ImportPreview, RowFault } from './imported.ts';
import { readTable, type Table } from './read-table.ts';
import type { FormChoice } from './table-form.ts';

export interface WeatherPreview extends ImportPreview {
  /** Days of the file that lie outside the season; they change nothing. */
  readonly outside: number;
  /** The units that the file's figures were read in; what is kept is in the plan's. */
  readonly units: WeatherUnits;
}

type Reading = Extract<ImportChange['reading'], 'rain' | 'minTemperature' | 'maxTemperature'>;
const READINGS: readonly Reading[] = ['rain', 'minTemperature', 'maxTemperature'];

/**
 * What a day had beside is kept, and so is a reading that is blank in the file. `units`: of the columns whose heading
 * names no unit; left out, the plan's. Values are converted to the plan's units. `locale`: BCP 47, whose language the headings
 * may be in; English ones are always read.
 */
export function weatherFromCsv(
  text: string,
  plan: Plan,
  units: UnitSystem = plan.units,
  locale = 'en',
  choice: FormChoice = {},
): WeatherPreview {
  return runThrough(weatherSteps(readTable(text), plan, { units, locale, choice }));
}

/** The same from a table that is read already, with pauses. */
export function* weatherSteps(
  table: Table,
  plan: Plan,
  { units, locale, choice }: { readonly units: UnitSystem; readonly locale: string; readonly choice: FormChoice },
): Generator<void, WeatherPreview> {
  const file = yield* dailyWeatherSteps(table, units, locale, choice);
  const inside = file.days.filter(({ day }) => isInside(day, plan));
  const changes: ImportChange[] = [];
  const faults: RowFault[] = [...file.faults];
  const edits: Edit[] = [];
  yield;
  for (const each of inside) {
    const day = isoDate(each.day);
    const before = plan.log?.days?.[day];
    const read = inPlanUnits(each, file.units, plan.units);
    const weather = withSources({ ...before, ...read }, (reading) =>
      reading !== 'eto' && read[reading] !== undefined && read[reading] !== before?.[reading]
        ? 'file'
        : before && readingSource(before, reading),
    );
    const fault = disagreement(each, weather);
    if (fault !== undefined) {
      faults.push(fault);
      continue;
    }
    const changed = READINGS.filter((reading) => read[reading] !== undefined && read[reading] !== before?.[reading]);
    changes.push(...changed.map((reading) => ({ reading, day, from: before?.[reading], to: read[reading] as number })));
    if (changed.length > 0) edits.push({ type: 'set-day-weather', day, weather });
  }
  const action = changes.every(({ reading }) => reading === 'rain') ? 'import-rain' : 'import-weather';
  return {
    form: file.form,
    asked: file.asked,
    edit: edits.length === 0 ? undefined : { type: 'together', action, edits },
    changes,
    faults: faults.toSorted((one, other) => one.line - other.line),
    outside: file.days.length - inside.length,
    units: file.units,
  };
}

function isInside(day: DayNumber, { season }: Plan): boolean {
  const first = dayNumber(season.firstDay);
  return day >= first && day < first + 7 * season.weeks;
}

type Readings = { -readonly [Name in Reading]?: number };

function inPlanUnits(day: FileDay, from: WeatherUnits, to: UnitSystem): Readings {
  const read: Readings = {};
  if (day.rainMm !== undefined) read.rain = kept(day.rainMm, 'depth', from.rain, to);
  if (day.minTemperatureC !== undefined) read.minTemperature = kept(day.minTemperatureC, 'temperature', from.min, to);
  if (day.maxTemperatureC !== undefined) read.maxTemperature = kept(day.maxTemperatureC, 'temperature', from.max, to);
  return read;
}

/** As typed where the units are the same; else as a person would write it: four digits, hundredths of a degree. */
function kept(si: number, quantity: Quantity, from: UnitSystem | undefined, to: UnitSystem): number {
  const value = fromSi(si, quantity, to);
  if (quantity === 'temperature') return roundForPerson(value, from === to ? 1e-9 : 0.005);
  return roundByShare(value, from === to ? 1e-12 : 4e-5);
}

/** A file may have one of the two temperatures, and the plan the other. */
function disagreement({ line }: FileDay, { minTemperature, maxTemperature }: PlanDay): RowFault | undefined {
  if (minTemperature === undefined || maxTemperature === undefined || minTemperature <= maxTemperature)
    return undefined;
  return { code: 'high-below-low-of-day', line, value: `${minTemperature}, ${maxTemperature}` };
}
