import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../../src/engine/line/catalogue.data.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { zoneFigure, zoneOrigin } from '../../../src/engine/season/zone-week.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { cutCandidates, cutOff } from '../../../src/remedies/mix/kinds/cut.ts';
import { mixContext } from '../../../src/remedies/mix/mix-context.ts';
import { law } from '../../laws/law.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { denseAndShrubs } from '../../support/dense-and-shrubs.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const applied = (plan: Plan, candidate: ReturnType<typeof cutOff>): Plan =>
  applyEdit(plan, { type: 'together', edits: candidate.edits });

describe('cutOff', () => {
  it('moves the plantings to a new zone that is like the old one, right behind it', () => {
    const plan = mixedGarden();
    const [zone] = plan.zones;
    if (zone === undefined) throw new Error('there is no zone');
    const after = applied(plan, cutOff(plan, zone, ['shrubs']));
    expect(after.zones.map(({ id, name, plantings }) => [id, name, plantings.map((planting) => planting.id)])).toEqual([
      ['beds', 'Beds', ['tomatoes']],
      ['beds-2', 'Beds 2', ['shrubs']],
      ['containers', 'Containers', ['pots']],
    ]);
    expect(after.zones[1]?.wateringDays).toBe(zone.wateringDays);
  });

  it('lets what really ran, and the weeks closed by hand, hold for both zones', () => {
    const plan = { ...denseAndShrubs(), log: { runs: { border: { '2027-06-07': 24 } } } };
    const [zone] = plan.zones;
    if (zone === undefined) throw new Error('there is no zone');
    const after = applied(plan, cutOff(plan, zone, ['shrubs']));
    expect(after.log?.runs?.['border-2']).toEqual({ '2027-06-07': 24 });
    expect(after.choices?.['border-2']).toEqual({ '2027-06-28': { closed: true } });
  });
});

it('cutOff lets what ran by day hold for both zones, each with its own shut-offs', () => {
  const open = denseAndShrubs().zones[0]?.plantings.map(({ id }) => id) ?? [];
  const days = { '2027-06-08': { minutes: 24, open }, '2027-06-09': { minutes: 10 } };
  const plan = { ...denseAndShrubs(), log: { runs: { border: { '2027-06-07': { days } } } } };
  const [zone] = plan.zones;
  if (zone === undefined) throw new Error('there is no zone');
  const after = applied(plan, cutOff(plan, zone, ['shrubs']));
  const openIn = (...ids: readonly string[]) => ({
    '2027-06-07': { days: { '2027-06-08': { minutes: 24, open: ids }, '2027-06-09': { minutes: 10 } } },
  });
  expect(after.log?.runs).toEqual({
    border: openIn(...open.filter((id) => id !== 'shrubs')),
    'border-2': openIn('shrubs'),
  });
});

/** Two plantings of each kind, nothing set by hand. */
function twoKinds(plan: Plan): Plan {
  const { choices: _choices, log: _log, ...rest } = plan;
  const zones = plan.zones.map(({ rule: _rule, ...zone }) => ({
    ...zone,
    plantings: zone.plantings.flatMap((planting) => [planting, { ...planting, id: `${planting.id}-too` }]),
  }));
  return { ...rest, zones };
}

describe('cutCandidates', () => {
  law('leaves no planting of two kinds running longer than it asks for, beyond the timer’s step in each cycle', {
    on: arbitraryPlan({ mostZones: 2, mostPlantings: 2, mostWeeks: 20 }).map(twoKinds),
    runs: 80,
    holds: (plan) => {
      const season = computeSeason(plan);
      for (const { id } of plan.zones) {
        for (const candidate of cutCandidates(mixContext(plan, season, id, CATALOGUE))) {
          const after = computeSeason(applied(plan, candidate));
          const [change] = candidate.changes;
          const zoneIds = [id, change?.kind === 'cut' ? change.newZoneId : ''];
          for (const zone of after.zones.filter((each) => zoneIds.includes(each.zone.id))) expectNoMoreThanAsked(zone);
        }
      }
    },
  });
});

function expectNoMoreThanAsked(zone: ReturnType<typeof computeSeason>['zones'][number]): void {
  for (let week = 0; week < zone.weeks; week++) {
    const cycles = Math.max(1, zoneFigure(zone, 'cycles', week));
    expect(zoneOrigin(zone, week)).toBe('computed');
    for (const planting of zone.plantings) {
      // A refill asks on the morning it is due, which what it asked for on the week's first does not tell.
      if (planting.planting.watering === 'refill' || plantingFigure(planting, 'openDays', week) === 0) continue;
      const beyond = zoneFigure(zone, 'minutesPerDay', week) - plantingFigure(planting, 'minutesWanted', week);
      expect(beyond, `week ${week}`).toBeLessThanOrEqual(cycles * zone.zone.timerStepMinutes + 1e-6);
    }
  }
}
