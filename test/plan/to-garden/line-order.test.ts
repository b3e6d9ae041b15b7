import { expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import type { PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { linesOf } from '../../../src/plan/to-garden/line.ts';
import { lineOrder } from '../../../src/plan/to-garden/line-order.ts';

const FIRST_DAY = dayNumber('2027-04-05');
const points = (count: number, from?: `${number}-${number}-${number}`): PlanLine => ({
  kind: 'point',
  flow: 1,
  count,
  ...(from === undefined ? {} : { from }),
});

it('lines come by first day, those of one day as they were typed, one without a day with the planting', () => {
  const lines = [
    points(1, '2027-06-01'),
    points(2, '2027-04-05'),
    points(3),
    points(4, '2027-06-01'),
    points(5, '2027-03-01'),
  ];
  expect(lineOrder(lines, FIRST_DAY)).toEqual([4, 1, 2, 0, 3]);
  const laid = linesOf(lines, { units: 'us', firstDay: FIRST_DAY, plants: undefined, canopyDiameterM: 1 });
  expect(laid.map(({ emitters }) => emitters)).toEqual([5, 2, 3, 1, 4]);
});
