/** A workbook that nobody has changed changes nothing. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runThrough } from '../../../src/engine/run-through.ts';
import { tableFromSheets } from '../../../src/exchange/csv/table-from-csv.ts';
import { workbookSteps } from '../../../src/exchange/workbook/season-to-workbook.ts';
import { workbookTexts } from '../../../src/exchange/workbook/workbook-texts.ts';
import { writeWorkbook } from '../../../src/exchange/workbook/write-workbook.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';

it('reports no change, for 200 random plans', async () => {
  let figures = 0;
  await fc.assert(
    fc.asyncProperty(arbitraryPlan({ mostZones: 2, mostPlantings: 1, mostWeeks: 6 }), async (drawn) => {
      // Two zones of one name cannot be told apart, and are refused.
      const plan = {
        ...drawn,
        zones: drawn.zones.map((zone, at) => ({ ...zone, name: `${zone.name} ${at}`.slice(-120).trim() })),
      };
      const season = computeSeason(plan);
      const choice = { planName: plan.name, units: plan.units, today: season.garden.span.firstDay + 40 };
      const content = runThrough(workbookSteps(season, choice));
      // The first two sheets are all that is read of it.
      const sheets = content.sheets.slice(0, 2);
      const read = tableFromSheets(await workbookTexts(await writeWorkbook({ ...content, sheets })), { plan, season });
      figures += plan.zones.length * plan.season.weeks;
      expect(read).toMatchObject({ kind: 'minutes', asked: [], edit: undefined, changes: [], faults: [] });
    }),
    { numRuns: 200, seed: 21 },
  );
  expect(figures).toBeGreaterThan(500);
}, 180_000);
