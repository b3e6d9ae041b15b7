import { describe, expect, it } from 'vitest';
import { WIDEST_EMITTER_SPACING_M } from '../../../../src/engine/line/emitter-spacing.data.ts';
import { runSeason } from '../../../../src/engine/season/run-season.ts';
import { TEXTURE_IDS } from '../../../../src/engine/soil/textures.data.ts';
import { toSi } from '../../../../src/engine/units.ts';
import { laidLine, pointLine } from '../../../support/laid-line.ts';
import { noticesOfKind } from '../../../support/notices.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../../support/plain-garden.ts';

function told(line: ReturnType<typeof laidLine>, texture: (typeof TEXTURE_IDS)[number]) {
  const soil = { ...plainZone().soil, texture };
  return noticesOfKind(
    runSeason(plainGarden([plainZone({ soil, plantings: [plainPlanting({ lines: [line] })] })])),
    'emitters-far-apart',
  );
}

const spaced = (inches: number) => laidLine({ from: FIRST_DAY, spacingM: toSi(inches, 'spacing', 'us') });

describe('emitters too far apart for the soil (common practice, no source)', () => {
  it.each([
    [12, 'sand', 0],
    [18, 'sand', 1],
    [18, 'loam', 0],
    [24, 'loam', 1],
    [24, 'clay', 0],
    [30, 'clay', 1],
  ] as const)('every %s in on %s: told %s times', (inches, texture, times) => {
    expect(told(spaced(inches), texture)).toHaveLength(times);
  });

  it('says how far, and how far they may be', () => {
    expect(told(spaced(18), 'sand')).toMatchObject([
      {
        kind: 'emitters-far-apart',
        severity: 'note',
        remedy: 'closer-emitters',
        lineIndex: 0,
        figures: { spacingM: expect.closeTo(0.4572, 9), widestSpacingM: expect.closeTo(0.3048, 9) },
      },
    ]);
  });

  it('is not told of emitters that are set one by one', () => {
    expect(told(pointLine(2, { from: FIRST_DAY, spacingM: 2 }), 'sand')).toEqual([]);
  });

  it('is known for every texture, and finer soil never needs them closer', () => {
    const order = ['sand', 'loamy-sand', 'sandy-loam', 'loam', 'silt-loam', 'clay-loam', 'clay'] as const;
    const widest = order.map((texture) => WIDEST_EMITTER_SPACING_M[texture]);
    expect(widest).toEqual(widest.toSorted((a, b) => a - b));
    expect(Object.keys(WIDEST_EMITTER_SPACING_M).sort()).toEqual([...TEXTURE_IDS].sort());
  });
});
