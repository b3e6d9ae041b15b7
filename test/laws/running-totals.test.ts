import { describe, expect } from 'vitest';
import { cumulative } from '../../src/engine/season/cumulative.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { zoneFigure } from '../../src/engine/season/zone-week.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { law } from './law.ts';

describe('running totals', () => {
  law('start with the first week, add up to the season, and count from its start what went unmet', {
    on: arbitraryGarden({ mostZones: 2 }),
    runs: 150,
    holds: (garden) => {
      for (const zone of runSeason(garden).zones) {
        const running = cumulative(zone);
        const sums = { rain: 0, irrigation: 0, gross: 0, fromSoil: 0, demand: 0, unmet: 0 };
        for (let week = 0; week < zone.weeks; week++) {
          sums.rain += zoneFigure(zone, 'rainStayedLitres', week);
          sums.irrigation += zoneFigure(zone, 'irrigationStayedLitres', week);
          sums.gross += zoneFigure(zone, 'litres', week);
          sums.fromSoil -= zoneFigure(zone, 'storageLitres', week);
          sums.demand += zoneFigure(zone, 'demandLitres', week);
          sums.unmet += zoneFigure(zone, 'demandLitres', week) - zoneFigure(zone, 'usedLitres', week);
          expect(running.rain[week]).toBeCloseTo(sums.rain, 6);
          expect(running.irrigation[week]).toBeCloseTo(sums.irrigation, 6);
          expect(running.irrigationGross[week]).toBeCloseTo(sums.gross, 6);
          expect(running.fromSoil[week]).toBeCloseTo(Math.max(0, sums.fromSoil), 6);
          expect(running.demand[week]).toBeCloseTo(sums.demand, 6);
          expect(running.unmet[week]).toBeCloseTo(sums.unmet, 6);
        }
        const short = [...running.unmet].findIndex((litres) => litres > 0.5);
        expect(running.firstShortWeek).toBe(short);
      }
    },
  });

  law('meet: demand is what rain, irrigation and the soil gave, and what went unmet', {
    on: arbitraryGarden({ mostZones: 2 }),
    runs: 150,
    holds: (garden) => {
      for (const zone of runSeason(garden).zones) {
        const { rain, irrigation, demand, unmet } = cumulative(zone);
        let soil = 0;
        for (let week = 0; week < zone.weeks; week++) {
          soil -= zoneFigure(zone, 'storageLitres', week);
          const given = (rain[week] ?? 0) + (irrigation[week] ?? 0) + soil + (unmet[week] ?? 0);
          expect(Math.abs(given - (demand[week] ?? 0))).toBeLessThanOrEqual(1e-9 * Math.max(1, demand[week] ?? 0));
        }
      }
    },
  });
});
