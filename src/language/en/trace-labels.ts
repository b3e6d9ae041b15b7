/** What the trace calls the values of its steps, with the symbols that their formulas use. */
import type { ETO_METHODS } from '../../engine/climate/daily-eto.ts';
import type { Names } from '../../engine/names.ts';
import type { RAIN_ORIGINS } from '../../engine/rain/daily-rain.ts';
import type { Named, OfDay, OfLine, OfMonth } from '../../explain/trace/label-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { TraceLabels } from '../trace-words.ts';

const ETO_FROM: Readonly<Record<(typeof ETO_METHODS)[number], string>> = {
  normals: 'from the normals',
  observed: 'as measured',
  'penman-monteith': 'by Penman-Monteith',
  'hargreaves-samani': 'by Hargreaves-Samani',
  'observed-week': 'from the measured total of the week',
};

const RAIN_FROM: Readonly<Record<(typeof RAIN_ORIGINS)[number], string>> = {
  normals: 'from the normals',
  'observed-day': 'as measured',
  'observed-week': 'from the measured total of the week',
};

const DAYS = { one: 'day', other: 'days' };

/** After the name of what a line brings, where a planting has more than one line in the week. */
export const ofLine = (line: number | undefined): string => (line === undefined ? '' : `, line ${line}`);

/** A label of one day of the week. */
const onDay =
  (what: string) =>
  ({ weekday }: Format, { day }: OfDay): string =>
    `${weekday(day)}, ${what}`;

/** A label of a day that may lie in the week after. */
const onDayOrNext =
  (before: string, after: string) =>
  ({ weekday }: Format, { day, nextWeek }: OfDay & { readonly nextWeek: boolean }): string =>
    `${before}${weekday(day)}${nextWeek ? ' next week' : ''}${after}`;

const between =
  (what: string) =>
  ({ weekday }: Format, { day, lastDay }: OfDay & { readonly lastDay: number }): string =>
    `${what}, ${weekday(day)} to ${weekday(lastDay)}`;

const perLine =
  (what: string) =>
  (_: Format, { line }: OfLine): string =>
    `${what}${ofLine(line)}`;

