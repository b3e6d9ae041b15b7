/** A weather service that answers in the documented layout, in place of the network. */
import { type DayNumber, dayNumber, type IsoDate, isoDate } from '../../../src/engine/calendar.ts';

interface DayAnswered {
  readonly highC: number;
  readonly lowC: number;
  readonly rainMm: number;
  readonly etoMm: number;
}

/** An answer in the documented layout, for the days from one to another. */
export function answerOf(first: DayNumber, last: DayNumber, weatherOf: (day: DayNumber) => DayAnswered): string {
  const days = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const each = days.map(weatherOf);
  return JSON.stringify({
    latitude: 47.6,
    longitude: -122.35,
    elevation: 56,
    timezone: 'America/Los_Angeles',
    daily_units: {
      time: 'iso8601',
      temperature_2m_max: '°C',
      temperature_2m_min: '°C',
      precipitation_sum: 'mm',
      et0_fao_evapotranspiration: 'mm',
    },
    daily: {
      time: days.map(isoDate),
      temperature_2m_max: each.map(({ highC }) => highC),
      temperature_2m_min: each.map(({ lowC }) => lowC),
      precipitation_sum: each.map(({ rainMm }) => rainMm),
      et0_fao_evapotranspiration: each.map(({ etoMm }) => etoMm),
    },
  });
}

/** Invented weather that a year turns, of every day from one to another. */
export function serviceAnswer(from: IsoDate, to: IsoDate): string {
  return answerOf(dayNumber(from), dayNumber(to), (day) => {
    const warmth = 1 - Math.cos((2 * Math.PI * day) / 365.25);
    return {
      highC: 8 + 9 * warmth,
      lowC: 2 + 6 * warmth,
      rainMm: (day * 7919) % 11 < 4 ? 8 - 3.5 * warmth : 0,
      etoMm: 0.6 + 2.4 * warmth,
    };
  });
}

/** While it lasts, `fetch` of that host is answered here, and of any other as ever. */
export function answeredBy(host: string, answer: () => Response): { begin(): void; end(): void } {
  const { fetch } = window;
  return {
    begin() {
      window.fetch = (input, options) => {
        const url = new URL(input instanceof Request ? input.url : input, location.href);
        return url.host === host ? Promise.resolve(answer()) : fetch(input, options);
      };
    },
    end() {
      window.fetch = fetch;
    },
  };
}
