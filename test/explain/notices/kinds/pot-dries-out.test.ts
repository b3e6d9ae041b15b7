/**
 * A pot of 10 L by hand: of usual mix it holds 0.30 x 10 = 3.0 L for plants, half of it, 1.5 L, readily. Its plant is 60 cm across,
 * 0.283 m2, and uses 1.2 x 7 mm = 8.4 mm, 2.38 L, on a day of 7 mm: one run a day does not last, two do (1.19 L in between).
 */
import { describe, expect, it } from 'vitest';
import { noticesOf } from '../../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import type { Plan } from '../../../../src/plan/schema/plan-schema.ts';
import { noticed } from '../../../support/noticed.ts';
import { potWith } from '../../../support/troubled-plans.ts';

const told = (plan: Plan) => noticesOf(computeSeason(plan)).filter(({ kind }) => kind === 'pot-dries-out');

describe('a pot that cannot last from one watering to the next', () => {
  it('is told with what it holds and what goes in between', () => {
    expect(told(potWith({}))).toMatchObject([
      {
        severity: 'warning',
        remedy: 'bigger-pot',
        plantingId: 'pot',
        weeks: [0, 1, 2],
        figures: {
          heldLitres: expect.closeTo(1.5, 6),
          usedLitres: expect.closeTo(2.375, 2),
          hours: 24,
          runsADay: 1,
          wateringDays: 7,
        },
      },
    ]);
  });

  it('is not told where the timer starts often enough, or the pot is large', () => {
    expect(told(potWith({ startsADay: 4 }))).toEqual([]);
    expect(told(potWith({}, 20))).toEqual([]);
  });

  it('is told of days without water: three a week leave it without for two', () => {
    const [notice = expect.unreachable()] = told(potWith({ startsADay: 4, wateringDays: 3 }));
    expect(notice.figures).toMatchObject({ wateringDays: 3, usedLitres: expect.closeTo(2.375 * 2 + 2.375 / 2, 1) });
  });

  it('is mended by two runs a day', () => {
    const { mended, remedies } = noticed(potWith({}), 'pot-dries-out');
    expect(remedies.find((each) => each.kind === 'more-starts')).toMatchObject({ startsADay: 2, remaining: 0 });
    expect(told(mended('more-starts'))).toEqual([]);
  });
});
