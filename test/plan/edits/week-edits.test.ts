import { describe, expect, it } from 'vitest';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';

const bed = oneBed();
const week = '2027-06-14';

/** The choices that a row of edits comes to. */
const choicesAfter = (...edits: readonly Edit[]) => edits.reduce(applyEdit, bed).choices;

describe('an edit of a week', () => {
  it.each<[string, Edit, unknown]>([
    ['minutes by hand', { type: 'set-minutes', zone: 'beds', week, minutes: 45 }, { minutes: 45 }],
    ['no minutes at all', { type: 'set-minutes', zone: 'beds', week, minutes: 0 }, { minutes: 0 }],
    ['closed', { type: 'close-week', zone: 'beds', week, closed: true }, { closed: true }],
    [
      'open days',
      { type: 'set-open-days', zone: 'beds', planting: 'tomatoes', week, days: 2 },
      { openDays: { tomatoes: 2 } },
    ],
    ['a note', { type: 'set-note', zone: 'beds', week, note: 'Heat is coming.' }, { note: 'Heat is coming.' }],
    [
      'a whole choice',
      { type: 'set-choice', zone: 'beds', week, choice: { minutes: 3, note: 'x' } },
      { minutes: 3, note: 'x' },
    ],
  ])('writes %s under the first day of the week', (_name, edit, choice) => {
    expect(choicesAfter(edit)).toEqual({ beds: { [week]: choice } });
    expect(choicesAfter({ ...edit, week: '2027-06-20' } as Edit)).toEqual({ beds: { [week]: choice } });
  });

  it('leaves the other choices of the week alone', () => {
    expect(
      choicesAfter(
        { type: 'set-minutes', zone: 'beds', week, minutes: 45 },
        { type: 'set-note', zone: 'beds', week, note: 'x' },
        { type: 'set-minutes', zone: 'beds', week, minutes: 50 },
      ),
    ).toEqual({ beds: { [week]: { minutes: 50, note: 'x' } } });
  });

  it.each<[string, Edit, Edit]>([
    [
      'minutes',
      { type: 'set-minutes', zone: 'beds', week, minutes: 45 },
      { type: 'set-minutes', zone: 'beds', week, minutes: undefined },
    ],
    [
      'minutes run',
      { type: 'set-minutes-run', zone: 'beds', week, minutes: 45 },
      { type: 'set-minutes-run', zone: 'beds', week, minutes: undefined },
    ],
    [
      'a closed week',
      { type: 'close-week', zone: 'beds', week, closed: true },
      { type: 'close-week', zone: 'beds', week, closed: false },
    ],
    [
      'open days',
      { type: 'set-open-days', zone: 'beds', planting: 'tomatoes', week, days: 2 },
      { type: 'set-open-days', zone: 'beds', planting: 'tomatoes', week, days: undefined },
    ],
    ['a note', { type: 'set-note', zone: 'beds', week, note: 'x' }, { type: 'set-note', zone: 'beds', week, note: '' }],
    [
      'a choice',
      { type: 'set-choice', zone: 'beds', week, choice: { minutes: 1 } },
      { type: 'set-choice', zone: 'beds', week, choice: undefined },
    ],
  ])('gives %s back, and the plan is as before', (_name, set, clear) => {
    expect(applyEdit(applyEdit(bed, set), clear)).toEqual(bed);
    expect(applyEdit(bed, clear)).toBe(bed);
  });

  it('takes in what stands under another day of the week', () => {
    const plan = oneBed({
      choices: { beds: { '2027-06-16': { minutes: 45, note: 'x' } } },
      log: { runs: { beds: { '2027-06-16': 30 } } },
    });
    expect(applyEdit(plan, { type: 'set-minutes', zone: 'beds', week: '2027-06-18', minutes: 50 }).choices).toEqual({
      beds: { [week]: { minutes: 50, note: 'x' } },
    });
    expect(applyEdit(plan, { type: 'set-minutes-run', zone: 'beds', week, minutes: 40 }).log).toEqual({
      runs: { beds: { [week]: 40 } },
    });
    expect(applyEdit(plan, { type: 'set-minutes', zone: 'beds', week, minutes: 45 })).toBe(plan);
  });

  it('writes minutes run into the log', () => {
    expect(applyEdit(bed, { type: 'set-minutes-run', zone: 'beds', week, minutes: 90 }).log).toEqual({
      runs: { beds: { [week]: 90 } },
    });
  });
});

