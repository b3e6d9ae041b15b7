/** What holds of the notices of any garden. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garden } from '../../../src/engine/garden.ts';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { PlantingSeason, Season } from '../../../src/engine/season/season.ts';
import { type Notice, plantingsOf } from '../../../src/explain/notices/notice.ts';
import { NOTICE_KINDS, shareOf } from '../../../src/explain/notices/notice-kinds.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { arbitraryGarden } from '../../support/arbitrary-garden.ts';
import { arbitraryLaidGarden } from '../../support/laid-garden.ts';
import { figuresOf } from '../../support/notices.ts';
import { FIGURES, told } from './notice-figures.ts';

const LACKS = [
  ...['no-line', 'closed', 'short-by-hand', 'short-as-run', 'beyond-timer', 'shut-off-short', 'left-behind'],
  ...['few-days', 'dry-spell', 'short'],
];
const LINES = ['line-too-long', 'pressure-low', 'emitters-far-apart', 'line-downhill', 'flow-too-fast'];
const SUPPLY = [
  'flow-below-label',
  'flow-too-great',
  'flow-together',
  'window-too-short',
  'allowance-exceeded',
  'tank-dry',
];
const seasons = [
  ...fc.sample(arbitraryGarden(), { numRuns: 300, seed: 11 }),
  ...fc.sample(fc.noBias(arbitraryLaidGarden({ mostZones: 6, mostPlantings: 3 })), { numRuns: 200, seed: 12 }),
].map((garden, place) => runSeason(place % 2 === 0 ? withComputedShares(garden) : garden));
const noticed = seasons.map((season) => ({ season, notices: noticesOf(season) }));

/** What lines wet of the ground stands there as found from them, not as typed. */
function withComputedShares(garden: Garden): Garden {
  const zones = garden.zones.map((zone) => {
    return { ...zone, plantings: zone.plantings.map((planting) => ({ ...planting, isShareTyped: false })) };
  });
  return { ...garden, zones };
}

/** Whether a planting's week is told as a lack of water. */
function isTold(notices: readonly Notice[], plantingId: string, week: number): boolean {
  return notices.some(
    (notice) =>
      LACKS.includes(notice.kind) && plantingsOf(notice).includes(plantingId) && notice.weeks?.includes(week) === true,
  );
}

/** Became due in the week and was not filled; at rest at the week's end it asks for nothing. */
function isFirstLeftPartlyFilled(own: PlantingSeason, week: number): boolean {
  if (plantingFigure(own, 'fillingMm', week) === 0 || plantingFigure(own, 'dueMask', week) === 0) return false;
  if (own.demand.rest?.[Math.min(7 * week + 6, own.demand.end - 1)] === 1) return false;
  return week === 0 || plantingFigure(own, 'fillingMm', week - 1) === 0;
}

function plantingWeeks({ zones }: Season) {
  return zones.flatMap((zone) =>
    zone.plantings.flatMap((own) => Array.from({ length: own.weeks }, (_, week) => ({ zone, own, week }))),
  );
}