export const traceLabels = {
  'eto-days': ({ count }: Format, of: { readonly days: number; readonly method: (typeof ETO_METHODS)[number] }) =>
    `${count(of.days, DAYS)} ${ETO_FROM[of.method]}`,
  'rain-days': ({ count }: Format, of: { readonly days: number; readonly origin: (typeof RAIN_ORIGINS)[number] }) =>
    `${count(of.days, DAYS)} ${RAIN_FROM[of.origin]}`,
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
  'week-start': 'First day of the week',
  'days-of-week': 'Days',
  'week-total': 'Total of the week',
  'own-figure-total': 'Days with their own figure',
  'sharing-days': 'Days that share',
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
  'usable-storage': 'Usable storage D, the readily available water',
  'counted-share': 'Share that counts',
  'normal-rain': ({ month }: Format, of: OfMonth) => `${month(of.month)}, rain from the normals`,
  'rain-share': ({ month }: Format, of: OfMonth) => `Share of ${month(of.month)}’s rain`,
  'day-rain': onDay('measured rain'),
  'week-rain': 'From the week’s measured total',
  runoff: 'Runoff',
  'soil-available-water': ({ name }: Format, { texture }: { readonly texture: Names }) =>
    `Available water of the soil, ${name(texture)}`,
  'root-depth': 'Root depth Zr',
  'available-water': 'Total available water TAW',
  'allowed-depletion': 'Allowed depletion p',
  'day-demand': onDay('ETc'),
  'day-readily-available': onDay('readily available water RAW'),
  'start-share': 'Starting depletion, as a share of the allowed depletion',
  'target-share': 'Target share of the allowed depletion',
  'depletion-before': ({ number }: Format, { week }: { readonly week: number }) =>
    `Depletion at the end of week ${number(week)}`,
  'depletion-start': 'Depletion at the week’s start',
  'depletion-left-alone': onDayOrNext('Depletion at the end of ', ', if left alone'),
  'readily-available-then': onDayOrNext('Readily available water RAW, ', ''),
  filled: 'Filled this week',
  target: 'Target depletion T',
  'demand-after': 'Demand of the days after',
  'rain-after': 'Rain of the days after',
  'greatest-before': 'Greatest from which none of the days after starts beyond its RAW',
  'day-change': onDay('demand less rain'),
  goal: ({ weekday }: Format, { day }: OfDay) => `Depletion to reach by the end of ${weekday(day)}`,
  'watering-days-in-ground': 'Watering days in the ground',

  line: 'Line',
  emitters: 'Emitters',
  'emitter-flow': 'Flow of one emitter',
  'line-flow': perLine('Flow of the line'),
  ground: 'Ground of the planting',
  'application-rate': perLine('Application rate'),
  'net-rate': perLine('Net application rate'),
  efficiency: 'Irrigation efficiency',
  need: 'Net need',
  'rate-on-watering-days': 'Net application rate on its watering days',
  'day-depletion-start': onDay('depletion at the start'),
  'demand-between': between('Demand'),
  'rain-between': between('Rain that soaks in'),
  'watering-days': perLine('Watering days'),
  'day-rain-soaked': onDay('rain that soaks in'),
  'day-net-rate': onDay('net application rate'),
  'zone-minutes-per-day': 'Minutes per watering day of the zone',
  'week-watering-days': 'Watering days of the week',
  'hand-set-days': 'Open days set by hand',
  'of-these-in-ground': 'Of these in the ground',
  'minutes-asked': 'Minutes it asks for per watering day',
  'depletion-reached': ({ count }: Format, { openDays }: { readonly openDays: number }) =>
    `${count(openDays, DAYS)} open: depletion reached`,
  'depletion-to-reach': ({ count }: Format, { openDays }: { readonly openDays: number }) =>
    `${count(openDays, DAYS)} open: depletion to reach`,
  'open-days': perLine('Open days'),
  'irrigation-gross': 'Gross irrigation',
  'irrigation-net': 'Net irrigation',
  planting: (_: Format, { name }: Named) => name,
  zone: (_: Format, { name }: Named) => name,
  'litres-of-a-minute': (_: Format, { name }: Named) => `${name}, net water of a minute on each watering day`,
  origin: 'The minutes are',
  'minutes-given': 'Minutes of the week, as given',
  'minutes-needed': 'Minutes needed per watering day',
  'timer-step': 'Timer step',
  'longest-cycle': 'Longest cycle',
  'minutes-per-day': 'Minutes per watering day',
  'day-minutes': onDay('minutes'),
  'minutes-watered': perLine('Minutes it is watered'),

  'day-depletion': onDay('depletion Dr'),
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
  'irrigation-stayed': 'Irrigation that stayed',
  'unmet-demand': 'Demand less water used',
  'end-goal': 'Depletion the week should end with',
  'rounding-excess': 'What rounding to the timer’s step can bring too much',
  litres: 'Water applied',
  'rain-litres': 'Rain that fell',
  'demand-litres': 'Demand',
  'used-litres': 'Water used',
  'rain-stayed-litres': 'Rain counted',
  'irrigation-stayed-litres': 'Irrigation that stayed',
  'drained-litres': 'Drained past the roots',
  'lost-litres': 'Lost on the way',
  'storage-litres': 'Change of the water in the soil',
  'needed-litres': 'Net need',
  'ground-of-all': 'Ground of the plantings in the ground',
  'flow-of-all': 'Flow of all its lines',
  'rain-credit-litres': 'Irrigation that the rain saved',
  'weeks-before': 'The weeks before',
  'this-week': 'This week',
  'cumulative-storage': 'Change of the water in the soil since the season began',
  'cumulative-demand': 'Demand since the season began',
  'cumulative-used': 'Water used since the season began',
} satisfies TraceLabels;

export const traceLabelWords = area('traceLabels', traceLabels, { 'vapour-pressure': 'Vapour pressure ea' });
