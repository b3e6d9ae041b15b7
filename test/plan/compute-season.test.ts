import { describe, expect, it } from 'vitest';
import { zoneWeek } from '../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import { allFigures } from '../laws/weeks-of.ts';
import { metricGarden, mixedGarden, oneBed } from '../support/small-plans.ts';

describe('the season of a plan', () => {
  it('has the plan’s zones and weeks', () => {
    const season = computeSeason(mixedGarden());
    expect(season.zones.map(({ zone, weeks }) => [zone.id, weeks])).toEqual([
      ['beds', 30],
      ['containers', 30],
    ]);
  });

  it('takes minutes that were set by hand, and those really run', () => {
    const [beds] = computeSeason(mixedGarden()).zones;
    expect(beds && zoneWeek(beds, 13)).toMatchObject({ minutes: 120, origin: 'hand-set' });
    expect(beds && zoneWeek(beds, 6)).toMatchObject({ minutes: 90, origin: 'run' });
  });

  it('keeps the weeks of a zone that an edit does not reach', () => {
    const plan = mixedGarden();
    const season = computeSeason(plan);
    const edit: Edit = { type: 'set-minutes', zone: 'beds', week: '2027-06-14', minutes: 500 };
    const next = computeSeason(applyEdit(plan, edit), season);
    expect(next.zones[1]).toBe(season.zones[1]);
    expect(next.zones[0]).not.toBe(season.zones[0]);
    expect(next.totals.figures).not.toEqual(season.totals.figures);
  });

  it('comes out the same with and without an earlier one', () => {
    const plan = metricGarden();
    const edits: readonly Edit[] = [
      { type: 'set-week-rain', week: '2027-06-10', rain: 30 },
      { type: 'close-week', zone: 'hedge', week: '2027-07-01', closed: true },
      { type: 'change-site', change: { soil: 'clay' } },
      { type: 'remove-planting', zone: 'vegetables', planting: 'peas' },
    ];
    let [current, season] = [plan, computeSeason(plan)];
    for (const edit of edits) {
      current = applyEdit(current, edit);
      season = computeSeason(current, season);
      expect(allFigures(season)).toEqual(allFigures(computeSeason(structuredClone(current))));
    }
  });

  it('of an empty plan is empty', () => {
    const season = computeSeason(emptyPlan({ name: 'Allotment', units: 'metric', firstDay: '2027-04-01', weeks: 4 }));
    expect(season.zones).toEqual([]);
    expect(season.totals.figures.block.every((litres) => litres === 0)).toBe(true);
  });

  it('needs water in a dry June', () => {
    const [beds] = computeSeason(oneBed()).zones;
    expect(beds && zoneWeek(beds, 0).litres).toBeGreaterThan(0);
  });
});
