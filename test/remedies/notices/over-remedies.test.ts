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

/** Gardens of which the last is one where no one change keeps water from draining without harm. */
const SMALL = { options: { mostWeeks: 20, mostZones: 4, mostPlantings: 3 }, seed: 1, count: 59 };

/** The last of so many: there nothing is harmless at all. */
const HARD = { options: {}, seed: 2, count: 241 };

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

function sample({ options, seed, count }: { options: PlanOptions; seed: number; count: number }): readonly Plan[] {
  return fc.sample(fc.noBias(arbitraryPlan(options)), { numRuns: count, seed });
}

const litresMore = (litresOf: typeof unmetLitres, { season }: Case, next: Season, ids?: readonly string[]) => {
  const [before = 0, after = 0] = [season, next].map((of) =>
    sumOver(of, litresOf, (id) => ids === undefined || ids.includes(id)),
  );
  return after - before;
};

describe('waste', () => {
  let all: readonly Case[];
  let made: readonly { readonly of: Case; readonly remedy: Remedy; readonly next: Season }[];

  beforeAll(() => {
    all = [...sample(SMALL), ...sample(HARD).slice(-1)].flatMap(casesOf);
    made = all.flatMap((of) =>
      of.remedies.map((remedy) => {
        const next = computeSeason(structuredClone(applyEdit(of.plan, remedy.edit)));
        return { of, remedy, next };
      }),
    );
  }, 60_000);

  it('has a remedy, where no one change is harmless too', () => {
    expect(all.length).toBeGreaterThan(2);
    for (const { notice, remedies } of all) {
      expect([plantingsOf(notice), remedies.length > 0]).toEqual([plantingsOf(notice), true]);
    }
    const kinds = new Set(all.flatMap(({ remedies }) => remedies).map(({ kind }) => kind));
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
