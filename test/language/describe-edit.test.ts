import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeEdit } from '../../src/language/describe-edit.ts';
import { readerFor } from '../../src/language/reader.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../src/plan/edits/edit.ts';
import { arbitraryEdit } from '../support/arbitrary-edit.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { mixedGarden, shrubs, zone } from '../support/small-plans.ts';

const cell = { zone: 'beds', week: '2027-07-07' } as const;
const at = { zone: 'beds', planting: 'shrubs' } as const;
const dripline = { kind: 'dripline', flow: 0.6, spacing: 12, layout: { kind: 'length', length: 40 } } as const;
const climate = mixedGarden().site.climate;

const said = (edit: Edit, locale = 'en-US') =>
  describeEdit(mixedGarden(), edit, readerFor(locale, 'us')).replaceAll('\u00a0', ' ');

it.each(['__proto__', 'constructor', 'toString', 'no such thing'])('an action %s says what was changed', (action) => {
  const edits: Edit[] = [{ type: 'set-minutes', ...cell, minutes: 45 }];
  expect(said({ type: 'together', action, edits } as unknown as Edit)).toBe(said({ type: 'together', edits }));
});

describe('an edit in words', () => {
  it.each<[Edit, string]>([
    [{ type: 'set-minutes', ...cell, minutes: 45 }, 'Beds, week of July 5: 45 min set by hand'],
    [{ type: 'set-minutes', ...cell, minutes: 1 }, 'Beds, week of July 5: 1 min set by hand'],
    [{ type: 'set-minutes', ...cell, minutes: undefined }, 'Beds, week of July 5: computed minutes'],
    [{ type: 'set-minutes-run', ...cell, minutes: 90 }, 'Beds, week of July 5: 90 min run'],
    [{ type: 'set-minutes-run', ...cell, minutes: undefined }, 'Beds, week of July 5: minutes run taken out'],
    // The log of the garden has 90 minutes of the week of May 17.
    [
      { type: 'set-day-run', zone: 'beds', day: '2027-07-07', run: { minutes: 30, open: ['shrubs', 'tomatoes'] } },
      'Beds, July 7: 30 min run, Shrubs and Tomatoes open',
    ],
    [
      { type: 'set-day-run', zone: 'beds', day: '2027-07-07', run: { minutes: 30, open: [] } },
      'Beds, July 7: 30 min run, every shut-off shut',
    ],
    [
      { type: 'set-day-run', zone: 'beds', day: '2027-05-18', run: { minutes: 30 } },
      'Beds, May 18: 30 min run, instead of 90 min in the week',
    ],
    [{ type: 'set-day-run', zone: 'beds', day: '2027-07-07', run: undefined }, 'Beds, July 7: run taken out'],
    [{ type: 'close-week', ...cell, closed: true }, 'Beds, week of July 5: closed'],
    [{ type: 'close-week', ...cell, closed: false }, 'Beds, week of July 5: open again'],
    [{ type: 'set-open-days', ...cell, planting: 'shrubs', days: 1 }, 'Beds, week of July 5: Shrubs open on 1 day'],
    [
      { type: 'set-open-days', ...cell, planting: 'shrubs', days: undefined },
      'Beds, week of July 5: Shrubs open on computed days',
    ],
    [{ type: 'set-note', ...cell, note: 'Heat' }, 'Beds, week of July 5: note “Heat”'],
    [{ type: 'set-note', ...cell, note: undefined }, 'Beds, week of July 5: note taken out'],
    [
      { type: 'set-choice', ...cell, choice: { minutes: 3, closed: true, note: 'x' } },
      'Beds, week of July 5: closed, 3 min set by hand, and a note',
    ],
    [{ type: 'set-choice', ...cell, choice: undefined }, 'Beds, week of July 5: all computed'],
    [
      { type: 'set-minutes', zone: 'cellar', week: '2029-01-01', minutes: 3 },
      'cellar, week of January 1: 3 min set by hand',
    ],
    [{ type: 'set-week-rain', week: '2027-07-07', rain: 0.4 }, 'Rain, week of July 5: 0.40 in'],
    [{ type: 'set-week-rain', week: '2027-07-07', rain: undefined }, 'Rain, week of July 5: as normal'],
    [
      { type: 'set-week-rain', week: '2027-07-07', rain: 0.4, through: '2027-07-08' },
      'Rain, week of July 5: 0.40 in, read through July 8',
    ],
    [
      { type: 'set-forecast', issued: '2027-07-07', days: { '2027-07-07': { rain: 0.1 }, '2027-07-08': {} } },
      'Forecast of July 7: 2 days',
    ],
    [{ type: 'set-forecast', issued: '2027-07-07', days: undefined }, 'Forecast of July 7: taken out'],
    [{ type: 'set-week-eto', week: '2027-07-07', eto: 1.2 }, 'Reference ET, week of July 5: 1.20 in'],
    [
      { type: 'set-day-weather', day: '2027-07-07', weather: { rain: 0.4, eto: 0.2 } },
      'Weather of July 7: rain 0.40 in',
    ],
    [
      { type: 'set-day-weather', day: '2027-07-07', weather: { minTemperature: 50, maxTemperature: 80 } },
      'Weather of July 7: lowest temperature and highest temperature',
    ],
    [{ type: 'set-day-weather', day: '2027-07-07', weather: undefined }, 'Weather of July 7: taken out'],
    [{ type: 'set-climate', climate }, 'Climate changed'],
    [{ type: 'set-departure', from: '2027-07-05', weeks: 1, eto: 1.3 }, '1 week from July 5: ETo 130% of usual'],
    [{ type: 'set-departure', from: '2027-07-05', weeks: 4 }, '4 weeks from July 5: weather as usual'],
    [{ type: 'rename-plan', name: 'Allotment' }, 'Plan renamed “Allotment”'],
    [{ type: 'set-plan-notes', notes: undefined }, 'Notes of the plan changed'],
    [{ type: 'set-assumed', assumed: ['soil'] }, 'What is assumed in the plan changed'],
    [
      { type: 'set-what-if', name: 'Two loops', edits: [{ type: 'change-zone', zone: 'beds', change: {} }] },
      'What-if “Two loops” kept beside the plan',
    ],
    [{ type: 'set-what-if', name: 'Two loops', edits: undefined }, 'What-if “Two loops” taken out'],
    [{ type: 'set-season', season: { firstDay: '2027-04-05', weeks: 31 } }, 'Season: from April 5, 2027, 31 weeks'],
    [
      { type: 'set-season', season: { firstDay: '2027-07-12', weeks: 1 } },
      'Season: from July 12, 2027, 1 week; 3 entries outside it taken out',
    ],
    [
      { type: 'set-season', season: { firstDay: '2027-05-17', weeks: 11 } },
      'Season: from May 17, 2027, 11 weeks; 1 entry outside it taken out',
    ],
    [{ type: 'change-site', change: { slopePercent: 3, soil: 'clay' } }, 'Site changed: slope and soil'],
    [
      { type: 'change-supply', change: { tank: undefined, window: undefined, sources: [] } },
      'Supply changed: tank, watering window, and sources',
    ],
    [{ type: 'convert-units', units: 'metric' }, 'Units changed to metric'],
    [{ type: 'convert-units', units: 'us' }, 'Units changed to US'],
    [{ type: 'add-zone', zone: zone({ name: 'Orchard' }) }, 'Orchard added'],
    [{ type: 'change-zone', zone: 'beds', change: { name: 'Raised beds' } }, 'Beds: renamed “Raised beds”'],
    [
      { type: 'change-zone', zone: 'beds', change: { wateringDays: 2, soil: 'clay' } },
      'Beds: watering days and soil changed',
    ],
    [{ type: 'remove-zone', zone: 'beds' }, 'Zone Beds removed'],
    [{ type: 'move-zone', zone: 'beds', to: 1 }, 'Zone Beds moved'],
    [{ type: 'add-planting', zone: 'beds', planting: shrubs({ name: 'Roses' }) }, 'Beds: Roses added'],
    [{ type: 'change-planting', ...at, change: { rootDepth: 20 } }, 'Beds, Shrubs: root depth changed'],
    [{ type: 'remove-planting', ...at }, 'Beds: Shrubs removed'],
    [{ type: 'move-planting', ...at, toZone: 'beds', at: 0 }, 'Beds: Shrubs moved'],
    [{ type: 'move-planting', ...at, toZone: 'containers' }, 'Shrubs moved from Beds to Containers'],
    [{ type: 'add-line', ...at, line: { kind: 'solid' } }, 'Beds, Shrubs: line added, solid line'],
    [{ type: 'replace-line', ...at, index: 0, line: { kind: 'solid' } }, 'Beds, Shrubs: line changed, solid line'],
    [
      { type: 'replace-line', ...at, index: 0, line: dripline },
      'Beds, Shrubs: line changed, dripline with 0.6 gph emitters every 12 in',
    ],
    [
      { type: 'add-line', ...at, line: { kind: 'point', flow: 1, count: 2 } },
      'Beds, Shrubs: line added, 2 point emitters (1 gph)',
    ],
    [
      { type: 'add-line', ...at, line: { kind: 'spray', flow: 12, count: 1 } },
      'Beds, Shrubs: line added, 1 micro-spray (12 gph)',
    ],
    [{ type: 'remove-line', ...at, index: 0 }, 'Beds, Shrubs: line removed'],
    [{ type: 'together', edits: [] }, 'Nothing changed'],
  ])('%#', (edit, words) => {
    expect(said(edit)).toBe(words);
  });
});

