/** What is taken over from zones that are the same is what would be found anew, and an edit of one zone looks at little else. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Season } from '../../../src/engine/season/season.ts';
import { findingNotices, noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { benchGarden, inOneStore, withWeekMinutes, zoneIdAt } from '../../bench/gardens.ts';
import { arbitraryEdit } from '../../support/arbitrary-edit.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';

/** Zones looked at, as the search counts them. */
function effortOf(season: Season): number {
  let effort = 0;
  const steps = findingNotices(season);
  for (let step = steps.next(); step.done !== true; step = steps.next()) effort += step.value;
  return effort;
}

it('gives of each plan in a row of edits the notices that a fresh copy of it has', () => {
  let edits = 0;
  fc.assert(
    fc.property(
      arbitraryPlan({ mostZones: 4, mostPlantings: 3, mostWeeks: 12 }),
      fc.array(arbitraryEdit, { minLength: 1, maxLength: 6 }),
      (first, makers) => {
        let plan = first;
        let season = computeSeason(plan);
        noticesOf(season);
        for (const make of makers) {
          const result = tryEdit(plan, make(plan));
          if (!result.ok || !result.changed) continue;
          edits += 1;
          plan = result.plan;
          season = computeSeason(plan, season);
          expect(noticesOf(season)).toEqual(noticesOf(computeSeason(structuredClone(plan))));
        }
      },
    ),
    { numRuns: 60, seed: 17 },
  );
  expect(edits).toBeGreaterThan(50);
}, 60_000);

it('looks at one zone of 200 where the minutes of one were set, and hands on what the others had', () => {
  const plan = inOneStore(benchGarden(200));
  const season = computeSeason(plan);
  const whole = effortOf(season);
  const before = noticesOf(season);
  const next = computeSeason(withWeekMinutes(plan, zoneIdAt(17), 30, 71), season);
  expect(effortOf(next)).toBeLessThan(whole / 10);
  const kept = new Set(before);
  const after = noticesOf(next);
  expect(after.filter((notice) => notice.zoneId !== undefined && !kept.has(notice)).length).toBeLessThan(10);
  expect(after.length).toBeGreaterThan(100);
  expect(effortOf(next)).toBeLessThan(effortOf(computeSeason(structuredClone(plan))) / 10);
});
