/**
 * What somebody types as an amount (ground, emitters, rows, loops, plants, cycles, days, weeks, sources, readings) never is so many
 * objects: each plan here is valid, a few KB at most, and has some amount as great as the document takes. Counted is the work, by what the
 * season holds; a clock only tells a second from minutes.
 */
import { describe, expect, it } from 'vitest';
import { seasonDayTiming, seasonSupply } from '../../src/engine/supply/season-supply.ts';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';
import { traceCell } from '../../src/explain/trace/trace-cell.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { allFigures } from '../laws/weeks-of.ts';
import { oneBed, tomatoes, zone } from '../support/small-plans.ts';

type Lines = PlanPlanting['lines'];

const drip = { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'length', length: 1 } } as const;
const bed = (lines: Lines, planting: Partial<PlanPlanting> = {}, more: Partial<PlanZone> = {}): Partial<Plan> => ({
  zones: [zone({ ...more, plantings: [tomatoes({ lines, ...planting })] })],
});
const field = { extent: { kind: 'area', area: 1_000_000 } } as const;
const plants = { extent: { kind: 'canopy', count: 10_000, diameter: 36 } } as const;
const plain = { emitter: { kind: 'plain', exponent: 0.5 } } as const;
const longest = { kind: 'length', length: 16_400 } as const;
const day = (number: number) => new Date(Date.UTC(2027, 5, 7 + number)).toISOString().slice(0, 10);
const computed = { application: { kind: 'computed' } } as const;

const PLANS: Readonly<Record<string, Partial<Plan>>> = {
  'a million square feet on one foot of line, longest cycle 10 min': bed([drip], field, { longestCycleMinutes: 10 }),
  'the same, longest cycle 1 min': bed([drip], field, { longestCycleMinutes: 1 }),
  'the same with every start of a day and the finest step, for two years': {
    ...bed([drip], field, { longestCycleMinutes: 1, startsADay: 24, timerStepMinutes: 0.1, wateringDays: 7 }),
    season: { firstDay: '2027-06-07', weeks: 104 },
  },
  'a week set by hand to all its minutes, in cycles of one': {
    ...bed([drip], {}, { longestCycleMinutes: 1, startsADay: 24 }),
    choices: { beds: { '2027-06-07': { minutes: 10_080 } } },
  },
  'the longest line with the closest emitters': bed([{ ...drip, spacing: 1, layout: longest, ...plain }], {}, computed),
  'the same as a loop': bed([{ ...drip, spacing: 1, layout: longest, topology: 'loop', ...plain }], {}, computed),
  'a thousand rows of it': bed(
    [{ ...drip, spacing: 1, layout: { ...longest, kind: 'rows', rows: 1000 }, ...plain }],
    {},
    computed,
  ),
  'ten thousand emitters at each of ten thousand plants': bed(
    [{ kind: 'point', flow: 1, count: 10_000, ...plain }],
    plants,
    computed,
  ),
  'twenty loops round each of ten thousand plants': bed(
    [{ ...drip, spacing: 1, layout: { kind: 'loops', perPlant: 20, diameter: 1000 }, ...plain }],
    plants,
    computed,
  ),
  'a hundred pressures for the longest loop': {
    ...bed([{ ...drip, spacing: 1, layout: longest, topology: 'loop', ...plain }]),
    season: { firstDay: '2027-06-07', weeks: 15 },
    supply: {
      sources: Array.from({ length: 100 }, (_, number) => ({
        name: `Source ${number}`,
        from: day(number),
        pressure: 20 + number / 10,
      })),
    },
  },
  'thirty lines after one another': {
    ...bed(
      Array.from({ length: 30 }, (_, number) => ({
        ...drip,
        ...plain,
        layout: longest,
        from: day(number),
        to: day(number),
      })),
      {},
      computed,
    ),
    season: { firstDay: '2027-06-07', weeks: 15 },
  },
  'stages of a crop that last four hundred days each': bed([drip], {
    need: {
      kind: 'crop',
      crop: 'tomato',
      plantedOn: '2027-06-07',
      stages: { initial: 400, development: 400, mid: 400, late: 400 },
    },
  }),
};

/** Of the process, so that a busy machine counts for nothing. */
function cpuMs(act: () => void): number {
  const before = process.cpuUsage();
  act();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

describe('a small plan with a great amount', () => {
  it.each(Object.entries(PLANS))('%s', { timeout: 60_000 }, (_, change) => {
    const text = JSON.stringify(oneBed(change));
    expect(text.length).toBeLessThan(20_000);
    const read = readPlan(text);
    if (!read.ok) throw new Error(`it is refused: ${JSON.stringify(read.faults[0])}`);
    const ms = cpuMs(() => {
      const season = computeSeason(read.plan);
      for (const block of allFigures(season)) expect(block.every(Number.isFinite)).toBe(true);
      seasonSupply(season);
      const { timeline } = seasonDayTiming(season, 2);
      expect(timeline.length).toBeLessThanOrEqual(24);
      for (const { weeks } of noticesOf(season)) expect(weeks?.length ?? 0).toBeLessThanOrEqual(season.totals.weeks);
      const steps = [{}, { zoneId: 'beds' }, { zoneId: 'beds', plantingId: 'tomatoes' }].flatMap((cell) =>
        traceCell(season, { week: 1, ...cell }),
      );
      expect(steps.length).toBeLessThan(200);
    });
    // Minutes, or a tab that crashes, where one object stands for one cycle or one emitter; here 10 to 300 ms.
    expect(ms).toBeLessThan(3000);
  });
});
