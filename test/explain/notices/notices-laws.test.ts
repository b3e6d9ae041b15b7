/** What holds of the notices of any garden. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import type { Notice } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { arbitraryGarden } from '../../support/arbitrary-garden.ts';
import { arbitraryLaidGarden } from '../../support/laid-garden.ts';
import { figuresOf } from '../../support/notices.ts';
import { FIGURES, told } from './notice-figures.ts';

const LACKS = ['no-line', 'dry', 'short', 'never-enough', 'closed'];
const LINES = ['line-too-long', 'pressure-low', 'emitters-far-apart', 'line-downhill'];
const SUPPLY = ['flow-too-great', 'flow-together', 'window-too-short', 'allowance-exceeded', 'tank-dry'];
const seasons = [
  ...fc.sample(arbitraryGarden(), { numRuns: 300, seed: 11 }),
  ...fc.sample(fc.noBias(arbitraryLaidGarden({ mostZones: 6, mostPlantings: 3 })), { numRuns: 200, seed: 12 }),
].map((garden) => runSeason(garden));
const noticed = seasons.map((season) => ({ season, notices: noticesOf(season) }));

/** How often a planting's week is told as a lack of water. */
function timesTold(notices: readonly Notice[], zoneId: string, plantingId: string, week: number): number {
  return notices.filter(
    ({ kind, weeks, ...where }) =>
      LACKS.includes(kind) &&
      where.zoneId === zoneId &&
      (where.plantingId === undefined || where.plantingId === plantingId) &&
      weeks?.includes(week) === true,
  ).length;
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
      'hand-set',
      'too-long',
      'refill-weekly',
      'crop-early',
      'crop-past',
      'out-of-season',
      'no-climate',
    ];
    expect([...kinds].sort()).toEqual([...LACKS, ...others, ...LINES, ...SUPPLY].sort());
  });

  it('tell every week in which a planting dries out or goes short, each once', () => {
    for (const { season, notices } of noticed) {
      for (const { zone, own, week } of plantingWeeks(season)) {
        if (!['dry', 'short'].includes(plantingState(own, week))) continue;
        const told = timesTold(notices, zone.zone.id, own.planting.id, week);
        // A closed zone's week is told for the zone, and beside it for a planting that has no line.
        expect(told).toBeGreaterThanOrEqual(1);
        expect(told).toBeLessThanOrEqual(zone.zone.choices.get(week)?.closed === true ? 2 : 1);
      }
    }
  });

  it('tell no lack of a planting that is met and has a line', () => {
    for (const { season, notices } of noticed) {
      for (const { zone, own, week } of plantingWeeks(season)) {
        if (!['met', 'over', 'off'].includes(plantingState(own, week))) continue;
        if (plantingFigure(own, 'neededMm', week) > 0 && plantingFigure(own, 'minutesWanted', week) === 0) continue;
        const ofPlanting = notices.filter(({ plantingId }) => plantingId === own.planting.id);
        expect(timesTold(ofPlanting, zone.zone.id, own.planting.id, week)).toBe(0);
      }
    }
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
        const { zone, own } = told(season, notice);
        expect([notice.kind, zone === undefined]).toEqual([notice.kind, notice.zoneId === undefined]);
        expect([notice.kind, own === undefined]).toEqual([notice.kind, notice.plantingId === undefined]);
        expect(LINES.includes(notice.kind)).toBe(notice.lineIndex !== undefined);
        expect(notice.groups?.flat().filter((id) => !ids.includes(id)) ?? []).toEqual([]);
      }
    }
  });

  it('have figures that follow from the season', () => {
    const wrong = noticed.flatMap(({ season, notices }) => notices.flatMap((notice) => wrongFigures(season, notice)));
    expect(wrong.slice(0, 5)).toEqual([]);
  });

  it('come worst first', () => {
    const severities = ['danger', 'warning', 'note'];
    for (const { notices } of noticed) {
      const order = notices.map(({ severity }) => severities.indexOf(severity));
      expect(order).toEqual(order.toSorted((a, b) => a - b));
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
