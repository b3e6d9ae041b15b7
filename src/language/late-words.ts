/**
 * What a page says only where somebody asks for it, by the part that asks: English, and the type of every other language. Another
 * language gives each part by a function of its own, which is called when a page first shows that part.
 */
import { calendar } from './en/calendar.ts';
import { files } from './en/files.ts';
import { garden } from './en/garden.ts';
import { gardenGround } from './en/garden-ground.ts';
import { gardenZones } from './en/garden-zones.ts';
import { howOften } from './en/how-often.ts';
import { mix } from './en/mix.ts';
import { nextYear } from './en/next-year.ts';
import { paper } from './en/paper.ts';
import { plants } from './en/plants.ts';
import { sizes } from './en/sizes.ts';
import { start } from './en/start.ts';
import { startGardens } from './en/start-gardens.ts';
import { startKnown } from './en/start-known.ts';
import { trace } from './en/trace.ts';
import { traceBalance } from './en/trace-balance.ts';
import { traceCheck } from './en/trace-check.ts';
import { traceGround } from './en/trace-ground.ts';
import { traceGroundLabels } from './en/trace-ground-labels.ts';
import { traceLabels } from './en/trace-labels.ts';
import { traceMinutes } from './en/trace-minutes.ts';
import { traceNeed } from './en/trace-need.ts';
import { traceValues } from './en/trace-values.ts';
import { traceWeather } from './en/trace-weather.ts';
import { weather } from './en/weather.ts';
import { weekClose } from './en/week-close.ts';
import { whatIfs } from './en/what-ifs.ts';
import { workbook } from './en/workbook.ts';

export const lateWords = {
  files: { files, calendar, nextYear, workbook },
  garden: { garden, gardenGround, gardenZones, howOften, plants, sizes },
  mix: { mix, whatIfs },
  start: { start, startGardens, startKnown, sizes },
  trace: { trace, traceCheck, traceLabels, traceMinutes, traceNeed, traceValues, traceWeather },
  traceGround: { traceBalance, traceGround, traceGroundLabels },
  paper: { paper },
  week: { weekClose },
  weather: { weather },
};

export type LateWords = typeof lateWords;

/** A part of the page with words of its own. */
export type LateWordsPart = keyof LateWords;