describe('several edits as one step', () => {
  const close = (zone: string, week: string): Edit => ({ type: 'close-week', zone, week, closed: true });

  it.each<[Edit, string]>([
    [
      { type: 'together', action: 'paste-cells', edits: [close('beds', '2027-07-05'), close('beds', '2027-07-12')] },
      'Paste 2 cells',
    ],
    [
      {
        type: 'together',
        action: 'close-weeks',
        edits: [close('beds', '2027-07-05'), close('containers', '2027-07-05')],
      },
      'Beds and Containers: close 2 weeks',
    ],
    [
      {
        type: 'together',
        action: 'split-zone',
        edits: [
          { type: 'add-zone', zone: zone({ id: 'beds-2', name: 'Beds 2', plantings: [] }) },
          { type: 'move-planting', ...at, toZone: 'beds-2' },
        ],
      },
      'Shrubs to Beds 2',
    ],
    [
      {
        type: 'together',
        edits: [
          { type: 'remove-planting', ...at },
          { type: 'move-zone', zone: 'beds', to: 1 },
        ],
      },
      'Beds: Shrubs removed; Zone Beds moved',
    ],
    [
      {
        type: 'together',
        edits: [close('beds', '2027-07-05'), close('beds', '2027-07-12'), close('beds', '2027-07-19')],
      },
      'Beds, week of July 5: closed, and 2 more changes',
    ],
  ])('%#', (edit, words) => {
    expect(said(edit)).toBe(words);
  });
});

