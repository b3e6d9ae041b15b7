import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { JSON_SCHEMA_PATH, planJsonSchema } from '../../.build/json-schema.ts';
import { DEFAULTS } from '../../src/plan/defaults.ts';
import { checkPlan } from '../../src/plan/reading/check-plan.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { isValid } from '../support/json-schema-check.ts';
import { metricGarden, mixedGarden, oneBed } from '../support/small-plans.ts';
import { projectRoot } from '../tools/source-files.ts';

const published = readFileSync(join(projectRoot, JSON_SCHEMA_PATH), 'utf8');
const schema = JSON.parse(published);

/** A garden with another value at a place. */
function spoiled(path: string, value: unknown): unknown {
  const plan = structuredClone(mixedGarden());
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let part: unknown = plan;
  for (const key of keys) part = (part as Readonly<Record<string, unknown>>)[key];
  Object.assign(part as object, { [last]: value });
  return JSON.parse(JSON.stringify(plan));
}

describe('the published JSON Schema', () => {
  it('is what the schema in the source gives: else run .build/json-schema.ts', () => {
    expect(published).toBe(planJsonSchema());
  });

  it('says of itself what it is, and of every field what it means', () => {
    expect(schema).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', title: 'Runnel plan' });
    const [us] = schema.oneOf;
    expect(us.properties.season.properties.firstDay.description).toMatch(/^First day of the first week/);
    expect(schema.$defs['planting-us'].properties.extent.oneOf[0].properties.area.description).toBe(
      'Ground that the planting covers. Unit: ft².',
    );
    expect(published).not.toContain('"quantity"');
  });

  it('names the defaults that are taken', () => {
    const [us] = schema.oneOf;
    const zone = schema.$defs['zone-us'].properties;
    const planting = schema.$defs['planting-us'].properties;
    const site = schema.$defs[us.properties.site.$ref.split('/').at(-1)].properties;
    expect(site.rain.description).toContain(`Left out: ${DEFAULTS.rainMethod}.`);
    expect(planting.target.description).toContain(`Left out: ${DEFAULTS.target}, `);
    expect(zone.startsADay.description).toContain(`Left out: ${DEFAULTS.startsADay}.`);
    expect(zone.timerStepMinutes.description).toContain(`Left out: ${DEFAULTS.timerStepMinutes}.`);
  });

  it.each([
    ['one bed', oneBed()],
    ['a mixed garden', mixedGarden()],
    ['a metric garden', metricGarden()],
  ])('takes %s', (_name, plan) => {
    expect(isValid(schema, plan)).toBe(true);
  });

  it('takes every random plan', () => {
    fc.assert(
      fc.property(arbitraryPlan({ mostZones: 3, mostWeeks: 20 }), (plan) => {
        expect(isValid(schema, plan)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  it.each<[string, unknown]>([
    ['format', 'another'],
    ['version', 3],
    ['units', 'imperial'],
    ['name', ''],
    ['name', 7],
    ['colour', 'red'],
    ['season', undefined],
    ['season.weeks', 0],
    ['season.weeks', 1.5],
    ['season.firstDay', '5 April'],
    ['season.firstDay', '0227-04-05'],
    ['site.latitude', 91],
    ['site.soil', 'mud'],
    ['site.climate.rain', [1, 2, 3]],
    ['site.climate.rain.3', -1],
    ['site.climate.eto', undefined],
    ['supply.sources.0.flow.volume', 0],
    ['supply.sources.0.flow.kind', 'guessed'],
    ['supply.window.weekdays', []],
    ['supply.window.weekdays.0', 'someday'],
    ['zones', {}],
    ['zones.0.id', 'Raised beds'],
    ['zones.0.id', 'constructor'],
    ['zones.0.wateringDays', 8],
    ['zones.0.wateringDays', ['mon', 'someday']],
    ['zones.0.rule', { kind: 'planting' }],
    ['zones.0.plantings.0.extent.area', -120],
    ['zones.0.plantings.0.extent', { kind: 'area', area: 1, count: 2 }],
    ['zones.0.plantings.0.need.crop', 'gold'],
    ['zones.0.plantings.1.need.class', 'thirsty'],
    ['zones.0.plantings.1.shutOff', 'yes'],
    ['zones.0.plantings.0.lines.0.layout.rows', 0],
    ['zones.0.plantings.0.lines.0.kind', 'hose'],
    ['log.days.yesterday', { rain: 1 }],
    ['log.runs.beds.2027-05-17', -3],
    ['log.runs.beds.2027-05-17', 'all'],
    ['log.runs.beds.2027-05-17', { days: { '2027-05-18': { minutes: 1441 } } }],
    ['log.runs.beds.2027-05-17', { days: { '2027-05-18': { minutes: 1, litres: 3 } } }],
    ['log.runs.beds.2027-05-17', { minutes: 3 }],
    ['log.weeks.2027-05-03.rainThrough', 'Wednesday'],
    ['log.forecasts', [{ days: {} }]],
    ['log.forecasts', [{ issued: '2027-05-03', days: { '2027-05-03': { rain: -1 } } }]],
    ['site.climate.rainDays', [1, 2, 3]],
    ['site.climate.rainDays', Array(12).fill(32)],
    ['site.climate.rainDayThreshold', 0],
    ['site.years', { source: '', stretches: [] }],
    ['site.years', { source: '', stretches: [{ from: '2012-01-01', rain: '1.5', eto: '1' }] }],
    ['site.years', { source: '', stretches: [{ from: '2012-01-01', rain: '1  2', eto: '1 2' }] }],
    ['site.years', { source: '', stretches: [{ from: '2012-01-01', rain: '', eto: '' }] }],
    ['zones.0.startsADay', 0],
    ['zones.0.startsADay', 2.5],
    ['choices.beds.2027-07-05.minutes', 10_081],
    ['choices.beds.2027-07-05.colour', 'red'],
    ['choices.Beds', {}],
  ])('refuses what a plan’s check refuses: %s as %j', (path, value) => {
    const plan = spoiled(path, value);
    expect(checkPlan(plan).ok).toBe(false);
    expect(isValid(schema, plan)).toBe(false);
  });
});
