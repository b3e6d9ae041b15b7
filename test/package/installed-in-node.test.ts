/** The package installed into a program that has no page: it reads a plan, changes it and computes its season. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type InstalledProject, installedProject } from '../tools/installed-project.ts';
import { projectRoot } from '../tools/source-files.ts';

const PROGRAM = `
import { readFileSync } from 'node:fs';
import { runSeason, zoneWeek } from 'runnel-kit/engine';
import { compareZone } from 'runnel-kit/engine/mix';
import { noticesOf } from 'runnel-kit/explain';
import { applyEdit, fromSi, gardenOf, readPlan } from 'runnel-kit/plan';
import { seasonToCsv } from 'runnel-kit/exchange';
import { SeasonSheet } from 'runnel-kit/sheet';

if (globalThis.window !== undefined) throw new Error('this is a page');
const { plan } = readPlan(readFileSync('our-garden.runnel.json', 'utf8'));
const edit = { type: 'set-minutes', zone: 'shrub-bank', week: '2027-07-12', minutes: 30 };

function told(plan) {
  const season = runSeason(gardenOf(plan));
  const zone = season.zones.find(({ zone }) => zone.id === 'shrub-bank');
  const { minutes, litres } = zoneWeek(zone, 14);
  const csv = seasonToCsv(season, { units: 'us', measures: ['minutes'], zones: ['shrub-bank'] }).split('\\r\\n');
  const column = csv[0].split(',').indexOf('2027-07-12');
  const sheet = new SeasonSheet({ plan, season, locale: 'en-US', readOnly: false });
  const row = sheet.rows.find((each) => each.kind === 'zone' && each.zone.zone.id === 'shrub-bank');
  return {
    minutes,
    gallons: Number(fromSi(litres, 'volume', 'us').toFixed(6)),
    inCsv: csv[1].split(',')[column],
    inSheet: sheet.copyText({ row, column: { kind: 'week', week: 14 } }, 'minutes'),
    notices: noticesOf(season).length > 0,
    compared: compareZone(season, 'shrub-bank').plantings.length,
  };
}

console.log(JSON.stringify([told(plan), told(applyEdit(plan, edit))]));
`;

let project: InstalledProject;

beforeAll(async () => {
  project = await installedProject({
    'program.mjs': PROGRAM,
    'our-garden.runnel.json': readFileSync(join(projectRoot, 'demo/plans/lantern-lane.runnel.json'), 'utf8'),
  });
}, 300_000);

afterAll(() => project?.remove(), 60_000);

it('computes, changes, writes and lays out a season', async () => {
  const { status, said } = await project.run(process.execPath, ['program.mjs']);
  expect(status, said).toBe(0);
  // Worked by hand in test/demo/lantern-lane.test.ts: 57.6 gph x 20 min / 60; and 57.6 gph x 30 min / 60 = 28.8 gal.
  expect(JSON.parse(said)).toEqual([
    { minutes: 20, gallons: 19.2, inCsv: '20', inSheet: '20', notices: true, compared: 2 },
    { minutes: 30, gallons: 28.8, inCsv: '30', inSheet: '30', notices: true, compared: 2 },
  ]);
});

it('loads no spreadsheet, chart or element for that', async () => {
  project.write({
    'hooks.mjs': `export async function load(url, context, next) {
      if (/node_modules\\/(?:handsontable|chart\\.js|lit|@lit)\\//.test(url)) throw new Error('it loads ' + url);
      return next(url, context);
    }`,
    'watched.mjs': `import { register } from 'node:module';
      register('./hooks.mjs', import.meta.url);
      await import(process.argv[2]);`,
  });
  const element = await project.run(process.execPath, ['watched.mjs', 'runnel-kit/elements/week']);
  expect(element.said).toContain('it loads');
  const { status, said } = await project.run(process.execPath, ['watched.mjs', './program.mjs']);
  expect(status, said).toBe(0);
});
