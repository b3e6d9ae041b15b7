/** A server on this machine that answers in the Open-Meteo layout, as its documentation says, with invented weather. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dayNumber, isoDate, monthOf } from '../../../src/engine/calendar.ts';

export interface LayoutServer {
  readonly base: string;
  /** Path and query of everything that was asked. */
  readonly asked: string[];
  /** Answers the next requests in another way. */
  answer: ((request: IncomingMessage, response: ServerResponse) => void) | undefined;
  close(): Promise<void>;
}

/** `today`: the day on which the server believes to be. */
export async function layoutServer(today: string): Promise<LayoutServer> {
  const asked: string[] = [];
  const server: Server = createServer((request, response) => {
    asked.push(request.url ?? '');
    response.setHeader('access-control-allow-origin', '*');
    if (kept.answer !== undefined) kept.answer(request, response);
    else answerLayout(new URL(request.url ?? '', kept.base), today, response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const kept: LayoutServer = {
    base: `http://127.0.0.1:${port}/v1/`,
    asked,
    answer: undefined,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
  return kept;
}

function answerLayout(url: URL, today: string, response: ServerResponse): void {
  const ask = (name: string) => url.searchParams.get(name) ?? '';
  const now = dayNumber(today);
  const [first, last] = url.pathname.endsWith('/archive')
    ? [dayNumber(ask('start_date')), Math.min(dayNumber(ask('end_date')), now - 5)]
    : [now - Number(ask('past_days')), now + Number(ask('forecast_days')) - 1];
  const names = ask('daily').split(',');
  const days = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const daily = Object.fromEntries(names.map((name) => [name, days.map((day) => madeFor(name, day))]));
  const units = Object.fromEntries(names.map((name) => [name, name.startsWith('temperature') ? '°C' : 'mm']));
  response.setHeader('content-type', 'application/json');
  response.end(
    JSON.stringify({
      latitude: Number(ask('latitude')),
      longitude: Number(ask('longitude')),
      elevation: 56,
      timezone: 'America/Los_Angeles',
      daily_units: { time: 'iso8601', ...units },
      daily: { time: days.map(isoDate), ...daily },
    }),
  );
}

/** Wet winters and dry summers. */
function madeFor(name: string, day: number): number {
  const summer = (1 - Math.cos((2 * Math.PI * (monthOf(day) + 0.5)) / 12)) / 2;
  if (name === 'precipitation_sum') return day % 3 === 0 ? Number((6 * (1 - summer) + (day % 5)).toFixed(1)) : 0;
  if (name === 'et0_fao_evapotranspiration') return Number((1 + 4 * summer).toFixed(2));
  return Number((name.endsWith('max') ? 8 + 17 * summer : 2 + 11 * summer).toFixed(1));
}
