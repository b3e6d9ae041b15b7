/** Changes of single weeks that go with another change. */
import { describe, expect, it } from 'vitest';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { isOfKind, plantingsOf } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { RemedyCandidate } from '../../../src/remedies/notices/remedy.ts';
import { shutWeeks } from '../../../src/remedies/notices/shut-weeks.ts';
import { noLongerWith } from '../../../src/remedies/notices/together.ts';
import { sumOver, wastedLitres } from '../../../src/remedies/notices/trouble.ts';
import { oneBed } from '../../support/small-plans.ts';
import { TROUBLES } from '../../support/troubled-plans.ts';

const minutesOf = ({ zones: [zone = expect.unreachable()] }: Season) =>
  Array.from({ length: zone.weeks }, (_, week) => zoneFigure(zone, 'minutes', week));

describe('with a change, minutes as now', () => {
  const plan = oneBed();
  const season = computeSeason(plan);
  const withArea = (area: number): RemedyCandidate => ({
    kind: 'keep-watered',
    plantingId: 'tomatoes',
    edit: {
      type: 'change-planting',
      zone: 'beds',
      planting: 'tomatoes',
      change: { extent: { kind: 'area', area } },
    },
  });

  it('are set in the weeks in which a zone would run longer, and no zone does', () => {
    const twice = withArea(240);
    const alone = minutesOf(computeSeason(applyEdit(plan, twice.edit)));
    const longer = alone.filter((minutes, week) => minutes > (minutesOf(season)[week] as number)).length;
    expect(longer).toBeGreaterThan(0);
    const found = [...noLongerWith({ plan, season }, twice)].at(-1) ?? expect.unreachable();
    expect(found).toMatchObject({ kind: 'together', parts: [twice, { kind: 'minutes-as-now', zoneIds: ['beds'] }] });
    const both = minutesOf(computeSeason(applyEdit(plan, found.edit)));
    both.forEach((minutes, week) => {
      expect(minutes).toBeLessThanOrEqual((minutesOf(season)[week] as number) + 1e-9);
    });
  });

  it('are none where it runs no longer', () => {
    expect([...noLongerWith({ plan, season }, withArea(60))]).toEqual([undefined]);
  });
});

describe('shut off in the weeks in which its water drains', () => {
  it('a planting is open in the others, and drains less', () => {
    const plan = (TROUBLES.find(([kind]) => kind === 'over') ?? expect.unreachable())[1]();
    const season = computeSeason(plan);
    const notice = noticesOf(season).find((each) => isOfKind(each, 'over')) ?? expect.unreachable();
    const ids = plantingsOf(notice);
    const found = [...shutWeeks({ plan, season, notice }, ids)].at(-1) ?? expect.unreachable();
    expect(found).toMatchObject({ kind: 'shut-weeks', plantingIds: ids });
    const next = computeSeason(applyEdit(plan, found.edit));
    const wasted = [season, next].map((of) => sumOver(of, wastedLitres, (id) => ids.includes(id)));
    expect(wasted[1]).toBeLessThan(0.5 * (wasted[0] as number));
    const plantings = next.zones.flatMap((zone) => zone.plantings).filter(({ planting }) => ids.includes(planting.id));
    expect(plantings.map(({ planting }) => planting.hasShutOff)).toEqual(ids.map(() => true));
    const open = plantings.flatMap((own) =>
      Array.from({ length: own.weeks }, (_, week) => plantingFigure(own, 'openDays', week)),
    );
    expect(open.some((days) => days === 0)).toBe(true);
    expect(open.some((days) => days > 0)).toBe(true);
  });
});
