import { describe, expect, it } from 'vitest';
import type { GardenLine } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { laidLine, pointLine } from '../../../support/laid-line.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';
import { withFlows } from '../../../support/with-flows.ts';

const LITRES_PER_GALLON = 3.785411784;

function told(lines: readonly GardenLine[], pressureKpa: number | undefined = 400) {
  const supply = {
    sources: [{ from: FIRST_DAY, name: 'Source', ...(pressureKpa === undefined ? {} : { pressureKpa }) }],
    windowWeekdays: 127,
    windowHoursPerDay: 24,
  };
  const zone = plainZone({ plantings: [plainPlanting({ lines, areaM2: 400 })] });
  return noticesOfKind(runSeason(withFlows(plainGarden([zone], { supply }))), 'flow-too-fast');
}

/** One run of line of so many gallons a minute, in tube of 0.56 in bore. */
function lineOf(gpm: number, change: Parameters<typeof laidLine>[0] = {}): GardenLine {
  const outlets = 100;
  return laidLine({
    from: FIRST_DAY - 100,
    outlets,
    emitterFlowLph: (gpm * 60 * LITRES_PER_GALLON) / outlets,
    spacingM: 0.1,
    insideDiameterMm: 0.56 * 25.4,
    ...change,
  });
}

describe('water in a tube (5 ft/s: common practice, no source; 0.4085 Q/d2 in ft/s, gpm and inches: handbooks, from memory)', () => {
  it('is too fast at 6 gpm in 0.56 in: 7.8 ft/s', () => {
    expect(told([lineOf(6)])).toMatchObject([
      {
        severity: 'warning',
        remedy: 'wider-tube',
        lineIndex: 0,
        figures: {
          velocityMs: expect.closeTo(7.8 * 0.3048, 1),
          limitMs: 1.524,
          flowLph: expect.closeTo(6 * 60 * LITRES_PER_GALLON, 6),
          widerDiameterMm: expect.closeTo(0.56 * 25.4 * Math.sqrt(7.816 / 5), 1),
        },
      },
    ]);
  });

  it.each([
    ['at 3.8 gpm in 0.56 in', [lineOf(3.8)]],
    ['in two runs that share the flow', [lineOf(3, { runs: 2 })]],
    ['in a loop, whose feed parts it in two', [lineOf(6, { topology: 'loop' })]],
    ['where no line lies', []],
  ])('is not told %s', (_, lines) => {
    expect(told(lines)).toEqual([]);
  });

  it('is told of the solid line that carries what two short lines take', () => {
    const solid = pointLine(0, { from: FIRST_DAY, kind: 'solid', lengthM: 3, insideDiameterMm: 0.56 * 25.4 });
    const lines = [solid, lineOf(2), lineOf(2)];
    expect(told(lines)).toMatchObject([
      { lineIndex: 0, figures: { flowLph: expect.closeTo(4 * 60 * LITRES_PER_GALLON, 6) } },
    ]);
    expect(told(lines.slice(1))).toEqual([]);
  });

  it('is reckoned from the label where no pressure is known', () => {
    expect(told([lineOf(6)], undefined)).toHaveLength(1);
  });
});
