import { describe, expect, it } from 'vitest';
import { describeEdit } from '../../../src/plan/edits/describe-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { mixedGarden, shrubs, zone } from '../../support/small-plans.ts';

const cell = { zone: 'beds', week: '2027-07-07' } as const;
const at = { zone: 'beds', planting: 'shrubs' } as const;
const climate = mixedGarden().site.climate;

describe('an edit in words', () => {
  it.each<[Edit, string]>([
    [{ type: 'set-minutes', ...cell, minutes: 45 }, 'Beds, week of 5 July: 45 minutes by hand'],
    [{ type: 'set-minutes', ...cell, minutes: 1 }, 'Beds, week of 5 July: 1 minute by hand'],
    [{ type: 'set-minutes', ...cell, minutes: undefined }, 'Beds, week of 5 July: minutes as calculated'],
    [{ type: 'set-minutes-run', ...cell, minutes: 90 }, 'Beds, week of 5 July: 90 minutes run'],
    [{ type: 'set-minutes-run', ...cell, minutes: undefined }, 'Beds, week of 5 July: minutes run taken out'],
    [{ type: 'close-week', ...cell, closed: true }, 'Beds, week of 5 July: closed'],
    [{ type: 'close-week', ...cell, closed: false }, 'Beds, week of 5 July: open again'],
    [{ type: 'set-open-days', ...cell, planting: 'shrubs', days: 1 }, 'Beds, week of 5 July: Shrubs open on 1 day'],
    [
      { type: 'set-open-days', ...cell, planting: 'shrubs', days: undefined },
      'Beds, week of 5 July: Shrubs open as calculated',
    ],
    [{ type: 'set-note', ...cell, note: 'Heat' }, 'Beds, week of 5 July: note “Heat”'],
    [{ type: 'set-note', ...cell, note: undefined }, 'Beds, week of 5 July: note taken out'],
    [
      { type: 'set-choice', ...cell, choice: { minutes: 3, closed: true, note: 'x' } },
      'Beds, week of 5 July: closed, 3 minutes by hand and a note',
    ],
    [{ type: 'set-choice', ...cell, choice: undefined }, 'Beds, week of 5 July: all as calculated'],
    [
      { type: 'set-minutes', zone: 'cellar', week: '2029-01-01', minutes: 3 },
      'cellar, week of 1 January: 3 minutes by hand',
    ],
    [{ type: 'set-week-rain', week: '2027-07-07', rain: 0.4 }, 'Rain, week of 5 July: 0.4 in'],
    [{ type: 'set-week-rain', week: '2027-07-07', rain: undefined }, 'Rain, week of 5 July: as normal'],
    [{ type: 'set-week-eto', week: '2027-07-07', eto: 1.2 }, 'Reference ET, week of 5 July: 1.2 in'],
    [
      { type: 'set-day-weather', day: '2027-07-07', weather: { rain: 0.4, eto: 0.2 } },
      'Weather of 7 July: rain 0.4 in',
    ],
    [
      { type: 'set-day-weather', day: '2027-07-07', weather: { minTemperature: 50, maxTemperature: 80 } },
      'Weather of 7 July: lowest temperature and highest temperature',
    ],
    [{ type: 'set-day-weather', day: '2027-07-07', weather: undefined }, 'Weather of 7 July: taken out'],
    [{ type: 'set-climate', climate }, 'Climate changed'],
    [{ type: 'rename-plan', name: 'Allotment' }, 'Plan renamed “Allotment”'],
    [{ type: 'set-plan-notes', notes: undefined }, 'Notes of the plan changed'],
    [{ type: 'set-season', season: { firstDay: '2027-04-05', weeks: 31 } }, 'Season: from 5 April 2027, 31 weeks'],
    [
      { type: 'set-season', season: { firstDay: '2027-07-12', weeks: 1 } },
      'Season: from 12 July 2027, 1 week; 3 entries outside it taken out',
    ],
    [
      { type: 'set-season', season: { firstDay: '2027-05-17', weeks: 11 } },
      'Season: from 17 May 2027, 11 weeks; 1 entry outside it taken out',
    ],
    [{ type: 'change-site', change: { slopePercent: 3, soil: 'clay' } }, 'Site changed: slope and soil'],
    [
      { type: 'change-supply', change: { tank: undefined, window: undefined, sources: [] } },
      'Supply changed: tank, window and sources',
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
    [{ type: 'add-line', ...at, line: { kind: 'solid' } }, 'Beds, Shrubs: line added'],
    [{ type: 'replace-line', ...at, index: 0, line: { kind: 'solid' } }, 'Beds, Shrubs: line changed'],
    [{ type: 'remove-line', ...at, index: 0 }, 'Beds, Shrubs: line removed'],
    [{ type: 'together', label: 'Two zones out of one', edits: [] }, 'Two zones out of one'],
  ])('%#', (edit, words) => {
    expect(describeEdit(mixedGarden(), edit)).toBe(words);
  });
});
