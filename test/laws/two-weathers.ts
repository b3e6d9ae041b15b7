/** Two weathers of one garden, of which one has more rain on some days that were read. */
import fc from 'fast-check';
import { expect } from 'vitest';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { plantingFigure } from '../../src/engine/season/planting-week.ts';
import type { ZoneSeason } from '../../src/engine/season/season.ts';
import { arbitraryGarden, type GardenOptions } from '../support/arbitrary-garden.ts';

export interface TwoWeathers {
  readonly less: Garden;
  /** The same with more rain on some observed days. */
  readonly more: Garden;
}

export function twoWeathers(options: GardenOptions) {
  return arbitraryGarden(options).chain((garden) =>
    fc.array(observedRain(garden), { minLength: 1, maxLength: 12 }).map((days): TwoWeathers => {
      const observed = (extra: (rain: (typeof days)[number]) => number) => ({
        days: new Map([
          ...garden.observed.days,
          ...days.map((rain) => {
            const seen = garden.observed.days.get(rain.day) ?? {};
            return [rain.day, { ...seen, rainMm: rain.rainMm + extra(rain) }] as const;
          }),
        ]),
        forecasts: garden.observed.forecasts,
        // A week's total is fixed: more on one of its days would be less on the others.
        weeks: new Map(),
      });
      return {
        less: { ...garden, observed: observed(() => 0) },
        more: { ...garden, observed: observed(({ extraMm }) => extraMm) },
      };
    }),
  );
}

function observedRain({ span }: Garden) {
  return fc.record({
    day: fc.integer({ min: span.firstDay, max: span.firstDay + 7 * span.weeks - 1 }),
    rainMm: fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10),
    extraMm: fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10),
  });
}

/** So fine that rounding up and skipping move nothing that could be seen, minutes. */
export const FINE_STEP = 1e-7;

/** Each planting alone, without choices, with an endlessly fine timer. */
export function alone(watering: GardenPlanting['watering']) {
  const change = (garden: Garden): Garden => ({
    ...garden,
    zones: garden.zones.flatMap((zone) =>
      zone.plantings.map((planting) => ({
        ...zone,
        id: planting.id,
        rule: { kind: 'thirstiest' as const },
        timerStepMinutes: FINE_STEP,
        longestCycleMinutes: Number.POSITIVE_INFINITY,
        choices: new Map(),
        plantings: [{ ...planting, watering, hasShutOff: false }],
      })),
    ),
  });
  return ({ less, more }: TwoWeathers): TwoWeathers => ({ less: change(less), more: change(more) });
}

export function isShort({ plantings }: ZoneSeason, week: number): boolean {
  return plantings.some((planting) => plantingFigure(planting, 'shortDays', week) > 0);
}

export function drains({ plantings }: ZoneSeason, week: number): boolean {
  return plantings.some((planting) => {
    return plantingFigure(planting, 'rainDrainedMm', week) + plantingFigure(planting, 'irrigationDrainedMm', week) > 0;
  });
}

export function isWhole({ container, wettedShare = 1, wettedShareByWeek }: GardenPlanting): boolean {
  return container !== undefined || (wettedShare === 1 && wettedShareByWeek === undefined);
}

export function expectAtMost(figure: number, limit: number | undefined, what: string): void {
  if (limit === undefined || isAbove(figure, limit)) expect.fail(`${what}: ${figure} is more than ${limit}`);
}

export function isAbove(figure: number, limit: number): boolean {
  return figure > limit * (1 + 1e-7) + 10 * FINE_STEP;
}