it('any edit has a description of one short line', () => {
  fc.assert(
    fc.property(arbitraryPlan({ mostZones: 3, mostPlantings: 3, mostWeeks: 20 }), arbitraryEdit, (plan, make) => {
      const words = describeEdit(plan, make(plan), readerFor('en-US', 'us'));
      expect(words).not.toMatch(/undefined|null|\[object|\n/);
      expect(words.length).toBeGreaterThan(3);
      expect(words.length).toBeLessThan(240);
    }),
    { numRuns: 300 },
  );
});

it('a day stands as the reader’s locale writes it', () => {
  const edit: Edit = { type: 'set-season', season: { firstDay: '2027-04-05', weeks: 31 } };
  expect(said(edit, 'en-GB')).toBe('Season: from 5 April 2027, 31 weeks');
});

it('a total of a week says that it takes the place of runs by day', () => {
  const run: Edit = { type: 'set-day-run', zone: 'beds', day: '2027-07-07', run: { minutes: 30 } };
  const plan = applyEdit(mixedGarden(), run);
  const say = (minutes: number | undefined) =>
    describeEdit(plan, { type: 'set-minutes-run', ...cell, minutes }, readerFor('en-US', 'us')).replaceAll(
      '\u00a0',
      ' ',
    );
  expect(say(45)).toBe('Beds, week of July 5: 45 min run, instead of runs by day');
  expect(say(undefined)).toBe('Beds, week of July 5: runs by day taken out');
});
