import { describe, expect, it } from 'vitest';
import { addDays } from '../../../src/engine/calendar.ts';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';

describe('an edit of the plan as a whole', () => {
  it('names it, and notes it', () => {
    const plan = applyEdit(oneBed(), { type: 'rename-plan', name: 'Allotment' });
    expect(plan.name).toBe('Allotment');
    const noted = applyEdit(plan, { type: 'set-plan-notes', notes: 'By the river.' });
    expect(noted.notes).toBe('By the river.');
    expect(applyEdit(noted, { type: 'set-plan-notes', notes: undefined })).toEqual(plan);
    expect(applyEdit(noted, { type: 'set-plan-notes', notes: '' })).toEqual(plan);
  });

  it('changes named fields of the site; one that is undefined goes back to its default', () => {
    const sloped = applyEdit(oneBed(), { type: 'change-site', change: { slopePercent: 5, soil: 'clay' } });
    expect(sloped.site).toEqual({ ...oneBed().site, slopePercent: 5, soil: 'clay' });
    expect(applyEdit(sloped, { type: 'change-site', change: { slopePercent: undefined } }).site).not.toHaveProperty(
      'slopePercent',
    );
  });

  it('begins a supply where there was none', () => {
    const plan = applyEdit(oneBed(), { type: 'change-supply', change: { window: { hoursPerDay: 3 } } });
    expect(plan.supply).toEqual({ sources: [], window: { hoursPerDay: 3 } });
    expect(applyEdit(oneBed(), { type: 'change-supply', change: { window: undefined } })).not.toHaveProperty('supply');
  });

  it('refuses a name that is empty, and a site that cannot be', () => {
    expect(tryEdit(oneBed(), { type: 'rename-plan', name: '' }).ok).toBe(false);
    expect(tryEdit(oneBed(), { type: 'change-site', change: { latitude: 91 } })).toMatchObject({
      faults: [{ path: 'site.latitude', code: 'range', values: { least: -90, most: 90, unit: 'degrees', found: 91 } }],
    });
  });
});

describe('another season', () => {
  const plan = mixedGarden();

  it('that is longer changes nothing else', () => {
    const season = { firstDay: '2027-04-05', weeks: 40 };
    expect(applyEdit(plan, { type: 'set-season', season })).toEqual({ ...plan, season });
  });

  it('that begins on another weekday takes records into the week that holds most days of theirs', () => {
    const moved = applyEdit(plan, { type: 'set-season', season: { firstDay: '2027-04-01', weeks: 31 } });
    // Weeks now begin on Thursdays: of 5 to 11 July four days lie in the week of 8 July.
    expect(moved.choices).toEqual({
      beds: { '2027-07-08': { minutes: 120 }, '2027-07-15': { openDays: { shrubs: 1 }, note: 'Heat is coming.' } },
      containers: { '2027-08-05': { closed: true } },
    });
    expect(moved.log?.runs).toEqual({ beds: { '2027-05-20': 90 } });
    expect(moved.log?.weeks).toEqual({ '2027-05-06': { rain: 0.3 } });
    expect(moved.log?.days).toBe(plan.log?.days);
  });

  it.each([-3, -2, -1, 1, 2, 3])('moved by %i days and back has every record where it was', (days) => {
    const edges = { beds: { '2027-04-05': { minutes: 1 }, '2027-10-25': { minutes: 2 } } };
    const full = { ...plan, choices: { ...plan.choices, ...edges } };
    const there = applyEdit(full, {
      type: 'set-season',
      season: { ...plan.season, firstDay: addDays(plan.season.firstDay, days) },
    });
    const back = applyEdit(there, { type: 'set-season', season: plan.season });
    expect(back.choices).toEqual(full.choices);
    expect(back.log).toEqual(full.log);
  });

  it('that is shorter takes out choices and runs outside it, and keeps what was observed', () => {
    const short = applyEdit(plan, { type: 'set-season', season: { firstDay: '2027-07-12', weeks: 3 } });
    expect(short.choices).toEqual({ beds: { '2027-07-12': { openDays: { shrubs: 1 }, note: 'Heat is coming.' } } });
    expect(short.log).toEqual({ days: plan.log?.days, weeks: plan.log?.weeks });
  });

  it('never puts two records into one week', () => {
    const choices = { beds: { '2027-06-13': { minutes: 1 }, '2027-06-14': { minutes: 2 } } };
    const crowded = oneBed({ choices });
    for (let shift = 1; shift < 7; shift++) {
      const season = { firstDay: `2027-06-0${7 - shift}`, weeks: 6 };
      const moved = applyEdit(crowded, { type: 'set-season', season });
      expect(Object.values(moved.choices?.['beds'] ?? {})).toEqual([{ minutes: 1 }, { minutes: 2 }]);
    }
  });

  it('that cannot be is refused', () => {
    expect(tryEdit(plan, { type: 'set-season', season: { firstDay: '2027-04-05', weeks: 0 } }).ok).toBe(false);
    expect(tryEdit(plan, { type: 'set-season', season: { firstDay: 'spring', weeks: 9 } }).ok).toBe(false);
    expect(tryEdit(plan, { type: 'set-season', season: { firstDay: '2027-04-05', weeks: 105 } }).ok).toBe(false);
  });
});
