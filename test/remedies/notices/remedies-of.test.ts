/** What holds of the remedies of any plan's notices: each, when it is made, mends its notice or lessens it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Season } from '../../../src/engine/season/season.ts';
import { SUPPLY_FIELDS, ZONE_FIELDS } from '../../../src/engine/season/season.ts';
import type { Notice, NoticeKind } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { hasRemedies } from '../../../src/remedies/notices/remedied-kinds.ts';
import { remediesOf, searchRemedies } from '../../../src/remedies/notices/remedies-of.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { deepFrozen } from '../../support/deep-frozen.ts';
import { figuresOf, noticeOf } from '../../support/notices.ts';

/** The figure of each kind that says how bad it is. */
const TROUBLE: Readonly<Partial<Record<NoticeKind, string>>> = {
  'line-too-long': 'beyondBounds',
  'flow-too-great': 'excessLpm',
  'flow-together': 'days',
  'window-too-short': 'minutesOverInAll',
  'allowance-exceeded': 'overLitres',
  'tank-dry': 'mainsLitres',
  'emitters-far-apart': 'spacingM',
};

const plans = fc.sample(arbitraryPlan({ mostWeeks: 16, mostZones: 4, mostPlantings: 3 }), { numRuns: 70, seed: 5 });
const cases = plans.flatMap((plan) => {
  const season = computeSeason(plan);
  return noticesOf(season)
    .filter(({ kind }) => kind in TROUBLE || kind === 'line-downhill')
    .map((notice) => ({ plan, season, notice, remedies: remediesOf(deepFrozen(plan), season, notice) }));
});
const made = cases.flatMap(({ remedies, ...of }) => remedies.map((remedy) => ({ ...of, remedy })));

/** Sum of the trouble of all notices like one, in a season. */
function troubleLike(season: Season, { kind, figures }: Notice): number {
  const isOfWeek = 'weekAllowanceLitres' in figures;
  return noticesOf(season)
    .filter((other) => other.kind === kind && 'weekAllowanceLitres' in other.figures === isOfWeek)
    .reduce((sum, other) => sum + (figuresOf(other)[TROUBLE[kind] ?? ''] ?? 1), 0);
}