describe('the notices of 500 random gardens, 200 of them with laid lines and a supply', () => {
  it('are of every kind', () => {
    const kinds = new Set<string>(noticed.flatMap(({ notices }) => notices.map(({ kind }) => kind)));
    const others = [
      'over',
      'over-by-hand',
      'hand-set',
      'too-long',
      'step-too-long',
      'crop-early',
      'crop-past',
      'out-of-season',
      'no-climate',
      'pot-dries-out',
      'wetted-too-little',
    ];
    expect([...kinds].sort()).toEqual([...LACKS, ...others, ...LINES, ...SUPPLY].sort());
  });

  it('tell every week in which a planting dries out or goes short', () => {
    for (const { season, notices } of noticed) {
      for (const { own, week } of plantingWeeks(season)) {
        if (!['dry', 'short'].includes(plantingState(own, week))) continue;
        expect([own.planting.id, week, isTold(notices, own.planting.id, week)]).toEqual([own.planting.id, week, true]);
      }
    }
  });

  it('tell a refill that is left partly filled in its first week', () => {
    let found = 0;
    for (const { season, notices } of noticed) {
      for (const { own, week } of plantingWeeks(season)) {
        if (!isFirstLeftPartlyFilled(own, week)) continue;
        found += 1;
        expect(isTold(notices, own.planting.id, week)).toBe(true);
      }
    }
    expect(found).toBeGreaterThan(20);
  });

  it('tell each planting and cause once, and none twice in one week', () => {
    for (const { season, notices } of noticed) {
      for (const { zone, plantings } of season.zones) {
        const lacks = notices.filter(({ kind, zoneId }) => LACKS.includes(kind) && zoneId === zone.id);
        expect(new Set(lacks.map(({ kind }) => kind)).size).toBe(lacks.length);
        for (const { planting } of plantings) {
          const alone = lacks
            .filter(({ plantingId }) => plantingId === planting.id)
            .flatMap(({ weeks }) => weeks ?? []);
          expect(new Set(alone).size).toBe(alone.length);
        }
      }
    }
  });

  it('tell no lack of a planting that is met and has a line', () => {
    for (const { season, notices } of noticed) {
      const alone = notices.filter(({ plantingId }) => plantingId !== undefined);
      for (const { own, week } of plantingWeeks(season)) {
        if (!['met', 'over', 'off'].includes(plantingState(own, week))) continue;
        const hasLine = plantingFigure(own, 'flowLpm', week) > 0 || plantingFigure(own, 'irrigationNetMm', week) > 0;
        if (!hasLine && plantingFigure(own, 'neededMm', week) > 0) continue;
        expect(isTold(alone, own.planting.id, week)).toBe(false);
      }
    }
  });

  it('tell of no water that drained in a week of which a run is logged: nobody can take it back', () => {
    let logged = 0;
    for (const { season, notices } of noticed) {
      const drains = notices.filter(({ kind }) => kind === 'over' || kind === 'over-by-hand');
      for (const { zone, own, week } of plantingWeeks(season)) {
        if (plantingState(own, week) !== 'over' || zone.zone.choices.get(week)?.runs === undefined) continue;
        expect(isTold(drains, own.planting.id, week)).toBe(false);
        logged++;
      }
    }
    expect(logged).toBeGreaterThan(50);
  });

  it('have finite figures, none negative, and weeks that lie in order within the season', () => {
    for (const { season, notices } of noticed) {
      for (const { figures, weeks, firstWeek, lastWeek } of notices) {
        for (const [name, figure] of Object.entries(figures)) {
          expect([name, Number.isFinite(figure) && figure >= -1e-9]).toEqual([name, true]);
        }
        expect([weeks?.at(0), weeks?.at(-1)]).toEqual([firstWeek, lastWeek]);
        expect(weeks).toEqual(weeks && [...new Set(weeks)].sort((a, b) => a - b));
        expect(weeks?.every((week) => week >= 0 && week < season.garden.span.weeks) ?? true).toBe(true);
      }
    }
  });

  it('name zones, plantings, lines and groups that are there', () => {
    for (const { season, notices } of noticed) {
      const ids = season.zones.map(({ zone }) => zone.id);
      for (const notice of notices) {
        const { zone, own, all } = told(season, notice);
        expect([notice.kind, zone === undefined]).toEqual([notice.kind, notice.zoneId === undefined]);
        expect([notice.kind, own === undefined]).toEqual([notice.kind, notice.plantingId === undefined]);
        expect(all.map(({ planting }) => planting.id)).toEqual(plantingsOf(notice));
        expect(notice.plantingIds?.length ?? 2).toBeGreaterThan(1);
        expect(LINES.includes(notice.kind)).toBe(notice.lineIndex !== undefined);
        expect(notice.groups?.flat().filter((id) => !ids.includes(id)) ?? []).toEqual([]);
      }
    }
  });

  it('have figures that follow from the season', () => {
    const wrong = noticed.flatMap(({ season, notices }) => notices.flatMap((notice) => wrongFigures(season, notice)));
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it('come worst first: by severity, then what is broken, then by the share that goes wrong, from 0 to 1', () => {
    const severities = ['danger', 'warning', 'note'];
    for (const { notices } of noticed) {
      const keys = notices.map((notice) => [
        severities.indexOf(notice.severity),
        NOTICE_KINDS[notice.kind].weight,
        -shareOf(notice),
      ]);
      expect(keys).toEqual(
        keys.toSorted((a, b) => a.map((key, at) => key - (b[at] ?? 0)).find((less) => less !== 0) ?? 0),
      );
      for (const notice of notices) {
        expect([notice.kind, shareOf(notice) >= 0 && shareOf(notice) <= 1]).toEqual([notice.kind, true]);
      }
    }
  });
});

function wrongFigures(season: Season, notice: Notice): readonly string[] {
  const expected = Object.entries(FIGURES[notice.kind](told(season, notice)));
  if (expected.length === 0) return [`${notice.kind} has no figure to look at`];
  return expected
    .filter(([name, figure]) => !isNear(figuresOf(notice)[name] ?? Number.NaN, figure))
    .map(([name, figure]) => `${notice.kind}: ${name} is ${figuresOf(notice)[name]}, not ${figure}`);
}

function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
}
