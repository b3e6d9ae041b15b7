import { describe, expect, it } from 'vitest';
import type { GardenLine } from '../../../../src/engine/garden.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { laidLine, pointLine } from '../../../support/laid-line.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

function told(lines: readonly GardenLine[]) {
  const soil = { ...plainZone().soil, slopePercent: 8 };
  return noticesOfKind(
    runSeason(plainGarden([plainZone({ soil, plantings: [plainPlanting({ lines })] })])),
    'line-downhill',
  );
}

describe('a line on the downhill side (common practice, no source)', () => {
  it('is told for the weeks in which it lies', () => {
    const lines = [
      laidLine({ from: FIRST_DAY - 10, slopeSide: 'uphill' }),
      laidLine({ from: FIRST_DAY + 30, slopeSide: 'downhill' }),
    ];
    expect(told(lines)).toMatchObject([
      {
        kind: 'line-downhill',
        remedy: 'uphill-side',
        plantingId: 'bed',
        lineIndex: 1,
        weeks: [4, 5, 6, 7, 8, 9],
        figures: { slopePercent: 8 },
      },
    ]);
  });

  it.each([
    ['on the uphill side', laidLine({ from: FIRST_DAY, slopeSide: 'uphill' })],
    ['on level ground', laidLine({ from: FIRST_DAY })],
    ['that is solid', pointLine(0, { from: FIRST_DAY, kind: 'solid', slopeSide: 'downhill' })],
    ['that is laid after the season', laidLine({ from: FIRST_DAY + 70, slopeSide: 'downhill' })],
  ])('is not told of one %s', (_name, line) => {
    expect(told([line])).toEqual([]);
  });
});
