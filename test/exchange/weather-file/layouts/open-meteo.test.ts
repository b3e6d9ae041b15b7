/** The Open-Meteo layout, as its documentation and recorded answers have it; the days are made. */
import { describe, expect, it } from 'vitest';
import { recordGaps } from '../../../../src/engine/record/record-gaps.ts';
import { readWeatherFile } from '../../../../src/exchange/weather-file/read-weather-file.ts';
import { FIRST_DAY, FLAGGED, GAP, MADE_DAYS } from './made-days.ts';
import { openMeteoAnswer, openMeteoCsvText } from './open-meteo.ts';

const text = (answer: unknown) => JSON.stringify(answer);

describe('the Open-Meteo layout', () => {
  it.each([
    ['as JSON', text(openMeteoAnswer())],
    ['as CSV', openMeteoCsvText()],
    ['as CSV with a garbled degree sign', openMeteoCsvText().replaceAll('°', 'Â°')],
  ])('is read %s: nulls are missing, the place is there, no greatest wind is taken for a mean', (_, written) => {
    const file = readWeatherFile(written);
    expect(file).toMatchObject({ isModel: true, asked: [], refused: undefined, faults: [] });
    expect(file.place).toMatchObject({
      latitudeDeg: 47.45,
      longitudeDeg: -122.3,
      elevationM: 130,
      timeZone: 'America/Los_Angeles',
    });
    const columns = file.record?.columns ?? {};
    expect(Object.keys(columns).sort()).toEqual(['etoMm', 'maxTemperatureC', 'minTemperatureC', 'rainMm']);
    expect(columns.rainMm?.[6]).toBe(MADE_DAYS[6]?.rainMm);
    expect(columns.maxTemperatureC?.[FLAGGED]).toBeNaN();
    if (file.record === undefined) return;
    expect(recordGaps(file.record, 'rainMm')).toEqual([{ firstDay: FIRST_DAY + GAP.first, days: GAP.days }]);
    expect(recordGaps(file.record, 'maxTemperatureC')).toContainEqual({ firstDay: FIRST_DAY + FLAGGED, days: 1 });
  });

  it('reads the units that the answer names', () => {
    const { record, units } = readWeatherFile(text(openMeteoAnswer({ us: true })));
    expect(units.depth).toEqual({ system: 'us', by: 'file' });
    expect(record?.columns.etoMm?.[0]).toBeCloseTo(5.08, 9);
    expect(record?.columns.maxTemperatureC?.[0]).toBeCloseTo(20, 1);
  });

  it('finds °F that is called °C', () => {
    const wrong = openMeteoAnswer({ us: true });
    const units = { ...(wrong['daily_units'] as object), temperature_2m_max: '°C', temperature_2m_min: '°C' };
    expect(readWeatherFile(text({ ...wrong, daily_units: units })).refused).toMatchObject({ code: 'wrong-units' });
  });

  it.each([
    [
      'an error',
      { error: true, reason: 'Latitude must be in range' },
      { code: 'service', reason: 'Latitude must be in range' },
    ],
    ['hours', { hourly: { time: ['2027-05-01T00:00'] } }, { code: 'hourly' }],
    [
      'days with times',
      { daily: { time: ['2027-05-01T00:00'], precipitation_sum: [1] }, daily_units: { precipitation_sum: 'mm' } },
      { code: 'hourly' },
    ],
    [
      'columns of unlike length',
      { daily: { time: ['2027-05-01'], precipitation_sum: [1, 2] } },
      { code: 'layout', what: 'daily.precipitation_sum' },
    ],
    [
      'a unit that rain has not',
      { daily: { time: ['2027-05-01'], precipitation_sum: [1] }, daily_units: { precipitation_sum: 'K' } },
      { code: 'layout', what: 'precipitation_sum (K)' },
    ],
    ['something else', { days: 5 }, { code: 'layout', what: 'daily.time' }],
    ['no variable that is known', { daily: { time: ['2027-05-01'], snowfall_sum: [1] } }, { code: 'no-days' }],
  ])('says what is wrong with %s', (_, answer, refused) => {
    expect(readWeatherFile(text(answer))).toMatchObject({ record: undefined, refused });
  });

  it('says that half an answer is none', () => {
    expect(readWeatherFile(text(openMeteoAnswer()).slice(0, 500)).refused).toEqual({ code: 'layout', what: 'JSON' });
  });

  it('asks which of several places', () => {
    const several = text([openMeteoAnswer(), { ...openMeteoAnswer(), location_id: 1, latitude: 40 }]);
    expect(readWeatherFile(several).asked).toEqual(['place']);
    expect(readWeatherFile(several, { place: '1' }).place?.latitudeDeg).toBe(40);
  });
});
