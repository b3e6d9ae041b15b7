/** Random plantings and lines for gardens. */
import fc from 'fast-check';
import type { GardenLine, GardenPlanting, PlantCoefficient, RootZone, SeasonSpan } from '../../src/engine/garden.ts';
import { arbitraryGround, grownIn } from './garden-ground.ts';
import { between, dayAround, some } from './garden-numbers.ts';

function arbitraryCoefficient(span: SeasonSpan): fc.Arbitrary<PlantCoefficient> {
  const stage = fc.integer({ min: 1, max: 60 });
  return fc.oneof(
    fc.record({
      kind: fc.constant('landscape' as const),
      name: fc.constant({ en: 'plants' }),
      factor: between(0, 1),
      density: between(0.5, 1.3),
      microclimate: between(0.5, 1.4),
      source: fc.constant('invented'),
    }),
    fc.record({
      kind: fc.constant('crop' as const),
      name: fc.constant({ en: 'crop' }),
      plantedOn: dayAround(span, 60),
      stageDays: fc.tuple(stage, stage, stage, stage),
      kcInitial: between(0.15, 1),
      kcMid: between(0.6, 1.3),
      kcEnd: between(0.2, 1.1),
      source: fc.constant('invented'),
    }),
    arbitraryPerennial(span),
  );
}

/** Green-up in any year, before the season or after it; stages of part of the year, of all of it, and of more. */
function arbitraryPerennial(span: SeasonSpan): fc.Arbitrary<PlantCoefficient> {
  const stage = fc.integer({ min: 1, max: 100 });
  return fc.record({
    kind: fc.constant('crop' as const),
    name: fc.constant({ en: 'perennial' }),
    plantedOn: dayAround(span, 1500),
    perennial: fc.constant(true),
    stageDays: fc.oneof(
      fc.tuple(stage, stage, stage, stage),
      fc.constantFrom<[number, number, number, number][]>([60, 90, 120, 95], [90, 30, 200, 45], [30, 30, 275, 90]),
    ),
    kcInitial: between(0.15, 1),
    kcMid: between(0.6, 1.3),
    kcEnd: between(0.2, 1.1),
    source: fc.constant('invented'),
  });
}

/** Rates as they are found in gardens, and a few that are far too weak or strong. */
const rateMmPerHour = fc.oneof(
  { weight: 6, arbitrary: between(4, 40) },
  { weight: 1, arbitrary: between(0.1, 4) },
  { weight: 1, arbitrary: between(40, 200) },
);

/** Several lie at once where their days overlap; some give way to a later one. */
function arbitraryLines(span: SeasonSpan, areaM2: number): fc.Arbitrary<GardenLine[]> {
  const line = fc
    .record({
      from: fc.oneof(
        { weight: 2, arbitrary: fc.constant(span.firstDay - 30) },
        { weight: 1, arbitrary: dayAround(span, 5) },
      ),
      to: some(dayAround(span, 5)),
      kind: fc.constantFrom<GardenLine['kind'][]>('dripline', 'dripline', 'point', 'spray', 'solid'),
      rate: rateMmPerHour,
      efficiency: some(between(0.3, 1)),
    })
    .map(({ from, to, kind, rate, efficiency }): GardenLine => {
      const stay = to === undefined ? { from } : { from: Math.min(from, to), to: Math.max(from, to) };
      return { ...lineOf(from, kind, kind === 'solid' ? 0 : rate * areaM2), ...stay, efficiency };
    });
  return fc.array(line, { minLength: 0, maxLength: 3 }).map((lines) => lines.sort((a, b) => a.from - b.from));
}

export function lineOf(from: number, kind: GardenLine['kind'], flowLph: number): GardenLine {
  return {
    from,
    kind,
    emitters: flowLph > 0 ? 10 : 0,
    emitterFlowLph: flowLph / 10,
    flowLph,
    topology: 'dead-end',
    slopeSide: 'level',
    riseMPerM: 0,
    insideDiameterMm: 13.6,
    compensating: true,
    leastPressureKpa: 70,
    exponent: 0.5,
  };
}

function arbitraryStay(span: SeasonSpan): fc.Arbitrary<{ readonly from: number; readonly to: number }> {
  const whole = { from: span.firstDay - 100, to: span.firstDay + 7 * span.weeks + 100 };
  return fc.oneof(
    fc.constant(whole),
    fc.tuple(dayAround(span, 20), dayAround(span, 20)).map(([one, other]) => ({
      from: Math.min(one, other),
      to: Math.max(one, other),
    })),
  );
}

const arbitraryRootZone: fc.Arbitrary<RootZone> = fc.record({
  depthM: fc.oneof({ weight: 1, arbitrary: between(0.05, 0.15) }, { weight: 5, arbitrary: between(0.15, 1.5) }),
  allowedDepletion: fc.oneof(
    { weight: 1, arbitrary: between(0.05, 0.95) },
    { weight: 4, arbitrary: between(0.2, 0.6) },
  ),
  adjustsDepletion: fc.boolean(),
  targetDepletion: fc.oneof(fc.constant(0), between(0, 0.95)),
  startDepletion: fc.oneof(fc.constantFrom(0, 1), between(0, 1)),
});

export function arbitraryPlanting(span: SeasonSpan): fc.Arbitrary<GardenPlanting> {
  const parts = fc.record({
    coefficient: arbitraryCoefficient(span),
    establishing: fc.option(fc.record({ until: dayAround(span, 5), factor: between(0.1, 3) }), {
      nil: undefined,
      freq: 2,
    }),
    areaM2: fc.oneof(between(0.05, 3), between(1, 80)),
    rootZone: arbitraryRootZone,
    watering: fc.constantFrom<GardenPlanting['watering'][]>('keep', 'keep', 'refill'),
    stay: arbitraryStay(span),
    hasShutOff: fc.boolean(),
    plants: some(fc.integer({ min: 1, max: 50 })),
    ground: arbitraryGround(span),
  });
  return parts.chain(({ stay, ground, ...rest }) =>
    arbitraryLines(span, rest.areaM2).map((lines) => ({
      id: 'planting',
      name: 'Planting',
      ...grownIn(ground, rest),
      ...stay,
      lines,
      // Solved once the garden has a supply.
      flows: [],
    })),
  );
}
