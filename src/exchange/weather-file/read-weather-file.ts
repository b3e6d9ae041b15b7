/** A file of daily weather, told by what it is. */
import { asOnUnix, withoutMark } from '../csv/row-steps.ts';
import { ghcnDaily } from './kinds/ghcn-daily.ts';
import { nceiAccess, nceiSearch } from './kinds/ncei.ts';
import { openMeteoCsv } from './kinds/open-meteo-csv.ts';
import { openMeteoJson } from './kinds/open-meteo-json.ts';
import { plainLog } from './kinds/plain-log.ts';
import { unreadFile, type WeatherFile, type WeatherFileChoice, type WeatherFileLayout } from './weather-file.ts';

/** In the order in which a file is tried: what is surest first. A new layout is a row here. */
export const WEATHER_FILE_LAYOUTS: readonly WeatherFileLayout[] = [
  openMeteoJson,
  openMeteoCsv,
  ghcnDaily,
  nceiAccess,
  nceiSearch,
  plainLog,
];

/** Of a file's beginning as much tells what it is. */
const START_LETTERS = 4000;

/**
 * What a text was understood as; nothing is taken anywhere. `choice`: what a person has said of it, where it leaves something open.
 * `locale`: BCP 47, whose language the headings of a log may be in; English ones are always read.
 */
export function readWeatherFile(text: string, choice: WeatherFileChoice = {}, locale = 'en'): WeatherFile {
  const steps = weatherFileSteps(text, choice, locale);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same with pauses, for a page that shows how it goes on. */
export function* weatherFileSteps(
  text: string,
  choice: WeatherFileChoice = {},
  locale = 'en',
): Generator<void, WeatherFile> {
  const bare = withoutMark(text);
  const start = asOnUnix(bare.slice(0, START_LETTERS));
  const layout = WEATHER_FILE_LAYOUTS.find(({ isLike }) => isLike(start));
  if (layout === undefined) return { ...unreadFile('log'), refused: { code: 'no-days' } };
  return yield* layout.read(bare, choice, locale);
}
