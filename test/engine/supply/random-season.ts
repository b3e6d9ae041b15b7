import fc from 'fast-check';

export interface RandomSeason {
  readonly capacityL: number;
  readonly startL: number;
  readonly roofL: readonly number[];
  readonly drawL: readonly number[];
}

const litres = (max: number) => fc.oneof(fc.constant(0), fc.double({ min: 0, max, noNaN: true }));

/** A tank, and up to a year of runoff and draws with many days of neither. */
export const randomSeason: fc.Arbitrary<RandomSeason> = fc
  .integer({ min: 1, max: 366 })
  .chain((days) =>
    fc.record({
      capacityL: litres(5000),
      startL: litres(5000),
      roofL: fc.array(litres(3000), { minLength: days, maxLength: days }),
      drawL: fc.array(litres(800), { minLength: days, maxLength: days }),
    }),
  )
  .map((season) =>
    Object.freeze({ ...season, roofL: Object.freeze(season.roofL), drawL: Object.freeze(season.drawL) }),
  );
