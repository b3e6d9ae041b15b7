/** Minutes, rain and weather from other programs' files, shown before they are kept, a season as a file for them, and a plan in a link. */

export { WEEK_MEASURES, type WeekMeasure } from '../engine/week-measures.ts';
export { describeRowFault } from './csv/describe-row-fault.ts';
export type { ImportChange, ImportPreview, ImportReading, RowFault, RowFaultReason } from './csv/imported.ts';
export { minutesFromCsv } from './csv/minutes-from-csv.ts';
export { type CsvChoice, seasonToCsv } from './csv/season-to-csv.ts';
export type { DayOrder, DecimalMark, FormChoice, FormQuestion, Separator, TableForm } from './csv/table-form.ts';
export {
  type Against,
  type TableKind,
  type TablePreview,
  tableFromCsv,
  type UnknownTable,
} from './csv/table-from-csv.ts';
export { type WeatherPreview, weatherFromCsv } from './csv/weather-from-csv.ts';
export { linkTo } from './link/link-to.ts';
export { type LinkContent, LinkError, linkContent, planTextFromLink } from './link/plan-text-from-link.ts';
export { type DailyWeatherFile, readDailyWeather } from './weather-file/read-daily-weather.ts';
