/** Random supplies: typed and measured flows, sources that change, windows, allowances, tanks. */
import fc from 'fast-check';
import type { PlanSupply } from '../../src/plan/schema/plan-schema.ts';
import { amount, dayNear, type Frame, hundredths, inOrder, share, wordy } from './arbitrary-parts.ts';
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
        fc.record({
          kind: fc.constant('bucket' as const),
          volume: volume(4, 40),
          seconds: fc.integer({ min: 10, max: 300 }),
          share: fc.integer({ min: 10, max: 100 }).map((hundredths) => hundredths / 100),
        }),
      ),
      head: fc.oneof(
        fc.record({ pressure: amount('pressure', frame, 80, 500) }),
        fc.record({ waterHeight: amount('waterHeight', frame, 0.3, 20) }),
      ),
    },
    { requiredKeys: ['name'] },
  );
  return fc.record(
    {
      sources: fc
        .uniqueArray(source, { maxLength: 3, selector: ({ from }) => from ?? 'the first day' })
        .map((sources) => sources.map(({ head, ...rest }) => ({ ...rest, ...head }))),
      restrictions: fc.array(arbitraryRestriction(frame), { maxLength: 2 }),
      cuts: fc.array(arbitraryCut(frame), { maxLength: 2 }),
      window: fc.record(
        {
          weekdays: someWeekdays,
          opensAt: fc.constantFrom('00:00', '05:30', '21:00'),
          hoursPerDay: fc.integer({ min: 1, max: 24 }),
        },
        { requiredKeys: ['hoursPerDay'] },
      ),
      leachingFraction: hundredths(0, 50),
      allowance: fc
        .record({ perWeek: volume(0, 9000), perSeason: volume(0, 90_000) }, { requiredKeys: [] })
        .map(byArea),
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

function arbitraryRestriction(frame: Frame) {
  const restriction = fc.record(
    {
      name: wordy,
      from: dayNear(frame, 30, 30),
      to: dayNear(frame, 30, 30),
      weekdays: someWeekdays,
      hoursPerDay: fc.integer({ min: 1, max: 24 }),
    },
    { requiredKeys: ['weekdays'] },
  );
  return restriction.map((anyDays) => ({ ...anyDays, ...inOrder(anyDays) }));
}

function arbitraryCut(frame: Frame) {
  const day = dayNear(frame, 15, 15);
  return fc
    .tuple(fc.record({ from: day, to: day }), share, amount('volume', frame, 0, 4000), fc.boolean())
    .map(([days, part, perWeek, isShare]) => ({ ...inOrder(days), ...(isShare ? { share: part } : { perWeek }) }));
}

/** Some of those for the season say beside it how much may be used on a unit of ground. */
function byArea<Allowance extends { readonly perSeason?: number }>(allowance: Allowance) {
  const { perSeason = 0 } = allowance;
  return Math.floor(perSeason) % 2 === 1 ? { ...allowance, perArea: perSeason / 100 } : allowance;
}
