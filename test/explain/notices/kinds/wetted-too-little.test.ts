/**
 * By hand, from the handbook's table: an emitter of 1 gph wets 3.0 ft across in loam with roots 2.5 ft deep (USDA-NRCS NEH 623 ch. 7, from
 * memory), one of 0.9 gph 3.0 x 0.9^0.33 = 2.90 ft. One row of 8 ft down a bed of 4 x 8 ft wets 8 x 2.90 = 23.2 of 32 ft2: 0.72; the next row
 * would stand 4 ft away. A shrub 4 ft across covers 12.6 ft2; an emitter of 0.5 gph wets 3.0 x 0.5^0.33 = 2.39 ft, 4.5 ft2: 0.36.
 */
import { describe, expect, it } from 'vitest';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import type { PlanPlanting } from '../../../../src/plan/schema/plan-schema.ts';
import { noticed } from '../../../support/noticed.ts';
import { oneBed, tomatoes, zone } from '../../../support/small-plans.ts';

const M_PER_FOOT = 0.3048;

const bedWith = (rows: number, change: Partial<PlanPlanting> = {}) =>
  planOf({
    extent: { kind: 'area', area: 32 },
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows, length: 8 } }],
    ...change,
  });

const shrubWith = (count: number) =>
  planOf({
    need: { kind: 'class', class: 'moderate' },
    extent: { kind: 'canopy', count: 1, diameter: 48 },
    lines: [{ kind: 'point', flow: 0.5, count }],
  });

const planOf = (change: Partial<PlanPlanting>) =>
  oneBed({ zones: [zone({ plantings: [tomatoes({ rootDepth: 30, ...change })] })] });

const told = (plan: ReturnType<typeof planOf>) =>
  noticesOf(computeSeason(plan)).filter(({ kind }) => kind === 'wetted-too-little');

describe('ground that is wetted too little', () => {
  it('is told of one row down a bed of 4 ft, with how far rows stand apart', () => {
    const [notice = expect.unreachable()] = told(bedWith(1));
    expect(notice).toMatchObject({
      severity: 'note',
      remedy: 'wet-more',
      plantingId: 'tomatoes',
      figures: { wettedShare: 0.72, wantedShare: 0.8, widthM: expect.closeTo(2.9 * M_PER_FOOT, 2) },
    });
    expect((notice.figures as { apartM: number }).apartM).toBeCloseTo(4 * M_PER_FOOT, 1);
  });

  it('is told of one emitter of 0.5 gph under a shrub of 4 ft', () => {
    expect(told(shrubWith(1))).toMatchObject([{ figures: { wettedShare: 0.36, wantedShare: 0.5 } }]);
    expect(told(shrubWith(1))[0]?.figures).not.toHaveProperty('apartM');
  });

  it('is not told of two rows, of two emitters, or of a share that is typed', () => {
    expect([bedWith(2), shrubWith(2), bedWith(1, { wettedShare: 0.4 })].flatMap(told)).toEqual([]);
  });

  it('is mended by another row', () => {
    const { mended } = noticed(bedWith(1), 'wetted-too-little');
    expect(told(mended('other-runs'))).toEqual([]);
  });
});
