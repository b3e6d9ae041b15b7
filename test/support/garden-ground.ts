/** Random ground for plantings of gardens: pots, ground that is wetted in part, roots that grow, mulch, rest. Every figure is invented. */
import fc from 'fast-check';
import type {
  GardenContainer,
  GardenPlanting,
  PlantCoefficient,
  RestSpan,
  RootZone,
  SeasonSpan,
} from '../../src/engine/garden.ts';
import type { Mulch } from '../../src/engine/plants/mulch.ts';
import { between, dayAround, some } from './garden-numbers.ts';

/** What a random planting is given besides what every one has. */
export interface Ground {
  /** Mix over the ground that the plants cover, m; undefined: it grows in the ground. */
  readonly pot: { readonly depthM: number; readonly availableWater: number; readonly count: number } | undefined;
  readonly wettedShare: number | undefined;
  /** By week, where lines are laid anew in mid-season. */
  readonly wettedShareByWeek: readonly number[] | undefined;
  readonly rainFactor: number | undefined;
  readonly mulch: Mulch | undefined;
  /** Of the full depth. */
  readonly initialDepth: number | undefined;
  readonly rest: readonly RestSpan[] | undefined;
  readonly leachingFraction: number | undefined;
}

/** A quarter stand in pots, a third are wetted in part, lines of one in eight are laid anew, half of the annual crops grow their roots. */
export function arbitraryGround(span: SeasonSpan): fc.Arbitrary<Ground> {
  return fc.record({
    pot: fc.oneof(
      { weight: 3, arbitrary: fc.constant(undefined) },
      {
        weight: 1,
        arbitrary: fc.record({
          depthM: fc.oneof(between(0.004, 0.04), between(0.02, 0.5)),
          availableWater: between(0.1, 0.45),
          count: fc.integer({ min: 1, max: 9 }),
        }),
      },
    ),
    wettedShare: fc.oneof(
      { weight: 4, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constantFrom(1, 0.05) },
      { weight: 3, arbitrary: between(0.1, 0.95) },
    ),
    wettedShareByWeek: fc.oneof(
      { weight: 7, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: arbitrarySharesByWeek(span) },
    ),
    rainFactor: fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, fc.constantFrom(0, 1), between(0, 1.6)),
    mulch: fc.constantFrom<(Mulch | undefined)[]>(
      undefined,
      undefined,
      { kind: 'organic', cover: 1 },
      { kind: 'plastic' },
    ),
    initialDepth: some(between(0.1, 1)),
    rest: arbitraryRest(span),
    leachingFraction: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, fc.constant(0), between(0, 0.5)),
  });
}

/** One share before a week, another from then on, and a third from a later one, which may be that of all of the ground or the first again. */
function arbitrarySharesByWeek({ weeks }: SeasonSpan): fc.Arbitrary<readonly number[]> {
  const share = fc.oneof({ weight: 2, arbitrary: between(0.05, 0.95) }, { weight: 1, arbitrary: fc.constant(1) });
  const week = fc.integer({ min: 0, max: weeks });
  return fc.tuple(share, share, some(share), week, week).map(([early, middle, late = early, one, other]) => {
    const [first, second] = [Math.min(one, other), Math.max(one, other)];
    return Array.from({ length: weeks }, (_, each) => {
      if (each < first) return early;
      return each < second ? middle : late;
    });
  });
}

/** A span of rest, or two in a row with or without days between them. */
function arbitraryRest(span: SeasonSpan): fc.Arbitrary<readonly RestSpan[] | undefined> {
  const kind = fc.constantFrom<RestSpan['kind'][]>('leafless', 'frozen', 'dry-down');
  const days = fc.tuple(dayAround(span, 20), fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 20 }));
  return fc.oneof(
    { weight: 3, arbitrary: fc.constant(undefined) },
    {
      weight: 1,
      arbitrary: fc.tuple(days, kind, kind, fc.boolean()).map(([[from, first, between], one, other, isTwo]) => {
        const to = from + first;
        const spans: RestSpan[] = [{ from, to, kind: one }];
        return isTwo ? [...spans, { from: to + between, to: to + between + first, kind: other }] : spans;
      }),
    },
  );
}

type Grown = Pick<GardenPlanting, 'areaM2' | 'rootZone' | 'coefficient'>;

/** The planting as it grows in that ground. */
export function grownIn<Planting extends Grown>(
  ground: Ground,
  planting: Planting,
): Planting & Partial<GardenPlanting> {
  const { pot, wettedShare, wettedShareByWeek, rainFactor, rest, leachingFraction } = ground;
  const { rootZone, coefficient, areaM2 } = planting;
  const rooted = {
    ...planting,
    coefficient: mulched(coefficient, ground.mulch),
    ...(ground.mulch !== undefined && { mulch: ground.mulch }),
    ...(rainFactor !== undefined && { rainFactor }),
    ...(rest !== undefined && { rest }),
    ...(leachingFraction !== undefined && { leachingFraction }),
  };
  if (pot !== undefined) {
    const { depthM, availableWater, count } = pot;
    const container = containerOf({ volumeLitres: (1000 * depthM * areaM2) / count, count, areaM2, rainFactor });
    return { ...rooted, container, rootZone: { ...rootZone, depthM, availableWater, adjustsDepletion: false } };
  }
  return {
    ...rooted,
    ...(wettedShare !== undefined && { wettedShare, isShareTyped: true }),
    ...(wettedShareByWeek !== undefined && { wettedShareByWeek, isShareTyped: true }),
    rootZone: growing(rootZone, coefficient, ground.initialDepth),
  };
}

interface Pots extends Pick<GardenContainer, 'count' | 'volumeLitres'> {
  readonly areaM2: number;
  readonly rainFactor: number | undefined;
}

/** As wide as lets in that factor of the rain. */
function containerOf({ volumeLitres, count, areaM2, rainFactor = 1 }: Pots): GardenContainer {
  const openingM = Math.sqrt((4 * (rainFactor || 1) * areaM2) / (count * Math.PI));
  return { count, volumeLitres, openingM, rainShare: rainFactor === 0 ? 0 : 1 };
}

function growing(rootZone: RootZone, coefficient: PlantCoefficient, initialDepth: number | undefined): RootZone {
  if (initialDepth === undefined || coefficient.kind !== 'crop' || coefficient.perennial) return rootZone;
  return { ...rootZone, initialDepthM: initialDepth * rootZone.depthM };
}

function mulched(coefficient: PlantCoefficient, mulch: Mulch | undefined): PlantCoefficient {
  if (mulch === undefined || coefficient.kind !== 'landscape') return coefficient;
  return { ...coefficient, mulchFactor: mulch.kind === 'plastic' ? 0.9 : 1 - 0.05 * 0.5 * mulch.cover };
}

/** The planting in the ground, all of it wetted, with nothing on it, its roots full grown and never at rest. */
export function plainlyGrown({
  container,
  wettedShare,
  wettedShareByWeek,
  rainFactor,
  rest,
  leachingFraction,
  isShareTyped,
  mulch,
  ...planting
}: GardenPlanting) {
  const { initialDepthM, availableWater, ...rootZone } = planting.rootZone;
  return { ...planting, rootZone, coefficient: withoutMulch(planting.coefficient) };
}

function withoutMulch(coefficient: PlantCoefficient): PlantCoefficient {
  if (coefficient.kind === 'crop') return coefficient;
  const { mulchFactor, ...bare } = coefficient;
  return bare;
}