describe('the remedies of random plans', () => {
  it('are of many kinds, for most of what needs one', () => {
    expect([...new Set(made.map(({ remedy }) => remedy.kind))].sort()).toEqual([
      ...['close-loop', 'closer-spacing', 'cut-in-two', 'feed-middle', 'fewer-minutes', 'larger-tank', 'more-days'],
      ...['other-days', 'split-zone', 'uphill', 'wider-spacing'],
    ]);
    expect(cases.filter(({ remedies }) => remedies.length > 0).length).toBeGreaterThan(0.6 * cases.length);
  });

  it('make the trouble less when they are applied, and none where they say that nothing remains', () => {
    for (const { plan, season, notice, remedy } of made) {
      const next = computeSeason(structuredClone(applyEdit(plan, remedy.edit)));
      const name = `${notice.kind}: ${remedy.kind}`;
      expect([name, troubleLike(next, notice) < troubleLike(season, notice)]).toEqual([name, true]);
      const parts = [notice.zoneId, notice.plantingId, notice.lineIndex];
      const same = noticesOf(next).filter(
        ({ kind, figures, ...of }) =>
          kind === notice.kind &&
          'weekAllowanceLitres' in figures === 'weekAllowanceLitres' in notice.figures &&
          parts.every((part, index) => part === [of.zoneId, of.plantingId, of.lineIndex][index]),
      );
      expect([name, remedy.remaining > 0 || same.length === 0]).toEqual([name, true]);
      expect(remedy.remaining).toBeGreaterThanOrEqual(0);
      expect(remedy.remaining).toBeLessThan(1);
    }
  });

  it('tell what they cost: litres and demand unmet are those of the season with them', () => {
    for (const { plan, season, remedy } of made) {
      const next = computeSeason(structuredClone(applyEdit(plan, remedy.edit)));
      const more = (field: number) => sumOf(next, field) - sumOf(season, field);
      expect(remedy.litresMore).toBeCloseTo(more(SUPPLY_FIELDS.litres), 4);
      const unmetMore = more(SUPPLY_FIELDS.demandLitres) - more(SUPPLY_FIELDS.usedLitres);
      expect(remedy.unmetLitresMore).toBeCloseTo(unmetMore, 4);
    }
  });

  it('tell the minutes that all zones run more', () => {
    for (const { plan, season, remedy } of made) {
      const next = computeSeason(structuredClone(applyEdit(plan, remedy.edit)));
      expect(remedy.minutesMore).toBeCloseTo(minutesIn(next) - minutesIn(season), 6);
    }
  });

  it('name the dangers of other kinds that come with them, and none that were there', () => {
    let found = 0;
    for (const { plan, season, notice, remedy } of made) {
      const was = new Set(noticesOf(season).map(placeIn));
      const next = noticesOf(computeSeason(structuredClone(applyEdit(plan, remedy.edit))));
      const told = new Set(remedy.sideEffects.map(placeIn));
      for (const other of remedy.sideEffects) {
        expect(other.kind).not.toBe(notice.kind);
        expect(was.has(placeIn(other))).toBe(false);
      }
      const isKept = ({ zoneId, plantingId }: Notice) =>
        season.zones.some(
          ({ zone }) =>
            (zoneId === undefined || zone.id === zoneId) &&
            (plantingId === undefined || zone.plantings.some(({ id }) => id === plantingId)),
        );
      const isNew = (other: Notice) => other.kind !== notice.kind && isKept(other) && !was.has(placeIn(other));
      const dangers = next.filter((other) => other.severity === 'danger' && isNew(other));
      expect(dangers.filter((other) => !told.has(placeIn(other)))).toEqual([]);
      found += dangers.length;
    }
    expect(found).toBeGreaterThan(0);
  });

  it('are found in steps, a season each, and by these alone', () => {
    const { plan, season, notice, remedies } = cases.find((each) => each.remedies.length > 2) ?? expect.unreachable();
    const search = searchRemedies({ plan, season, notice });
    const steps: number[] = [];
    for (let step = search.next(); ; step = search.next()) {
      if (step.done === true) {
        expect(step.value.map(({ id }) => id)).toEqual(remedies.map(({ id }) => id));
        break;
      }
      steps.push(step.value);
    }
    expect(steps).toEqual(steps.map((_, index) => index + 1));
    expect(steps.length).toBeGreaterThan(2 * remedies.length - 1);
  });

  it('come best first, what dries nothing out before what does, each with an id of its own and its cautions', () => {
    for (const { remedies } of cases) {
      const order = remedies.map(({ sideEffects, remaining }) => ({
        dangers: sideEffects.filter(({ severity }) => severity === 'danger').length,
        remaining,
      }));
      expect(order).toEqual(order.toSorted((a, b) => a.dangers - b.dangers || a.remaining - b.remaining));
      expect(new Set(remedies.map(({ id }) => id)).size).toBe(remedies.length);
    }
    for (const { notice, remedy } of made) {
      if (notice.kind === 'tank-dry') expect(remedy.cautions).toContain('tank');
      if (remedy.kind === 'cut-in-two') {
        expect(remedy.cautions).toContain('backflow');
        expect(remedy.cautions).toContain('digging');
      }
      expect(remedy.cautions.length).toBeGreaterThan(0);
    }
  });
});

function sumOf({ totals: { figures, weeks } }: Season, field: number): number {
  return figures.subarray(field * weeks, (field + 1) * weeks).reduce((sum, litres) => sum + litres, 0);
}

function minutesIn({ zones }: Season): number {
  return zones.reduce(
    (sum, { figures, weeks }) =>
      sum +
      Array.from({ length: weeks }, (_, week) => week).reduce(
        (own, week) => own + (figures[ZONE_FIELDS.minutes * weeks + week] as number),
        0,
      ),
    0,
  );
}

function placeIn({ kind, severity, zoneId, plantingId, lineIndex }: Notice): string {
  return [kind, severity, zoneId, plantingId, lineIndex].join();
}

it('a notice whose trouble no change of the plan mends has none', () => {
  const plan = plans[0];
  if (plan === undefined) return expect.unreachable('there are plans');
  const season = computeSeason(plan);
  const notice = noticeOf('crop-past');
  expect(remediesOf(plan, season, notice)).toEqual([]);
  expect(hasRemedies(notice)).toBe(false);
  expect(hasRemedies(noticeOf('line-too-long'))).toBe(true);
});
