/** What the trace calls the values of its steps, with the symbols that their formulas use. */
import type { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import type { ReadingOrigin } from '../../engine/garden-weather.ts';
import type { Names } from '../../engine/names.ts';
import type { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import type { Named, OfDay, OfLine, OfMonth } from '../../explain/trace/label-about.ts';
import type { DaysRead } from '../../explain/trace/label-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { TraceLabels } from '../trace-words.ts';

type DaysFrom = (typeof ETO_METHODS)[number] | (typeof RAIN_ORIGINS)[number] | ReadingOrigin;

const FROM: Readonly<Record<DaysFrom, string>> = {
  normals: 'from the normals',
  observed: 'as measured',
  'observed-day': 'as measured',
  'penman-monteith': 'by Penman-Monteith',
  'hargreaves-samani': 'by Hargreaves-Samani',
  'observed-week': 'from the measured total of the week',
  forecast: 'as forecast',
  // Nobody typed these.
  service: 'from the weather service',
  file: 'from a file',
  estimate: 'estimated',
};

const DAYS = { one: 'day', other: 'days' };

/** After the name of what a line brings, where a planting has more than one line in the week. */
export const ofLine = ({ weekday }: Format, { line, from }: OfLine): string =>
  `${line === undefined ? '' : `, line ${line}`}${from === undefined ? '' : `, from ${weekday(from)}`}`;

/** A label, or a title, of one day of the week. */
export const onDay =
  (what: string) =>
  ({ weekday }: Format, { day }: OfDay): string =>
    `${weekday(day)}, ${what}`;

export const ofPlanting =
  (what: string) =>
  (_: Format, { name }: Named): string =>
    `${name}, ${what}`;

export const between =
  (what: string) =>
  ({ weekday }: Format, { day, lastDay }: OfDay & { readonly lastDay: number }): string =>
    `${what}, ${weekday(day)} to ${weekday(lastDay)}`;

const perLine =
  (what: string) =>
  (format: Format, of: OfLine): string =>
    `${what}${ofLine(format, of)}`;

export const traceLabels = {
  'eto-days': (
    { count }: Format,
    { days, method, from }: DaysRead & { readonly method: (typeof ETO_METHODS)[number] },
  ) => `${count(days, DAYS)} ${FROM[from ?? method]}`,
  'rain-days': (
    { count }: Format,
    { days, origin, from }: DaysRead & { readonly origin: (typeof RAIN_ORIGINS)[number] },
  ) => `${count(days, DAYS)} ${FROM[from ?? origin]}`,
  'min-temperature': 'Lowest temperature Tmin',
  'max-temperature': 'Highest temperature Tmax',
  'vapour-pressure': 'Vapor pressure ea',
  'wind-2m': 'Wind at 2 m u2',
  'net-radiation': 'Net radiation Rn',
  'soil-heat': 'Heat into the soil G',
  elevation: 'Elevation z',
  'mean-days': 'Days',
  'not-known': 'Not known',
  'extraterrestrial-radiation': 'Sunlight above the air Ra, as water in a day',
  'month-total': ({ month }: Format, of: OfMonth) => `${month(of.month)}, total`,
  'usual-of-days': ({ count, number }: Format, of: { readonly days: number; readonly times: number }) =>
    `${count(of.days, DAYS)} × ${number(of.times, 2)}`,
  'week-start': 'First day of the week',
  'days-of-week': 'Days',
  'week-total': 'Total of the week',
  'own-figure-total': 'Days with their own figure',
  'sharing-days': 'Days that share',
  'read-through': 'Read through',
  'rain-day-share': 'Share of days with rain',
  'days-wet': 'Days with rain',
  'counted-days': 'Days counted here',

  'plant-factor': ({ name }: Format, { plant }: { readonly plant: Names }) => `Plant factor ks, ${name(plant)}`,
  density: 'Density kd',
  microclimate: 'Microclimate kmc',
  'growth-start': 'Growth starts',
  'growth-day': 'Day of growth, first day of the week in the ground',
  'growth-days-left': 'Days until growth starts anew',
  'ground-days': 'Days in the ground',
  'stage-initial': 'Initial stage',
  'stage-development': 'Development',
  'stage-mid': 'Mid-season',
  'stage-late': 'Late season',
  'kc-initial': 'Kc ini',
  'kc-mid': 'Kc mid',
  'kc-end': 'Kc end',
  'establishing-factor': 'Establishing factor',
  'establishing-days': 'Establishing days',
  coefficient: 'Coefficient K',
  eto: 'ETo of the days in the ground',
  'day-coefficient': onDay('K'),
  'day-eto': onDay('ETo'),
  'month-rain': 'Rain of the month P',
  'month-demand': 'Demand of the month ETc',
  'mean-readily-available': 'Mean RAW',
  'mean-demand': 'Mean ETc of a day',
  years: 'Years',
  'years-rain': 'Rain, mean of a year',
  'years-kept': 'Rain kept, mean of a year',
  'counted-share': 'Share that counts',
  'normal-rain': ({ month }: Format, of: OfMonth) => `${month(of.month)}, rain from the normals`,
  'rain-share': ({ month }: Format, of: OfMonth) => `Share of ${month(of.month)}’s rain`,
  'day-rain': onDay('rain'),
  runoff: 'Runoff',
  'soil-available-water': ({ name }: Format, { texture }: { readonly texture: Names }) =>
    `Available water of the soil, ${name(texture)}`,
  'root-depth': 'Root depth Zr',
  'pot-mix': 'Mix in all its pots',
  'mix-available': 'Share of the mix that is water for plants',
  'available-water': 'Total available water TAW',
  'allowed-depletion': 'Allowed depletion p',
  'day-demand': onDay('ETc'),
  'day-readily-available': onDay('readily available water RAW'),
  'start-share': 'Starting depletion, as a share of the allowed depletion',
  'target-share': 'Target share of the allowed depletion',
  'depletion-before': ({ number }: Format, { week }: { readonly week: number }) =>
    `Depletion at the end of week ${number(week)}`,
  'depletion-start': 'Depletion at the week’s start',
  rooted: 'Missing in the soil that roots grew into',
  'readily-available-then': ({ weekday }: Format, { day, nextWeek }: OfDay & { readonly nextWeek: boolean }) =>
    `${weekday(day)}${nextWeek ? ' next week' : ''}, RAW, which allows least`,
  target: 'Target depletion T',
  'establishing-until': 'Establishing until',
  due: 'Due for a refill',
  'days-due': 'Days due',
  'still-due': 'Still due for a refill',
  resting: 'Asks for no water',
  filling: 'Depletion when it became due',
  'day-change': onDay('demand less rain'),
  goal: ({ weekday }: Format, { day }: OfDay) => `Depletion to reach by the end of ${weekday(day)}`,
  'watering-days-in-ground': 'Watering days in the ground',

  line: 'Line',
  emitters: 'Emitters',
  'emitter-flow': 'Flow of one emitter',
  'wetted-ground': perLine('Ground that it wets'),
  'source-pressure': 'Pressure of the source',
  'flow-through': 'Flow Q through it',
  'solid-length': perLine('Length'),
  'solid-bore': perLine('Inside diameter d'),
  smoothness: perLine('Smoothness C'),
  'climb-loss': perLine('Lost by climbing'),
  'friction-loss': perLine('Lost by friction'),
  'line-pressure': 'Pressure at the line',
  'least-pressure': 'Minimum operating pressure',
  exponent: 'Exponent x',
  'mean-emitter-flow': 'Mean flow of an emitter there',
  'line-flow': perLine('Flow of the line'),
  ground: 'Ground of the planting',
  'application-rate': perLine('Application rate'),
  'net-rate': perLine('Net application rate'),
  efficiency: 'Irrigation efficiency',
  need: 'Net need',
  'day-depletion-start': onDay('depletion at the start'),
  'demand-between': between('Demand'),
  'day-rain-soaked': onDay('rain that soaks in'),
  'day-net-rate': onDay('net application rate'),
  'week-watering-days': 'Watering days of the week',
  'days-asking': 'Days it asks',
  'days-watering': 'Days of watering',
  'days-open': 'Days its line is open',
  'days-running': 'Days the zone runs',
  'zone-minutes': 'Minutes that the zone runs',
  'minutes-on-days': ({ count }: Format, { openDays }: { readonly openDays: number }) =>
    `Minutes it asks for on ${count(openDays, DAYS)}`,
  'hand-set-days': 'Open days set by hand',
  'minutes-asked': 'Minutes it asks for',
  'irrigation-gross': 'Gross irrigation',
  'irrigation-net': 'Net irrigation',
  planting: (_: Format, { name }: Named) => name,
  zone: (_: Format, { name }: Named) => name,
  'litres-of-a-minute': ofPlanting('net water of a minute'),
  origin: 'The minutes are',
  'water-at-hand': ofPlanting('water at hand, RAW less the room left for rain'),
  'daily-use': ofPlanting('expected use of a day, where that lasts least'),
  'allowed-days': 'Days on which water may run',
  'minutes-given': 'Minutes of the week, as given',
  'minutes-needed': 'Minutes needed',
  'timer-step': 'Timer step',
  'longest-cycle': 'Longest cycle',
  'starts-a-day': 'Starts a day',
  'depletion-of': ofPlanting('depletion Dr'),
  'net-rate-of': ofPlanting('net application rate'),
  'lasts-from': ofPlanting('greatest Dr that lasts'),
  'run-days': 'Days that run',
  'minutes-per-day': 'Minutes per watering day',
  'cut-share': 'Share that is cut',
  'day-minutes': onDay('minutes'),
  'minutes-watered': perLine('Minutes it is watered'),

  'day-depletion-end': onDay('depletion at the end'),
  'day-stress': onDay('Ks'),
  'day-water-there': onDay('water there'),
  'day-used': onDay('used'),
  'day-irrigation': onDay('irrigation'),
  demand: 'Demand ETc',
  used: 'Water used',
  'effective-rain': 'Effective rain',
  rain: 'Rain',
  'rain-drained': 'Rain drained',
  'irrigation-drained': 'Irrigation drained',
  lost: 'Lost on the way',
  'storage-change': 'Change of the water in the soil',
  'depletion-end': 'Depletion at the week’s end',
  'rain-stayed': 'Rain counted',
  'irrigation-stayed': 'Irrigation kept',
  'unmet-demand': 'Demand less water used',
  missed: 'Missed by the last watering',
  'rounding-lack': 'What rounding to the timer’s step can bring too little',
  unasked: 'Irrigation beyond what the planting asked for',
  'rounding-excess': 'What rounding to the timer’s step can bring too much',
  litres: 'Water applied',
  'rain-litres': 'Rain that fell',
  'demand-litres': 'Demand',
  'used-litres': 'Water used',
  'rain-stayed-litres': 'Rain counted',
  'drained-litres': 'Drained past the roots',
  'lost-litres': 'Lost on the way',
  'storage-litres': 'Change of the water in the soil',
  'ground-of-all': 'Ground of the plantings in the ground',
  'flow-of-all': 'Flow of all its lines',
  'rain-credit-litres': 'Irrigation that the rain saved',
  'weeks-before': 'The weeks before',
  'this-week': 'This week',
  'cumulative-storage': 'Change of the water in the soil since the season began',
  'cumulative-demand': 'Demand since the season began',
  'cumulative-used': 'Water used since the season began',
} satisfies Partial<TraceLabels>;

export const traceLabelWords = area('traceLabels', traceLabels, { 'vapour-pressure': 'Vapour pressure ea' });