describe('an edit of a week that cannot be', () => {
  const faults = (edit: Edit, plan = mixedGarden()) => {
    const result = tryEdit(plan, edit);
    return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
  };

  it.each<[string, Edit, string]>([
    [
      'less than no minutes',
      { type: 'set-minutes', zone: 'beds', week: '2027-08-02', minutes: -5 },
      'choices.beds.2027-08-02.minutes range',
    ],
    [
      'more minutes than a week has',
      { type: 'set-minutes-run', zone: 'beds', week: '2027-08-02', minutes: 10_081 },
      'log.runs.beds.2027-08-02 range',
    ],
    [
      'a week outside the season',
      { type: 'set-minutes', zone: 'beds', week: '2028-01-03', minutes: 5 },
      'choices.beds.2028-01-03 outside-season',
    ],
    [
      'a week of another age',
      { type: 'set-minutes', zone: 'beds', week: '0001-01-01', minutes: 5 },
      'choices.beds.0001-01-01 day',
    ],
    ['a week that is no day', { type: 'set-minutes', zone: 'beds', week: 'July', minutes: 5 }, 'choices.beds.July day'],
    [
      'a zone that is not there',
      { type: 'set-minutes', zone: 'cellar', week: '2027-08-02', minutes: 5 },
      'choices.cellar zone-unknown',
    ],
    [
      'a planting of another zone',
      { type: 'set-open-days', zone: 'beds', planting: 'pots', week: '2027-08-02', days: 2 },
      'choices.beds.2027-08-02.openDays.pots planting-unknown',
    ],
    [
      'more open days than a week has',
      { type: 'set-open-days', zone: 'beds', planting: 'shrubs', week: '2027-08-02', days: 8 },
      'choices.beds.2027-08-02.openDays.shrubs range',
    ],
    [
      'a note without end',
      { type: 'set-note', zone: 'beds', week: '2027-08-02', note: 'x'.repeat(10_001) },
      'choices.beds.2027-08-02.note text',
    ],
  ])('%s', (_name, edit, fault) => {
    expect(faults(edit)).toEqual([fault]);
  });
});

describe('a name that JavaScript keeps for itself', () => {
  const own = JSON.parse('{ "__proto__": 1 }');

  it.each<[string, Edit, string]>([
    ['as a week', { type: 'set-note', zone: 'beds', week: '__proto__', note: 'x' }, 'choices.beds.__proto__'],
    [
      'as the week of a run',
      { type: 'set-minutes-run', zone: 'beds', week: '__proto__', minutes: 5 },
      'log.runs.beds.__proto__',
    ],
    ['as a zone', { type: 'set-minutes', zone: '__proto__', week, minutes: 5 }, 'choices.__proto__'],
    [
      'as a planting',
      { type: 'set-open-days', zone: 'beds', planting: '__proto__', week, days: 2 },
      `choices.beds.${week}.openDays.__proto__`,
    ],
    ['as a day', { type: 'set-day-weather', day: '__proto__', weather: { rain: 1 } }, 'log.days.__proto__'],
    ['as a week of rain', { type: 'set-week-rain', week: '__proto__', rain: 1 }, 'log.weeks.__proto__'],
    ['as a field of a zone', { type: 'change-zone', zone: 'beds', change: own }, 'zones.0.__proto__'],
    [
      'as a field of a planting',
      { type: 'change-planting', zone: 'beds', planting: 'tomatoes', change: own },
      'zones.0.plantings.0.__proto__',
    ],
    [
      'beside other units',
      {
        type: 'together',
        edits: [
          { type: 'set-note', zone: 'beds', week: '__proto__', note: 'x' },
          { type: 'convert-units', units: 'metric' },
        ],
      },
      'choices.beds.__proto__',
    ],
  ])('is refused %s with a fault of its own', (_what, edit, path) => {
    const result = tryEdit(bed, edit);
    expect(result.ok ? [] : result.faults).toMatchObject([{ path, code: 'reserved-name' }]);
  });
});
