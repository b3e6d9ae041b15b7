import { describe, expect, it } from 'vitest';
import type { GardenLine, SupplySource } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { laidLine } from '../../../support/laid-line.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';
import { withFlows } from '../../../support/with-flows.ts';

/** Kilopascals of a psi: NIST SP 811. */
const PSI = 6.894757;

function told(lines: readonly GardenLine[], sources: readonly Partial<SupplySource>[]) {
  const planting = plainPlanting({ lines, areaM2: 40 });
  const supply = {
    sources: sources.map((source) => ({ from: FIRST_DAY, name: 'Source', ...source })),
    windowWeekdays: 127,
    windowHoursPerDay: 24,
  };
  const garden = withFlows(plainGarden([plainZone({ plantings: [planting] })], { supply }));
  return noticesOfKind(runSeason(garden), 'flow-below-label');
}

/** 16 plain emitters with a turbulent path: flow goes with the square root of pressure (Keller and Karmeli 1975, from memory). */
const plain = laidLine({ from: FIRST_DAY - 100, outlets: 16, spacingM: 0.1524, compensating: false, exponent: 0.5 });

describe('lines that give less than their label', () => {
  it('are told with what they give: at a sixteenth of the pressure on the label a quarter', () => {
    expect(told([plain], [{ pressureKpa: (20 * PSI) / 16 }])).toMatchObject([
      {
        severity: 'warning',
        remedy: 'more-pressure',
        plantingId: 'bed',
        weeks: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
        figures: { flowLph: expect.closeTo(16 * 2.3 * 0.25, 1), labelLph: expect.closeTo(16 * 2.3, 9) },
      },
    ]);
  });

  it('are a note where they give half of it or more, and told for their own weeks alone', () => {
    const sources = [{ pressureKpa: 20 * PSI }, { from: FIRST_DAY + 28, pressureKpa: 10 * PSI }];
    expect(told([plain], sources)).toMatchObject([{ severity: 'note', weeks: [4, 5, 6, 7, 8, 9] }]);
  });

  it.each([
    ['have the pressure of their label', [plain], [{ pressureKpa: 20 * PSI }]],
    ['have a little less: 0.9 of the flow takes 0.81 of the pressure', [plain], [{ pressureKpa: 0.83 * 20 * PSI }]],
    ['compensate', [laidLine({ from: FIRST_DAY - 100, outlets: 16 })], [{ pressureKpa: 80 }]],
    ['are fed by a source whose pressure nobody knows', [plain], [{}]],
    ['are not there', [], [{ pressureKpa: 1 }]],
  ])('are not told where they %s', (_, lines, sources) => {
    expect(told(lines, sources)).toEqual([]);
  });
});
