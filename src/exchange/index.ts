/** Minutes, rain and weather from other programs' files, shown before they are kept, a season as a file for them, and a plan in a link. */

export { WEEK_MEASURES, type WeekMeasure } from '../engine/week-measures.ts';
export { type SeasonReview, seasonReview } from '../explain/review/season-review.ts';
export { learnedOf, withLearned, type ZoneLearned } from '../plan/next-year/learned.ts';
export { type NextYearChoice, nextYear, type PlantingFate } from '../plan/next-year/next-year.ts';
export { type CalendarChoice, calendarSteps, seasonToCalendar } from './calendar/season-to-calendar.ts';
export type { CalendarExtent } from './calendar/watering-events.ts';
export { isTimeZone } from './calendar/zoned-instant.ts';
export { describeRowFault } from './csv/describe-row-fault.ts';
export type { ImportChange, ImportPreview, ImportReading, RowFault, RowFaultReason } from './csv/imported.ts';
export { minutesFromCsv } from './csv/minutes-from-csv.ts';
export { ALL_FIGURES, type SeasonFigure } from './csv/season-figures.ts';
export { type CsvChoice, seasonCsvSteps, seasonToCsv } from './csv/season-to-csv.ts';
export type { DayOrder, DecimalMark, FormChoice, FormQuestion, Separator, TableForm } from './csv/table-form.ts';
export {
  type Against,
  type TableKind,
  type TablePreview,
  tableFromCsv,
  tableFromSheets,
  type UnknownTable,
} from './csv/table-from-csv.ts';
export { type WeatherPreview, weatherFromCsv } from './csv/weather-from-csv.ts';
export { linkTo } from './link/link-to.ts';
export { type LinkContent, LinkError, linkContent, planTextFromLink } from './link/plan-text-from-link.ts';
export { type FoundPlace, findPlaces } from './places/find-places.ts';
export { placesText } from './places/load-places.ts';
export { type Places, placesSteps } from './places/unpack-places.ts';
export { type DailyWeatherFile, readDailyWeather } from './weather-file/read-daily-weather.ts';
export { readWeatherFile, WEATHER_FILE_LAYOUTS, weatherFileSteps } from './weather-file/read-weather-file.ts';
export type {
  FilePlace,
  FileUnits,
  LeftOut,
  LeftOutCause,
  WeatherFile,
  WeatherFileChoice,
  WeatherFileKind,
  WeatherFileLayout,
  WeatherFileRefusal,
  WeatherQuestion,
} from './weather-file/weather-file.ts';
export { requestWeather, type ServiceAnswer, type ServiceFailure } from './weather-service/request-weather.ts';
export {
  archiveRequest,
  forecastRequest,
  MOST_PAST_DAYS,
  NORMAL_YEARS,
  placeSaid,
  type ServicePlace,
  type WeatherService,
  weatherServiceOf,
} from './weather-service/weather-service.ts';
export { type ClimateChoice, type ClimateTaken, climateSteps, takeClimate } from './weather-take/take-climate.ts';
export { type ReadingsChoice, type ReadingsTaken, takeForecast, takeReadings } from './weather-take/take-readings.ts';
export { type SeasonTaken, takeSeason } from './weather-take/take-season.ts';
export { seasonToWorkbook, type WorkbookChoice, workbookSteps } from './workbook/season-to-workbook.ts';
export type { WorkbookContent } from './workbook/sheet-content.ts';
export { WorkbookError, workbookTexts } from './workbook/workbook-texts.ts';
export { writeWorkbook } from './workbook/write-workbook.ts';
