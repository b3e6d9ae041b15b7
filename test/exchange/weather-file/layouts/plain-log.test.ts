/** A gauge's own log: a layout of nobody's. */
import { describe, expect, it } from 'vitest';
import { isoDate } from '../../../../src/engine/calendar.ts';
import { readWeatherFile } from '../../../../src/exchange/weather-file/read-weather-file.ts';
import { expectMade } from './expect-made.ts';
import { FLAGGED, TRACED, WRITTEN } from './made-days.ts';

function log(headings: readonly string[], { mark = '.' as '.' | ',', us = false } = {}): string {
  const written = (value: number) => value.toFixed(us ? 2 : 1).replace('.', mark);
  const rows = WRITTEN.map(({ day, index, rainMm, minTemperatureC, maxTemperatureC }) => {
    const high = us ? maxTemperatureC * 1.8 + 32 : maxTemperatureC;
    const low = us ? minTemperatureC * 1.8 + 32 : minTemperatureC;
    return [
      isoDate(day),
      index === TRACED ? 'T' : written(us ? rainMm / 25.4 : rainMm),
      written(low),
      index === FLAGGED ? '' : written(high),
    ].join(';');
  });
  return `\uFEFF${[headings.join(';'), ...rows].join('\n')}\n`;
}

describe('a plain log', () => {
  it('is read in the units of its headings, with a decimal comma', () => {
    const file = readWeatherFile(log(['Date', 'Rain (mm)', 'Low (°C)', 'High (°C)'], { mark: ',' }));
    expect(file.kind).toBe('log');
    expectMade(file, { rainMm: 1e-9, temperatureC: 1e-9 });
    expect(file.units.depth).toEqual({ system: 'metric', by: 'file' });
  });

  it('asks for units that no heading names where both are possible', () => {
    const unnamed = log(['Date', 'Rain', 'Low', 'High']);
    expect(readWeatherFile(unnamed)).toMatchObject({ asked: ['units'], record: undefined });
    expectMade(readWeatherFile(unnamed, { units: 'metric' }), { rainMm: 1e-9, temperatureC: 1e-9 });
  });

  it('tells °F by what no place has in °C, and refuses °C for it', () => {
    const unnamed = log(['Date', 'Rain', 'Low', 'High'], { us: true });
    expectMade(readWeatherFile(unnamed), { rainMm: 0.13, temperatureC: 0.01 });
    expect(readWeatherFile(unnamed, { units: 'metric' }).refused).toMatchObject({ code: 'wrong-units' });
  });

  it.each(['', 'hello', 'a,b\n1,2\n', '<html></html>'])('says that %j is none', (text) => {
    expect(readWeatherFile(text)).toMatchObject({ record: undefined, refused: { code: 'no-days' } });
  });
});
