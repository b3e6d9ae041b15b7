import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { readWeatherFile } from '../../../src/exchange/weather-file/read-weather-file.ts';
import { requestWeather } from '../../../src/exchange/weather-service/request-weather.ts';
import {
  archiveRequest,
  forecastRequest,
  placeSaid,
  weatherServiceOf,
} from '../../../src/exchange/weather-service/weather-service.ts';
import { takeClimate } from '../../../src/exchange/weather-take/take-climate.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { type LayoutServer, layoutServer } from './layout-server.ts';

const PLACE = { latitudeDeg: 47.6062, longitudeDeg: -122.3321 };

describe('the addresses that a page’s owner names', () => {
  it('are told by how they end; others are files', () => {
    const service = weatherServiceOf(
      'https://a.example/v1/archive https://b.example/v1/forecast?key=1 years.csv',
      'https://club.example/garden/',
    );
    expect(service?.archive?.href).toBe('https://a.example/v1/archive');
    expect(service?.forecast?.href).toBe('https://b.example/v1/forecast?key=1');
    expect(service?.files.map(({ href }) => href)).toEqual(['https://club.example/garden/years.csv']);
  });

  it.each(['', '  ', undefined, 'javascript:alert(1)', 'https://a.example/archive data:text/plain,x', 'http://['])(
    'are none in %j',
    (named) => {
      expect(weatherServiceOf(named, 'https://club.example/')).toBeUndefined();
    },
  );

  it('are asked for a place to 0.05 degrees, and keep what they ask already', () => {
    expect(placeSaid(PLACE)).toEqual({ latitudeDeg: 47.6, longitudeDeg: -122.35 });
    expect(placeSaid({ latitudeDeg: -0.01, longitudeDeg: 179.99 })).toEqual({ latitudeDeg: 0, longitudeDeg: 180 });
    const url = archiveRequest(
      new URL('https://a.example/v1/archive?apikey=x'),
      PLACE,
      dayNumber('1991-01-01'),
      dayNumber('2020-12-31'),
    );
    expect(Object.fromEntries(url.searchParams)).toEqual({
      apikey: 'x',
      latitude: '47.6',
      longitude: '-122.35',
      start_date: '1991-01-01',
      end_date: '2020-12-31',
      daily: 'temperature_2m_max,temperature_2m_min,precipitation_sum,et0_fao_evapotranspiration',
      timezone: 'auto',
    });
    expect(forecastRequest(new URL('https://a.example/forecast'), PLACE, 300).searchParams.get('past_days')).toBe('92');
  });
});

describe('a service in the documented layout', () => {
  let server: LayoutServer;
  beforeAll(async () => {
    server = await layoutServer('2027-06-15');
  });
  afterAll(() => server.close());
  beforeEach(() => {
    server.answer = undefined;
    server.asked.length = 0;
  });

  const archive = () =>
    archiveRequest(new URL('archive', server.base), PLACE, dayNumber('1991-01-01'), dayNumber('2020-12-31'));

  it('gives thirty years, which become the climate and the years of a plan', async () => {
    const answer = await requestWeather(archive());
    const file = readWeatherFile(answer.ok ? answer.text : '');
    expect(file.record?.dayCount).toBe(10_958);
    const plan = mixedGarden();
    if (file.record === undefined) return;
    const taken = takeClimate(file.record, plan, { source: 'a service' });
    expect(taken).toMatchObject({ firstYear: 1991, lastYear: 2020, years: 30, lacking: [] });
    expect(taken.etoDays).toEqual({ observed: 10_958, 'penman-monteith': 0, 'hargreaves-samani': 0 });
    const result = taken.edit && tryEdit(plan, taken.edit);
    expect(result?.ok).toBe(true);
    expect(server.asked).toHaveLength(1);
  });

  it.each([
    [
      'too many requests',
      429,
      { 'retry-after': '60' },
      '{"error":true,"reason":"Too many"}',
      { code: 'too-many', seconds: 60 },
    ],
    ['too many, without a time', 429, {}, '', { code: 'too-many', seconds: undefined }],
    [
      'a fault in its own words',
      400,
      {},
      '{"error":true,"reason":"Latitude"}',
      { code: 'refused', status: 400, reason: 'Latitude' },
    ],
    ['a page of an error', 503, {}, '<html>', { code: 'refused', status: 503, reason: '' }],
    ['a way to another server', 302, { location: 'http://127.0.0.1:9/' }, '', { code: 'unreachable' }],
  ])('answers with %s', async (_, status, headers, body, why) => {
    server.answer = (_request, response) => response.writeHead(status, headers).end(body);
    expect(await requestWeather(archive())).toEqual({ ok: false, why });
  });

  it('answers too late, or not at all, or nobody waits any more', async () => {
    server.answer = () => undefined;
    expect(await requestWeather(archive(), { waitMs: 60 })).toEqual({
      ok: false,
      why: { code: 'timeout', seconds: 0.06 },
    });
    const stop = new AbortController();
    const answer = requestWeather(archive(), { signal: stop.signal });
    stop.abort();
    expect(await answer).toEqual({ ok: false, why: { code: 'cancelled' } });
    expect(await requestWeather(new URL('http://127.0.0.1:9/v1/archive'))).toEqual({
      ok: false,
      why: { code: 'unreachable' },
    });
  });
});
