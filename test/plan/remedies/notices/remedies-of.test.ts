/** What holds of the remedies of any plan's notices: each, when it is made, mends its notice or lessens it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Notice, NoticeKind } from '../../../../src/engine/notices/notice.ts';
import { noticesOf } from '../../../../src/engine/notices/notices-of.ts';
import type { Season } from '../../../../src/engine/season/season.ts';
import { SUPPLY_FIELDS } from '../../../../src/engine/season/season.ts';
import { computeSeason } from '../../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../../src/plan/edits/apply-edit.ts';
import { remediesOf } from '../../../../src/plan/remedies/notices/remedies-of.ts';
import { arbitraryPlan } from '../../../support/arbitrary-plan.ts';
import { deepFrozen } from '../../../support/deep-frozen.ts';

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
    .reduce((sum, other) => sum + (other.figures[TROUBLE[kind] ?? ''] ?? 1), 0);
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
          parts.every((part, place) => part === [of.zoneId, of.plantingId, of.lineIndex][place]),
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

  it('come best first, each with an id of its own and the cautions of its notice', () => {
    for (const { remedies } of cases) {
      const remaining = remedies.map((remedy) => remedy.remaining);
      expect(remaining).toEqual(remaining.toSorted((a, b) => a - b));
      expect(new Set(remedies.map(({ id }) => id)).size).toBe(remedies.length);
    }
    for (const { notice, remedy } of made) {
      if (notice.kind === 'tank-dry') expect(remedy.cautions).toContain('tank');
      if (remedy.kind === 'cut-in-two') expect(remedy.cautions).toContain('backflow');
    }
  });
});

function sumOf({ totals: { figures, weeks } }: Season, field: number): number {
  return figures.subarray(field * weeks, (field + 1) * weeks).reduce((sum, litres) => sum + litres, 0);
}

it('a notice whose trouble no change of the plan mends has none', () => {
  const plan = plans[0];
  if (plan === undefined) return expect.unreachable('there are plans');
  const season = computeSeason(plan);
  const notice: Notice = { kind: 'crop-past', severity: 'warning', remedy: 'check-days', figures: {} };
  expect(remediesOf(plan, season, notice)).toEqual([]);
});
