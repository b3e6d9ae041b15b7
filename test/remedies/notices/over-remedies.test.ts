/**
 * Waste that is told is waste that somebody can do something about: each such notice has a remedy that was tried. The gardens of the demo:
 * `remedies-of.test.ts`.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Season } from '../../../src/engine/season/season.ts';
import { type Notice, plantingsOf } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { minutesForbidden } from '../../../src/remedies/notices/minutes-forbidden.ts';
import { remediesOf } from '../../../src/remedies/notices/remedies-of.ts';
import type { Remedy } from '../../../src/remedies/notices/remedy.ts';
import { sumOver, unmetLitres, wastedLitres } from '../../../src/remedies/notices/trouble.ts';
import { arbitraryPlan, type PlanOptions } from '../../support/arbitrary-plan.ts';

/** Gardens in which no one change keeps water from draining without harm: seed and number. */
const HARD: readonly (readonly [seed: number, ...numbers: readonly number[]])[] = [
  [2, 16, 102, 124],
  [3, 126],
  [4, 45, 145],
];

const SMALL: PlanOptions = { mostWeeks: 16, mostZones: 4, mostPlantings: 3 };

interface Case {
  readonly plan: Plan;
  readonly season: Season;
  readonly notice: Notice;
  readonly remedies: readonly Remedy[];
}

/** Each notice of waste that nobody set by hand. */
function casesOf(plan: Plan): readonly Case[] {
  const season = computeSeason(plan);
  const notices = noticesOf(season).filter(({ kind }) => kind === 'over');
  return notices.map((notice) => ({ plan, season, notice, remedies: remediesOf(plan, season, notice) }));
}

function sample(options: PlanOptions, seed: number, numRuns: number): readonly Plan[] {
  return fc.sample(fc.noBias(arbitraryPlan(options)), { numRuns, seed });
}

const litresMore = (litresOf: typeof unmetLitres, { season }: Case, next: Season, ids?: readonly string[]) => {
  const [before = 0, after = 0] = [season, next].map((of) =>
    sumOver(of, litresOf, (id) => ids === undefined || ids.includes(id)),
  );
  return after - before;
};

describe('waste', () => {
  let hard: readonly Case[];
  let all: readonly Case[];
  let made: readonly { readonly of: Case; readonly remedy: Remedy; readonly next: Season }[];

  beforeAll(() => {
    hard = HARD.flatMap(([seed, ...numbers]) => {
      const plans = sample({}, seed, Math.max(...numbers) + 1);
      return numbers.flatMap((number) => casesOf(plans[number] as Plan));
    });
    all = [...hard, ...sample(SMALL, 1, 40).flatMap(casesOf)];
    made = all.flatMap((of) =>
      of.remedies.map((remedy) => {
        const next = computeSeason(structuredClone(applyEdit(of.plan, remedy.edit)));
        return { of, remedy, next };
      }),
    );
  });

  it('has a remedy, where no one change is harmless too', () => {
    expect(hard.length).toBeGreaterThanOrEqual(HARD.flatMap(([, ...numbers]) => numbers).length);
    expect(all.length).toBeGreaterThan(hard.length + 1);
    for (const { notice, remedies } of all) {
      expect([plantingsOf(notice), remedies.length > 0]).toEqual([plantingsOf(notice), true]);
    }
    const kinds = new Set(hard.flatMap(({ remedies }) => remedies).map(({ kind }) => kind));
    expect([...kinds]).toEqual(expect.arrayContaining(['together', 'shut-weeks']));
  });

  it('becomes less by half with each', () => {
    for (const { of, remedy, next } of made) {
      const { drainedLitres = 0 } = of.notice.figures as { readonly drainedLitres?: number };
      const less = -litresMore(wastedLitres, of, next, plantingsOf(of.notice));
      expect(less).toBeGreaterThanOrEqual((1 - remedy.remaining) * drainedLitres * (1 - 1e-9));
      expect(remedy.remaining).toBeLessThanOrEqual(0.5);
    }
  });

  it('has no remedy that runs longer when water may not run', () => {
    for (const { of, next } of made) {
      const before = minutesForbidden(of.season);
      minutesForbidden(next).forEach((minutes, index) => {
        expect(minutes).toBeLessThanOrEqual((before[index] as number) + 0.5);
      });
    }
  });

  it('has none that leaves more demand unmet than it says, or than it saves', () => {
    for (const { of, remedy, next } of made) {
      const more = litresMore(unmetLitres, of, next);
      const { drainedLitres = 0 } = of.notice.figures as { readonly drainedLitres?: number };
      expect(more).toBeLessThanOrEqual((remedy.trade?.lostLitres ?? remedy.unmetLitresMore) + 1e-6);
      expect(more).toBeLessThanOrEqual((1 - remedy.remaining) * drainedLitres + 1e-6);
      if (remedy.trade !== undefined) expect(remedy.trade.lostLitres).toBeLessThanOrEqual(remedy.trade.savedLitres);
    }
    expect(made.some(({ remedy }) => remedy.trade !== undefined)).toBe(true);
  });

  it('is traded for what plants need only where nothing does without', () => {
    for (const { remedies } of all) expect(new Set(remedies.map(({ trade }) => trade === undefined)).size).toBe(1);
  });
});
