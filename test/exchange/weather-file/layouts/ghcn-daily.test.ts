/** The fixed-width layout of GHCN-Daily, as lines of public files have it; the days are made. */
import { describe, expect, it } from 'vitest';
import { isoDate } from '../../../../src/engine/calendar.ts';
import { readWeatherFile } from '../../../../src/exchange/weather-file/read-weather-file.ts';
import { countOf, expectMade } from './expect-made.ts';
import { FLAGGED, TRACED, WRITTEN } from './made-days.ts';

const READINGS = { PRCP: 'rainMm', TMAX: 'maxTemperatureC', TMIN: 'minTemperatureC' } as const;

const MISSING = '-9999   ';

/** Value and flags of one day, five columns and three; the 31st of June is missing too. */
function cell(element: keyof typeof READINGS, month: number, date: number): string {
  const made = WRITTEN.find(({ day }) => isoDate(day) === isoDay(month, date));
  if (made === undefined) return MISSING;
  if (element === 'PRCP' && made.index === TRACED) return '    0T S';
  const quality = element === 'TMAX' && made.index === FLAGGED ? 'X' : ' ';
  return `${String(Math.round(made[READINGS[element]] * 10)).padStart(5)} ${quality}S`;
}

const twoDigits = (value: number) => String(value).padStart(2, '0');
const isoDay = (month: number, date: number) => `2027-${twoDigits(month)}-${twoDigits(date)}`;

/** May to July 2027, three elements and one that is not read. */
function dlyFile(station = 'XX000000001'): string {
  const lines = [5, 6, 7].flatMap((month) => [
    ...(Object.keys(READINGS) as (keyof typeof READINGS)[]).map((element) => {
      const days = Array.from({ length: 31 }, (_, date) => cell(element, month, date + 1));
      return `${station}2027${twoDigits(month)}${element}${days.join('')}`;
    }),
    `${station}2027${twoDigits(month)}TAVG${'  124H S'.repeat(31)}`,
  ]);
  return `${lines.join('\n')}\n`;
}

describe('the GHCN-Daily layout', () => {
  it('reads tenths, leaves out -9999, flagged days and other elements', () => {
    const file = readWeatherFile(dlyFile());
    expect(file.kind).toBe('ghcn-daily');
    expectMade(file, { rainMm: 1e-9, temperatureC: 1e-9 });
    expect(countOf('flagged', 'maxTemperatureC', file.leftOut)).toBe(1);
    expect(Object.keys(file.record?.columns ?? {}).sort()).toEqual(['maxTemperatureC', 'minTemperatureC', 'rainMm']);
  });

  it('reads lines whose blanks at the end were cut off', () => {
    expectMade(readWeatherFile(dlyFile().replaceAll(/ +$/gm, '')), { rainMm: 1e-9, temperatureC: 1e-9 });
  });

  it('asks for the station where the file has two', () => {
    const two = dlyFile() + dlyFile('XX000000002');
    expect(readWeatherFile(two).asked).toEqual(['place']);
    expectMade(readWeatherFile(two, { place: 'XX000000002' }), { rainMm: 1e-9, temperatureC: 1e-9 });
  });

  it('names the line that is cut in the middle', () => {
    const broken = `${dlyFile()}XX00000000120270`;
    const { faults, record } = readWeatherFile(broken, { place: 'XX000000001' });
    expect(faults).toMatchObject([{ code: 'date', line: 13 }]);
    expect(record).toBeDefined();
  });
});
