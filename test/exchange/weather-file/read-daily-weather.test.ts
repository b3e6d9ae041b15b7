import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { readDailyWeather } from '../../../src/exchange/weather-file/read-daily-weather.ts';

describe('readDailyWeather', () => {
  it('reads four years of Seattle (vega-datasets, NOAA origin): 1,461 days, 1,226.0 mm in 2012', () => {
    const text = readFileSync(new URL(import.meta.resolve('vega-datasets/data/seattle-weather.csv')), 'utf8');
    const { days, faults } = readDailyWeather(text, 'metric');
    expect(faults).toEqual([]);
    expect(days).toHaveLength(1461);
    const rain2012 = days.slice(0, 366).reduce((sum, { rainMm }) => sum + (rainMm ?? 0), 0);
    expect(rain2012).toBeCloseTo(1226.0, 6);
    const first = { day: dayNumber('2012-01-01'), rainMm: 0, maxTemperatureC: 12.8, minTemperatureC: 5 };
    expect(days[0]).toEqual({ ...first, line: 2 });
  });

  it('converts inches and degrees Fahrenheit', () => {
    const { days } = readDailyWeather('Date,Rain,Low,High\n2027-05-01,0.5,50,68\n', 'us');
    expect(days[0]?.rainMm).toBeCloseTo(12.7, 12);
    expect(days[0]?.minTemperatureC).toBeCloseTo(10, 12);
    expect(days[0]?.maxTemperatureC).toBeCloseTo(20, 12);
  });

  it('takes semicolons, a byte order mark, quoted cells, other columns and blanks', () => {
    const { days, faults } = readDailyWeather('\uFEFF"Station";"Date";"Rainfall"\n"a;b";"2027-05-01";""\n', 'metric');
    expect(faults).toEqual([]);
    expect(days).toEqual([{ day: dayNumber('2027-05-01'), line: 2 }]);
  });

  it.each([
    ['2027-02-30,1,5,9', 'a day as year-month-day'],
    ['tomorrow,1,5,9', 'a day as year-month-day'],
    ['2027-05-01,-1,5,9', 'rain from 0 to 2000 mm'],
    ['2027-05-01,1;2,5,9', 'rain from 0 to 2000 mm'],
    ['2027-05-01,=1+1,5,9', 'rain from 0 to 2000 mm'],
    ['2027-05-01,1,cold,9', 'a lowest temperature from -70 to 60 °C'],
    ['2027-05-01,1,5,warm', 'a highest temperature from -70 to 60 °C'],
    ['2027-05-01,1,9,5', 'not below the lowest'],
  ])('names the line of %s and keeps the others', (row, expected) => {
    const { days, faults } = readDailyWeather(
      `date,rain,tmin,tmax\n2027-04-30,0,4,8\n${row}\n2027-05-02,0,4,8\n`,
      'metric',
    );
    expect(days).toHaveLength(2);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.line).toBe(3);
    expect(faults[0]?.expected).toContain(expected);
  });

  it.each(['', 'a,b\n1,2\n', '<html></html>', 'date\n2027-05-01\n'])(
    'says what a file without its columns lacks: %j',
    (text) => {
      const { days, faults } = readDailyWeather(text, 'metric');
      expect(days).toEqual([]);
      expect(faults[0]).toMatchObject({ line: 1 });
    },
  );
});
