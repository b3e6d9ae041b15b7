/** What holds of the remedies of any plan's notices: each, when it is made, mends its notice or lessens it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldByWeek } from '../../../src/engine/season/field-by-week.ts';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { SUPPLY_FIELDS, ZONE_FIELDS } from '../../../src/engine/season/season.ts';
import { type Notice, type NoticeKind, plantingsOf } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { hasRemedies } from '../../../src/remedies/notices/remedied-kinds.ts';
import { remediesOf, searchRemedies } from '../../../src/remedies/notices/remedies-of.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { deepFrozen } from '../../support/deep-frozen.ts';
import { DEMO_PLANS } from '../../support/demo-plans.ts';
import { figuresOf, noticeOf } from '../../support/notices.ts';
import { TROUBLES } from '../../support/troubled-plans.ts';

/** The figure of each kind that says how bad it is. */
const TROUBLE: Readonly<Partial<Record<NoticeKind, string>>> = {
  'line-too-long': 'beyondBounds',
  'flow-too-great': 'excessLpm',
  'flow-together': 'days',
  'window-too-short': 'minutesOverInAll',
  'allowance-exceeded': 'overLitres',
  'tank-dry': 'mainsLitres',
  'emitters-far-apart': 'spacingM',
  'step-too-long': 'timerStepMinutes',
  'too-long': 'minutesPerDay',
};

/** Kinds that tell of the water of plantings: their trouble is told by the season itself, whatever notices it has. */
const LACKING = ['beyond-timer', 'shut-off-short', 'left-behind', 'few-days', 'short'];

const WEEKS_OF = { mostWeeks: 16, mostZones: 4, mostPlantings: 3 };
const plans = [
  ...fc.sample(arbitraryPlan(WEEKS_OF), { numRuns: 60, seed: 5 }),
  ...TROUBLES.map(([, planOf]) => planOf()),
  ...DEMO_PLANS,
];
const cases = plans.flatMap((plan) => {
  const season = computeSeason(plan);
  return noticesOf(season)
    .filter(hasRemedies)
    .map((notice) => ({ plan, season, notice, remedies: remediesOf(deepFrozen(plan), season, notice) }));
});
/** Each remedy with the season that its edit makes, from a plan that shares nothing with the one before. */
const made = cases.flatMap(({ remedies, ...of }) =>
  remedies.map((remedy) => ({
    ...of,
    remedy,
    next: computeSeason(structuredClone(applyEdit(of.plan, remedy.edit))),
  })),
);

/** Sum of the trouble of all notices like one, in a season. */
function troubleLike(season: Season, notice: Notice): number {
  const { kind, figures } = notice;
  if (kind === 'step-too-long') return runOff(season);
  if (kind === 'few-days') return unmet(season, plantingsOf(notice));
  if (LACKING.includes(kind)) return lacking(season, plantingsOf(notice));
  if (kind === 'over') return wasted(season, plantingsOf(notice));
  const isOfWeek = 'weekAllowanceLitres' in figures;
  if (kind === 'flow-too-fast') return tooFast(season);
  if (kind === 'pot-dries-out')
    return summed(season, kind, ({ usedLitres = 0, heldLitres = 0 }) => usedLitres - heldLitres);
  if (kind === 'wetted-too-little')
    return summed(season, kind, ({ wantedShare = 0, wettedShare = 0 }) => wantedShare - wettedShare);
  return noticesOf(season)
    .filter((other) => other.kind === kind && 'weekAllowanceLitres' in other.figures === isOfWeek)
    .reduce((sum, other) => sum + (figuresOf(other)[TROUBLE[kind] ?? ''] ?? 1), 0);
}

/** Velocities beyond what tubes should carry, added up, m/s. */
function tooFast(season: Season): number {
  return summed(season, 'flow-too-fast', ({ velocityMs = 0, limitMs = 0 }) => velocityMs - limitMs);
}

/** Over all notices of a kind. */
function summed(season: Season, of: NoticeKind, trouble: (figures: ReturnType<typeof figuresOf>) => number): number {
  return noticesOf(season)
    .filter(({ kind }) => kind === of)
    .map(figuresOf)
    .reduce((sum, figures) => sum + trouble(figures), 0);
}

/** Plantings of a season by their ids, with their weeks. */
function weeksOfPlantings({ zones }: Season, ids: readonly string[]) {
  return zones
    .flatMap(({ plantings }) => plantings)
    .filter(({ planting }) => ids.includes(planting.id))
    .flatMap((own) => Array.from({ length: own.weeks }, (_, week) => ({ own, week })));
}

