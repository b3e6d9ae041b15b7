/** Random ground as a plan words it: containers, wetted shares, mulch, months without leaves, days to dry, a soak. */
import fc from 'fast-check';
import { MIX_IDS } from '../../src/engine/soil/potting-mixes.data.ts';
import type { PlanPlanting } from '../../src/plan/schema/plan-schema.ts';
import { amount, type Frame, hundredths, share } from './arbitrary-parts.ts';

/** Fields of a planting, each of which may be left out; a container and a mulch are there now and then. */
export function arbitraryPlanGround(frame: Frame) {
  return {
    container: nowAndThen(arbitraryContainer(frame)),
    wettedShare: nowAndThen(hundredths(5, 100)),
    mulch: nowAndThen(arbitraryMulch),
    leaflessMonths: nowAndThen(fc.subarray([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], { minLength: 1, maxLength: 6 })),
    dryDownDays: fc.constantFrom(0, 10, 30),
    soak: fc.boolean(),
  };
}

function arbitraryContainer(frame: Frame): fc.Arbitrary<NonNullable<PlanPlanting['container']>> {
  return fc.record(
    {
      volume: amount('volume', frame, 0.5, 400),
      count: fc.integer({ min: 1, max: 20 }),
      mix: fc.constantFrom(...MIX_IDS),
      availableWater: hundredths(5, 60),
      opening: amount('diameter', frame, 0.05, 1.5),
      rainShare: share,
    },
    { requiredKeys: ['volume'] },
  );
}

const arbitraryMulch: fc.Arbitrary<NonNullable<PlanPlanting['mulch']>> = fc.oneof(
  fc.record({ kind: fc.constant('organic' as const), cover: share }, { requiredKeys: ['kind'] }),
  fc.record({ kind: fc.constant('plastic' as const) }),
);

/** In a plan that is read from JSON what is undefined is not there. */
function nowAndThen<Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value> {
  return fc.option(value, { nil: undefined, freq: 2 }) as fc.Arbitrary<Value>;
}

/** The planting with nothing said of its ground but that all of it is wetted; full at the start, so that roots reach no dry soil. */
export function plainlyPlanted({
  container,
  mulch,
  leaflessMonths,
  soak,
  startDepletion,
  ...planting
}: PlanPlanting): PlanPlanting {
  return { ...planting, wettedShare: 1, dryDownDays: 0 };
}
