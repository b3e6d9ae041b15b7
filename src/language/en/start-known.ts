/** Beside the steps to a season: what is known of it so far. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const startKnown = {
  title: 'The season so far',
  none: 'Nothing is known yet',
  weather: ({ quantity }: Format, etoMm: number, rainMm: number) =>
    rainMm === 0
      ? `Sun and wind take ${quantity(etoMm, 'depth')}, no rain is counted`
      : `Sun and wind take ${quantity(etoMm, 'depth')}, rain brings ${quantity(rainMm, 'depth')}`,
  noWeather: 'Say where it is first.',
  weatherMissing: 'Its weather is missing',
  placeKnown: 'Get it from the service or a published table.',
  span: ({ days, count }: Format, first: number, last: number, weeks: number) =>
    `${days(first, last, 'full')}, ${count(weeks, { one: 'week', other: 'weeks' })}`,
  rain: 'Rain',
  eto: 'Sun takes (ETo)',
  water: 'Water comes',
  atStep: ({ number }: Format, step: number) => `step ${number(step)}`,
  needs: 'needs',
  gets: 'gets',
  lacks: 'needs, and gets none',
  /** `emitters`: usual ones, all open. */
  feeds: ({ quantity, count }: Format, flowLpm: number, emitters: number) =>
    `${quantity(flowLpm, 'supplyFlow')} feed up to ${count(emitters, { one: 'emitter', other: 'emitters' })} at once`,
  emitters: ({ quantity }: Format, emitterLph: number) => `Usual ones, of ${quantity(emitterLph, 'emitterFlow')} each.`,
  day: ({ count, quantity }: Format, hours: number, litres: number) =>
    `${count(hours, { one: 'hour', other: 'hours' })} a day bring up to ${quantity(litres, 'volume')}`,
  at: ({ quantity }: Format, flowLpm: number) => `At ${quantity(flowLpm, 'supplyFlow')} all the time.`,
  use: ({ count, quantity }: Format, plantings: number, litres: number) =>
    `${count(plantings, { one: 'planting uses', other: 'plantings use' })} up to ${quantity(litres, 'volume')} a week`,
  most: ({ week }: Format, firstDay: number) => `Most in ${week(firstDay)}, before any rain.`,
  picture: 'Weather and plantings by week',
};

export const startKnownWords = area('startKnown', startKnown);
