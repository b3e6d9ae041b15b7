/** A place in a plan as a gardener would point at it: `Zone “Beds”, planting “Tomatoes”: area`. */

import type { Named, Place, PlacePart } from '../plan/reading/place.ts';
import { faultsWords } from './en/faults.ts';
import { fieldName } from './field-name.ts';
import { type Format, formatFor } from './format/format.ts';
import { isolated } from './format/isolated.ts';
import { visibleText } from './format/visible-text.ts';
import type { Reader } from './reader.ts';

export function describePlace(place: Place, reader: Reader): string {
  const words = faultsWords(reader.language);
  const format = formatFor(reader);
  const part = PARTS[place.part](place, words, format);
  const { fields, index } = place;
  const names = fieldName(fields, reader.language);
  const whole = names === '' ? part : words.inside(part, ofMonth(place, names, words, format));
  return index === undefined || (names !== '' && isMonth(place)) ? whole : words.item(format, whole, index + 1);
}

type FaultWords = ReturnType<typeof faultsWords>;

const PARTS: Readonly<Record<PlacePart, (place: Place, words: FaultWords, format: Format) => string>> = {
  plan: (_, { place }) => place.plan,
  season: (_, { place }) => place.season,
  site: (_, { place }) => place.site,
  climate: (_, { place }) => place.climate,
  years: (_, { place }) => place.years,
  stretch: ({ stretch = 1 }, { place }, format) => place.stretch(format, stretch),
  supply: (_, { place }) => place.supply,
  window: (_, { place }) => place.window,
  tank: (_, { place }) => place.tank,
  log: (_, { place }) => place.log,
  'all-choices': (_, { place }) => place.allChoices,
  source: ({ source }, words, format) => words.place.source(nameOf(source, words.source, format)),
  zone: zoneName,
  planting: (place, words, format) =>
    words.place.planting(zoneName(place, words, format), plantingName(place, words, format)),
  line: (place, words, format) =>
    words.place.line(format, zoneName(place, words, format), plantingName(place, words, format), place.line ?? 1),
  'zone-choices': (place, words, format) => words.place.zoneChoices(zoneName(place, words, format)),
  choice: (place, words, format) => words.place.choice(format, zoneName(place, words, format), place.day ?? ''),
  'open-days': (place, words, format) => {
    const zone = zoneName(place, words, format);
    return words.place.openDays(format, zone, place.day ?? '', plantingName(place, words, format));
  },
  'zone-runs': (place, words, format) => words.place.zoneRuns(zoneName(place, words, format)),
  run: (place, words, format) => words.place.run(format, zoneName(place, words, format), place.day ?? ''),
  'day-run': (place, words, format) => words.place.dayRun(format, zoneName(place, words, format), place.day ?? ''),
  'day-weather': ({ day = '' }, { place }, format) => place.dayWeather(format, day),
  'week-weather': ({ day = '' }, { place }, format) => place.weekWeather(format, day),
  forecast: ({ issued = '' }, { place }, format) => place.forecast(format, issued),
  'forecast-day': ({ issued = '', day = '' }, { place }, format) => place.forecastDay(format, issued, day),
  file: ({ line, column = 1 }, { place }, format) =>
    line === undefined ? place.file : place.fileAt(format, line, column),
};

function zoneName({ zone }: Place, words: FaultWords, format: Format): string {
  return nameOf(zone, words.zone, format);
}

function plantingName({ planting }: Place, words: FaultWords, format: Format): string {
  return nameOf(planting, words.planting, format);
}

function nameOf(named: Named | undefined, words: FaultWords['zone'], format: Format): string {
  if (named === undefined) return words.number(format, 1);
  if ('name' in named) return words.name(isolated(visibleText(named.name)));
  return 'number' in named ? words.number(format, named.number) : words.id(named.id);
}

/** Lists of the climate go by month; a thirteenth has a number. */
function isMonth({ part, index = 12 }: Place): boolean {
  return part === 'climate' && index < 12;
}

function ofMonth(place: Place, names: string, words: FaultWords, format: Format): string {
  const { index = 0 } = place;
  if (!isMonth(place)) return names;
  return words.ofMonth(names, format.month(index));
}
