/** Random supplies: typed and measured flows, sources that change, windows, allowances, tanks. */
import fc from 'fast-check';
import type { PlanSupply } from '../../src/plan/schema/plan-schema.ts';
import { amount, dayNear, type Frame, share, wordy } from './arbitrary-parts.ts';
import { someWeekdays } from './arbitrary-zone.ts';

export function arbitrarySupply(frame: Frame): fc.Arbitrary<PlanSupply> {
  const volume = (low: number, high: number) => amount('volume', frame, low, high);
  const source = fc.record(
    {
      name: wordy,
      from: dayNear(frame, 10, 10),
      flow: fc.oneof(
        fc.record({ kind: fc.constant('typed' as const), flow: amount('supplyFlow', frame, 2, 60) }),
        fc.record({
          kind: fc.constant('bucket' as const),
          volume: volume(4, 40),
          seconds: fc.integer({ min: 10, max: 300 }),
        }),
      ),
      pressure: amount('pressure', frame, 80, 500),
    },
    { requiredKeys: ['name'] },
  );
  return fc.record(
    {
      sources: fc.uniqueArray(source, { maxLength: 3, selector: ({ from }) => from ?? 'the first day' }),
      window: fc.record(
        { weekdays: someWeekdays, hoursPerDay: fc.integer({ min: 1, max: 24 }) },
        { requiredKeys: ['hoursPerDay'] },
      ),
      allowance: fc.record({ perWeek: volume(0, 9000), perSeason: volume(0, 90_000) }, { requiredKeys: [] }),
      tank: fc.record(
        {
          capacity: volume(2000, 9000),
          start: volume(0, 1900),
          roofArea: amount('area', frame, 5, 300),
          runoffCoefficient: share,
        },
        { requiredKeys: ['capacity', 'start'] },
      ),
    },
    { requiredKeys: ['sources'] },
  );
}
