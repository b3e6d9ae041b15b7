import { expect, it } from 'vitest';
import { templatePlan } from '../../../src/elements/start/templates.ts';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { languageFor } from '../../../src/language/languages.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';

const OPTIONS = { today: dayNumber('2027-03-10'), name: 'Ours', zone: 'Zone 1', source: 'Hose bib' };
const TEMPLATES = ['vegetables', 'border', 'porch', 'club'] as const;

for (const units of ['us', 'metric'] as const) {
  it.each(TEMPLATES)(
    `the garden “%s” is a plan of ${units} units, all of it shown as assumed, whose zones run`,
    (id) => {
      const plan = templatePlan(id, { ...OPTIONS, units }, languageFor('en'));
      const read = readPlan(writePlan(plan));
      expect(read.ok ? [] : read.faults).toEqual([]);
      expect(plan.units).toBe(units);
      expect(plan.assumed).toContain('climate');
      const plantings = plan.zones.flatMap((zone) => zone.plantings);
      expect(plantings.length).toBeGreaterThan(2);
      for (const { assumed, need } of plantings) {
        const day = need.kind === 'crop' ? ['plantedOn'] : [];
        expect(assumed).toEqual(['need', ...day, 'extent', 'lines']);
      }
      for (const zone of computeSeason(plan).zones) {
        const litres = Array.from({ length: plan.season.weeks }, (_, week) => zoneFigure(zone, 'litres', week));
        expect(Math.max(...litres)).toBeGreaterThan(0);
      }
    },
  );
}

it.each([
  ['2027-03-10', '2027-04-05'],
  ['2027-08-15', '2027-04-05'],
  ['2027-12-24', '2028-04-03'],
])('a plan begun on %s is of the season from %s on', (today, firstDay) => {
  const plan = newPlan({ ...OPTIONS, units: 'us', today: dayNumber(today) });
  expect(plan.season.firstDay).toBe(firstDay);
  const read = readPlan(writePlan(plan));
  expect(read.ok ? [] : read.faults).toEqual([]);
});
