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
    ['2027-02-30,1,5,9', { code: 'date' }],
    ['tomorrow,1,5,9', { code: 'date' }],
    ['2027-05-01,-1,5,9', { code: 'rain', low: 0, high: 2000, units: 'metric' }],
    ['2027-05-01,1;2,5,9', { code: 'rain', value: '1;2' }],
    ['2027-05-01,=1+1,5,9', { code: 'rain', value: '=1+1' }],
    ['2027-05-01,1,cold,9', { code: 'temperature', low: -70, high: 60, units: 'metric', value: 'cold' }],
    ['2027-05-01,1,5,warm', { code: 'temperature', value: 'warm' }],
    ['2027-05-01,1,9,5', { code: 'high-below-low' }],
  ] as const)('names the line of %s and keeps the others', (row, fault) => {
    const { days, faults } = readDailyWeather(
      `date,rain,tmin,tmax\n2027-04-30,0,4,8\n${row}\n2027-05-02,0,4,8\n`,
      'metric',
    );
    expect(days).toHaveLength(2);
    expect(faults).toMatchObject([{ line: 3, ...fault }]);
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