/** Demand unmet, and what is missing to the goal, or of a refill that is due to the brim, at the end of each short week. */
function lacking(season: Season, ids: readonly string[]): number {
  return weeksOfPlantings(season, ids).reduce((sum, { own, week }) => {
    const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(own, field, week);
    const isShort = ['dry', 'short'].includes(plantingState(own, week));
    const missing = at('fillingMm') > 0 ? at('depletionEndMm') : at('missedMm');
    return sum + at('demandLitres') - at('usedLitres') + (isShort ? missing * own.planting.areaM2 : 0);
  }, 0);
}

function unmet(season: Season, ids: readonly string[]): number {
  return weeksOfPlantings(season, ids).reduce(
    (sum, { own, week }) => sum + plantingFigure(own, 'demandLitres', week) - plantingFigure(own, 'usedLitres', week),
    0,
  );
}

/** Irrigation that drained, less what washes salt away, no more than was not asked for. */
function wasted(season: Season, ids: readonly string[]): number {
  return weeksOfPlantings(season, ids).reduce((sum, { own, week }) => {
    const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(own, field, week);
    const drainedMm = at('irrigationDrainedMm') - own.demand.leachingFraction * at('irrigationNetMm');
    return sum + Math.max(0, Math.min(drainedMm, at('unaskedMm'))) * own.planting.areaM2;
  }, 0);
}

/** By how many times the steps of timers are longer than what soils take in at once. */
function runOff(season: Season): number {
  return noticesOf(season).reduce((sum, { kind, figures }) => {
    if (kind !== 'step-too-long') return sum;
    const { timerStepMinutes = 0, longestCycleMinutes = 1 } = figuresOf({ figures });
    return sum + timerStepMinutes / longestCycleMinutes - 1;
  }, 0);
}

