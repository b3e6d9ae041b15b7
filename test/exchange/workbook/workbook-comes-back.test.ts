/** A workbook that nobody has changed changes nothing. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runThrough } from '../../../src/engine/run-through.ts';
import { tableFromSheets } from '../../../src/exchange/csv/table-from-csv.ts';
import { workbookSteps } from '../../../src/exchange/workbook/season-to-workbook.ts';
import { workbookTexts } from '../../../src/exchange/workbook/workbook-texts.ts';
import { writeWorkbook } from '../../../src/exchange/workbook/write-workbook.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';

/** A workbook is mostly waited for while it is unpacked: so many are read at a time. */
const AT_ONCE = 20;

async function readBack(drawn: Plan): Promise<object> {
  // Two zones of one name cannot be told apart, and are refused.
  const zones = drawn.zones.map((zone, at) => ({ ...zone, name: `${zone.name} ${at}`.slice(-120).trim() }));
  const plan = { ...drawn, zones };
  const season = computeSeason(plan);
  const choice = { planName: plan.name, units: plan.units, today: season.garden.span.firstDay + 40 };
  const content = runThrough(workbookSteps(season, choice));
  // The first two sheets are all that is read of it.
  const sheets = content.sheets.slice(0, 2);
  const read = tableFromSheets(await workbookTexts(await writeWorkbook({ ...content, sheets })), { plan, season });
  return { ...read, plan };
}

it('reports no change, for 200 random plans', async () => {
  const plans = fc.sample(arbitraryPlan({ mostZones: 2, mostPlantings: 1, mostWeeks: 6 }), { numRuns: 200, seed: 21 });
  const nothing = { kind: 'minutes', asked: [], edit: undefined, changes: [], faults: [] };
  for (let first = 0; first < plans.length; first += AT_ONCE)
    for (const read of await Promise.all(plans.slice(first, first + AT_ONCE).map(readBack)))
      expect(read).toMatchObject(nothing);
  expect(plans.reduce((sum, plan) => sum + plan.zones.length * plan.season.weeks, 0)).toBeGreaterThan(500);
}, 180_000);
