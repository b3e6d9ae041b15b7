import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../src/engine/units.ts';
import { gardenWords } from '../../src/language/en/garden.ts';
import { gardenPlaceWords } from '../../src/language/en/garden-place.ts';
import { gardenZonesWords } from '../../src/language/en/garden-zones.ts';
import { formatFor } from '../../src/language/format/format.ts';
import { readerFor } from '../../src/language/reader.ts';

const said = (units: UnitSystem, locale: string) => {
  const reader = readerFor(locale, units);
  const { language } = reader;
  const format = formatFor(reader);
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  const { lineForm, ...zones } = gardenZonesWords(language);
  const { site, supply } = gardenPlaceWords(language);
  return {
    spacing: plain(lineForm.spacing.help(format)),
    rise: plain(lineForm.risePercent.help(format)),
    wind: plain(site.windHeight.help(format)),
    pressure: plain(supply.pressure.help(format)),
    zone: (plantings: number) => plain(zones.zoneSummary(format, plantings, 9)),
    window: supply.hoursPerDay.help,
    bucket: supply.volume.help,
    units: gardenWords(language).unitSystems.metric,
  };
};

describe('the garden’s forms', () => {
  it('say the figures of their help in the plan’s own units', () => {
    const us = said('us', 'en-US');
    const metric = said('metric', 'en-US');
    expect([us.spacing, metric.spacing]).toEqual([expect.stringContaining('6 in'), expect.stringContaining('15 cm')]);
    // Wind is converted to 2 m (FAO-56 eq. 47), which is 6.56 ft.
    expect([us.wind, metric.wind]).toEqual([expect.stringContaining('6.6 ft'), expect.stringContaining('2 m,')]);
    // 1 psi = 6.894757 kPa (NIST SP 811, appendix B): 20 psi are 138 kPa.
    expect([us.pressure, metric.pressure]).toEqual([
      expect.stringContaining('20 psi'),
      expect.stringContaining('138 kPa'),
    ]);
    // Water of 1000 kg/m3 under 9.80665 m/s2 weighs 9.807 kPa a meter: over 0.3048 m that is 0.4335 psi.
    expect((9.80665 * 0.3048) / 6.894757293168).toBeCloseTo(0.433, 2);
    expect([us.rise, metric.rise]).toEqual([
      expect.stringContaining('foot of rise takes 0.433 psi'),
      expect.stringContaining('meter of rise takes 9.8 kPa'),
    ]);
  });

  it('are spelled for the reader', () => {
    const us = said('metric', 'en-US');
    const gb = said('metric', 'en-GB');
    expect([us.units, gb.units]).toEqual(['Liters, millimeters, °C', 'Litres, millimetres, °C']);
    expect([us.window, gb.window]).toEqual([
      expect.stringContaining('neighbors'),
      expect.stringContaining('neighbours'),
    ]);
    expect([us.bucket, gb.bucket]).toEqual([expect.stringContaining('faucet'), expect.stringContaining('tap ')]);
    expect(gb.rise).toContain('metre of rise');
  });

  it('count plantings in the form that the number takes', () => {
    const { zone } = said('us', 'en-US');
    expect(zone(1)).toMatch(/^1 planting, /);
    expect(zone(3)).toMatch(/^3 plantings, /);
  });
});