describe('the remedies of the demo, of gardens with one trouble each and of 60 random plans', () => {
  it('are of many kinds, and there are some for most of what the demo and the small gardens have', () => {
    const kinds = new Set(made.map(({ remedy }) => remedy.kind));
    for (const kind of [
      ...(['close-loop', 'closer-spacing', 'cut-in-two', 'feed-middle', 'fewer-minutes', 'larger-tank'] as const),
      ...(['more-days', 'more-starts', 'other-days', 'other-emitters', 'other-runs', 'own-zone', 'shut-off'] as const),
      ...(['smaller-step', 'split-zone', 'uphill'] as const),
    ]) {
      expect([kind, kinds.has(kind)]).toEqual([kind, true]);
    }
    const small = cases.filter(({ plan }) => plans.indexOf(plan) >= 60);
    expect(small.filter(({ remedies }) => remedies.length > 0).length).toBeGreaterThan(0.8 * small.length);
  });

  it('are there for every planting that is overwatered', () => {
    const over = cases.filter(({ notice }) => notice.kind === 'over');
    expect(over.filter(({ plan }) => DEMO_PLANS.includes(plan)).length).toBeGreaterThan(1);
    expect(over.length).toBeGreaterThan(3);
    for (const { notice, remedies } of over) {
      expect([plantingsOf(notice), remedies.length > 0]).toEqual([plantingsOf(notice), true]);
    }
  });

  it('give a bed that is watered too seldom more days, and the roses of the demo more flow or a zone of their own', () => {
    const kindsFor = (kind: NoticeKind, isOf: (of: (typeof cases)[number]) => boolean) =>
      cases
        .filter((each) => each.notice.kind === kind && isOf(each))
        .flatMap(({ remedies }) => remedies.map((remedy) => remedy.kind));
    expect(kindsFor('few-days', () => true)).toEqual(expect.arrayContaining(['days-by-month', 'more-days']));
    const isOfRoses = ({ plan, notice }: (typeof cases)[number]) =>
      DEMO_PLANS.includes(plan) && plantingsOf(notice).includes('roses');
    expect(kindsFor('shut-off-short', isOfRoses)).toEqual(expect.arrayContaining(['own-zone', 'other-emitters']));
  });

  it('halve the trouble at least when they are applied, and leave none where they say that nothing remains', () => {
    for (const { season, notice, remedy, next } of made) {
      const name = `${notice.kind}: ${remedy.kind}`;
      const [before, after] = [troubleLike(season, notice), troubleLike(next, notice)];
      expect([name, after < before]).toEqual([name, true]);
      if (LACKING.includes(notice.kind) || notice.kind === 'over') {
        const { unmetLitres = 0, missingLitres = 0, drainedLitres = 0 } = figuresOf(notice);
        const missing = notice.kind === 'few-days' ? 0 : missingLitres;
        const own = notice.kind === 'over' ? drainedLitres : unmetLitres + missing;
        expect([name, before - after >= 0.5 * own - 1e-6]).toEqual([name, true]);
        expect(remedy.remaining).toBeCloseTo(Math.max(0, own - before + after) / own, 6);
      }
      const parts = [notice.zoneId, notice.plantingId, notice.lineIndex];
      const same = noticesOf(next).filter(
        ({ kind, figures, ...of }) =>
          kind === notice.kind &&
          !LACKING.includes(kind) &&
          kind !== 'over' &&
          'weekAllowanceLitres' in figures === 'weekAllowanceLitres' in notice.figures &&
          parts.every((part, place) => part === [of.zoneId, of.plantingId, of.lineIndex][place]),
      );
      expect([name, remedy.remaining > 0 || same.length === 0]).toEqual([name, true]);
      expect(remedy.remaining).toBeGreaterThanOrEqual(0);
      expect(remedy.remaining).toBeLessThanOrEqual(0.5);
    }
  });

  it('do no harm elsewhere, but for less water where hours or an allowance do not suffice', () => {
    for (const { season, notice, remedy, next } of made) {
      if (remedy.kind === 'fewer-minutes') continue;
      const name = `${notice.kind}: ${remedy.kind}`;
      expect([name, remedy.sideEffects.length]).toEqual([name, 0]);
      const ids = LACKING.includes(notice.kind) ? plantingsOf(notice) : [];
      const others = season.zones.flatMap(({ plantings }) => plantings.map(({ planting }) => planting.id));
      const rest = others.filter((id) => !ids.includes(id));
      const demand = sumOf(season, SUPPLY_FIELDS.demandLitres);
      expect([name, unmet(next, rest) - unmet(season, rest) <= 0.05 * demand]).toEqual([name, true]);
    }
  });

  it('water on no day on which no water may run', () => {
    let found = 0;
    for (const { plan, remedy } of made) {
      if (!('wateringDays' in remedy)) continue;
      const allowed = plan.supply?.window?.weekdays;
      for (const { weekdays } of remedy.wateringDays) {
        expect(weekdays.filter((day) => allowed?.includes(day) === false)).toEqual([]);
        if (allowed !== undefined && allowed.length < 7) found += 1;
      }
    }
    expect(found).toBeGreaterThan(0);
  });

  it('tell what they cost: litres and demand unmet are those of the season with them', () => {
    for (const { season, remedy, next } of made) {
      const more = (field: number) => sumOf(next, field) - sumOf(season, field);
      expect(remedy.litresMore).toBeCloseTo(more(SUPPLY_FIELDS.litres), 4);
      const unmetMore = more(SUPPLY_FIELDS.demandLitres) - more(SUPPLY_FIELDS.usedLitres);
      expect(remedy.unmetLitresMore).toBeCloseTo(unmetMore, 4);
    }
  });

  it('tell the minutes that all zones run more', () => {
    for (const { season, remedy, next } of made) {
      expect(remedy.minutesMore).toBeCloseTo(minutesIn(next) - minutesIn(season), 6);
    }
  });

  it('name the warnings and dangers that come with less water, and none that were there', () => {
    let found = 0;
    for (const { season, remedy } of made) {
      const was = new Set(noticesOf(season).flatMap(placesIn));
      for (const other of remedy.sideEffects) {
        found += 1;
        expect(other.severity).not.toBe('note');
        expect(placesIn(other).every((place) => was.has(place))).toBe(false);
      }
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
        // To within a twentieth of the problem.
        share: Math.round(remaining / 0.05),
      }));
      expect(order).toEqual(order.toSorted((a, b) => a.dangers - b.dangers || a.share - b.share));
      expect(remedies.length).toBeLessThanOrEqual(5);
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

function sumOf({ totals }: Season, field: number): number {
  return fieldByWeek(totals.figures, field).reduce((sum, litres) => sum + litres, 0);
}

function minutesIn({ zones }: Season): number {
  return zones.reduce(
    (sum, { figures, weeks }) =>
      sum +
      Array.from({ length: weeks }, (_, week) => week).reduce(
        (own, week) => own + figures.at(ZONE_FIELDS.minutes, week),
        0,
      ),
    0,
  );
}

/** Of each planting that it names. */
function placesIn(notice: Notice): readonly string[] {
  const { kind, severity, zoneId, lineIndex } = notice;
  const plantings = plantingsOf(notice);
  return (plantings.length === 0 ? [undefined] : plantings).map((id) => [kind, severity, zoneId, id, lineIndex].join());
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
