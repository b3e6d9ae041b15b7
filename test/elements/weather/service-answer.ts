/** A weather service that answers in the documented layout, in place of the network. */
import { dayNumber, type IsoDate, isoDate } from '../../../src/engine/calendar.ts';

/** Invented weather of every day from one to another. */
export function serviceAnswer(from: IsoDate, to: IsoDate): string {
  const first = dayNumber(from);
  const days = Array.from({ length: dayNumber(to) - first + 1 }, (_, index) => first + index);
  const warmth = (day: number) => 1 - Math.cos((2 * Math.PI * day) / 365.25);
  return JSON.stringify({
    ...{ latitude: 47.6, longitude: -122.35, elevation: 56, timezone: 'America/Los_Angeles' },
    daily_units: {
      time: 'iso8601',
      temperature_2m_max: '°C',
      temperature_2m_min: '°C',
      precipitation_sum: 'mm',
      et0_fao_evapotranspiration: 'mm',
    },
    daily: {
      time: days.map(isoDate),
      temperature_2m_max: days.map((day) => 8 + 9 * warmth(day)),
      temperature_2m_min: days.map((day) => 2 + 6 * warmth(day)),
      precipitation_sum: days.map((day) => ((day * 7919) % 11 < 4 ? 8 - 3.5 * warmth(day) : 0)),
      et0_fao_evapotranspiration: days.map((day) => 0.6 + 2.4 * warmth(day)),
    },
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
