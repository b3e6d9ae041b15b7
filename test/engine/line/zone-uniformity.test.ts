import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowestQuarterUniformity } from '../../../src/engine/application/distribution-uniformity.ts';
import type { GardenLine, GardenPlanting } from '../../../src/engine/garden.ts';
import { asMadeUniformity, USUAL_MANUFACTURING_CV } from '../../../src/engine/line/emission-uniformity.ts';
import { lineProfile } from '../../../src/engine/line/line-profile.ts';
import { zoneUniformity } from '../../../src/engine/line/zone-uniformity.ts';
import { arbitraryLaidLine, laidLine, plantingWith, pointLine } from '../../support/laid-line.ts';

const SEASON = { firstDay: 20_000, lastDay: 20_099 };
const AS_MADE = asMadeUniformity(USUAL_MANUFACTURING_CV, 1);
const SOURCES = [{ from: 20_000, name: 'Main', pressureKpa: 200 }];

const fed = (lines: readonly GardenLine[], change: Partial<GardenPlanting> = {}, sources = SOURCES) =>
  plantingWith(lines, change, sources);
const plain = laidLine({ outlets: 150, compensating: false });

function uniformity(...plantings: ReturnType<typeof plantingWith>[]): number | undefined {
  return zoneUniformity({ plantings, ...SEASON });
}

/** Flow of each emitter of one run at a pressure as a share of what it is sold for. */
function shares(line: ReturnType<typeof laidLine>, kpa = 200): number[] {
  return Array.from(lineProfile(line, plantingWith([line]), kpa)?.flowsLph ?? [], (flow) => flow / line.emitterFlowLph);
}

describe('the uniformity of a zone', () => {
  it('where every emitter compensates is what differences as made leave: 1 - 1.27 x 0.05 (ASAE EP405.1, from memory)', () => {
    expect(uniformity(fed([laidLine({ runs: 3 })]))).toBeCloseTo(0.9365, 12);
  });

  it.each([
    ['a plain line', plain],
    ['a compensating line that is too long', laidLine({ outlets: 700 })],
    ['a loop on a slope', laidLine({ outlets: 200, compensating: false, topology: 'loop', riseMPerM: 0.1 })],
  ])('of %s is the lowest quarter of its emitters over their mean', (_name, line) => {
    const expected = lowestQuarterUniformity(shares(line));
    expect(expected).toBeLessThan(0.999);
    expect(uniformity(fed([line]))).toBeCloseTo(AS_MADE * expected, 9);
  });

  it('of unlike lines joins all their emitters, each by its share of its own flow', () => {
    const spray = pointLine(8, { kind: 'spray', emitterFlowLph: 40, compensating: false });
    const all = [...shares(laidLine()), ...shares(plain), ...shares(plain), ...shares(spray)];
    const twice = { ...plain, runs: 2, emitters: 300, lengthM: 90 };
    const joined = uniformity(fed([laidLine()]), fed([twice]), fed([spray]));
    expect(joined).toBeCloseTo(AS_MADE * lowestQuarterUniformity(all), 9);
  });

  it('counts a line that is laid anew by the days it lies, each at the pressure of its first', () => {
    const sources = [...SOURCES, { from: 20_020, name: 'Pump', pressureKpa: 350 }];
    const lines = [
      { ...plain, to: 20_024 },
      { ...plain, from: 20_025 },
    ];
    // 25 days at 200 kPa, 75 at 350.
    const all = [shares(plain), shares(plain, 350), shares(plain, 350), shares(plain, 350)].flat();
    const joined = uniformity(fed(lines, {}, sources));
    expect(joined).toBeCloseTo(AS_MADE * lowestQuarterUniformity(all), 9);
  });

  it.each([
    ['no line lies', [fed([])]],
    ['the line is solid', [fed([pointLine(0, { kind: 'solid' })])]],
    ['its planting is in the ground in no part of the season', [fed([laidLine()], { from: 20_100 })]],
  ])('is not known where %s', (_name, plantings) => {
    expect(uniformity(...plantings)).toBeUndefined();
  });

  it('is not known where no water comes', () => {
    const dry = [{ from: 20_000, name: 'Barrel', pressureKpa: 0 }];
    expect(uniformity(fed([laidLine()], {}, dry))).toBeUndefined();
  });

  it('lies between none and what is made, and more runs of the same do not change it', () => {
    fc.assert(
      fc.property(arbitraryLaidLine, (line) => {
        const of = uniformity(fed([line])) ?? 0;
        expect(of).toBeGreaterThanOrEqual(0);
        expect(of).toBeLessThanOrEqual(AS_MADE);
        const runs = line.runs as number;
        const double = { ...line, runs: 2 * runs, emitters: 2 * line.emitters, lengthM: 2 * (line.lengthM as number) };
        expect(uniformity(fed([double])) ?? 0).toBeCloseTo(of, 9);
      }),
      { numRuns: 50 },
    );
  });
});
