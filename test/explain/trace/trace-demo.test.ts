/** The traces of the demo's cells: what each ends with is what the sheet shows. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure, zoneState } from '../../../src/engine/season/zone-week.ts';
import type { StepId } from '../../../src/explain/trace/step-kinds.ts';
import { traceCell } from '../../../src/explain/trace/trace-cell.ts';
import type { TraceStep } from '../../../src/explain/trace/trace-step.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { filesUnder, projectRoot } from '../../tools/source-files.ts';

const last = (steps: readonly TraceStep[], id: StepId) => steps.findLast((step) => step.id === id)?.result.value;

const seasons = filesUnder('demo/plans', '.json').map((path) => {
  const read = readPlan(readFileSync(join(projectRoot, path), 'utf8'));
  if (!read.ok) throw new Error(`${path} is no plan`);
  return [path, computeSeason(read.plan)] as const;
});

describe.each(seasons)('each cell of %s', (_, season) => {
  const weeks = Array.from({ length: season.garden.span.weeks }, (_week, week) => week);
  const inEachWeek = (check: (zone: ZoneSeason, week: number) => void) => {
    for (const week of weeks) for (const zone of season.zones) check(zone, week);
  };

  it('of a zone ends with its minutes, its water and its state', () => {
    inEachWeek((zone, week) => {
      const steps = traceCell(season, { week, zoneId: zone.zone.id });
      expect(last(steps, 'minutes')).toBe(zoneFigure(zone, 'minutes', week));
      expect(last(steps, 'cycles')).toBe(zoneFigure(zone, 'cycles', week));
      expect(last(steps, 'litres')).toBe(zoneFigure(zone, 'litres', week));
      expect(last(steps, 'rain-credit')).toBe(zoneFigure(zone, 'rainCreditMm', week));
      expect(last(steps, 'state')).toBe(zoneState(zone, week));
    });
  });

  it('is within the timer’s starts', () => {
    inEachWeek((zone, week) => {
      const cycles = last(traceCell(season, { week, zoneId: zone.zone.id }), 'cycles');
      expect(cycles).toBeLessThanOrEqual(zone.zone.startsADay);
    });
  });

  it('of a planting ends with its water, its depletion and its state', () => {
    inEachWeek((zone, week) => {
      for (const own of zone.plantings) {
        const steps = traceCell(season, { week, zoneId: zone.zone.id, plantingId: own.planting.id });
        expect(last(steps, 'state')).toBe(plantingState(own, week));
        if (plantingFigure(own, 'groundDays', week) === 0) continue;
        expect(last(steps, 'litres')).toBe(plantingFigure(own, 'litres', week));
        expect(last(steps, 'need')).toBe(plantingFigure(own, 'neededMm', week));
        expect(last(steps, 'open-days')).toBe(plantingFigure(own, 'openDays', week));
        expect(last(steps, 'day-balance')).toBeCloseTo(plantingFigure(own, 'depletionEndMm', week), 9);
        expect(last(steps, 'depletion-end')).toBe(plantingFigure(own, 'depletionEndMm', week));
      }
    });
  });
});
