/** Random supplies for gardens: sources that change, windows, allowances, tanks; each known or not. */
import fc from 'fast-check';
import type { Garden, GardenSupply, SeasonSpan } from '../../src/engine/garden.ts';
import { arbitraryGarden, type GardenOptions } from './arbitrary-garden.ts';
import { between, dayAround, some } from './garden-numbers.ts';
import { withFlows } from './with-flows.ts';

export function arbitraryGardenSupply(span: SeasonSpan): fc.Arbitrary<GardenSupply> {
  const source = fc.record({
    from: fc.oneof(fc.constant(span.firstDay), dayAround(span, 10)),
    name: fc.constant('Source'),
    flowLpm: some(between(0.05, 60)),
    pressureKpa: some(fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 9, arbitrary: between(0, 500) })),
  });
  const tank = fc.record({
    capacityLitres: fc.oneof(fc.constant(0), between(50, 6000)),
    startLitres: between(0, 6000),
    roofAreaM2: fc.oneof(fc.constant(0), between(5, 200)),
    runoffCoefficient: between(0, 1),
  });
  return fc.record({
    sources: fc
      .uniqueArray(source, { maxLength: 3, selector: ({ from }) => from })
      .map((sources) => sources.sort((left, right) => left.from - right.from)),
    windowWeekdays: fc.oneof(fc.constant(127), fc.integer({ min: 1, max: 127 })),
    windowHoursPerDay: fc.oneof(fc.constant(24), between(0.1, 24)),
    allowanceLitresPerWeek: some(between(0, 3000)),
    allowanceLitresPerSeason: some(between(0, 30_000)),
    tank: some(tank),
  });
}

/** A garden with a supply of its own. */
export function arbitrarySuppliedGarden(options: GardenOptions = {}): fc.Arbitrary<Garden> {
  return arbitraryGarden(options).chain((garden) =>
    arbitraryGardenSupply(garden.span).map((supply) => withFlows({ ...garden, supply })),
  );
}
