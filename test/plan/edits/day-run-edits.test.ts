import { describe, expect, it } from 'vitest';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { PlanDayRun, PlanWeekRun } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const beds = zone({ plantings: [tomatoes(), shrubs()] });
const border = zone({ id: 'border', name: 'Border', plantings: [shrubs({ id: 'roses', name: 'Roses' })] });
const plan = oneBed({ zones: [beds, border] });
const week = '2027-06-14';

const ran = (day: string, run: PlanDayRun | undefined, id = 'beds'): Edit => ({
  type: 'set-day-run',
  zone: id,
  day,
  run,
});
const runsAfter = (...edits: readonly Edit[]) => edits.reduce(applyEdit, plan).log?.runs;
const logged = (run: PlanWeekRun) => ({ beds: { [week]: run } });

describe('what ran on a day', () => {
  it('stands in its week, days in their order', () => {
    expect(runsAfter(ran('2027-06-18', { minutes: 20, open: ['shrubs'] }), ran('2027-06-15', { minutes: 30 }))).toEqual(
      logged({ days: { '2027-06-15': { minutes: 30 }, '2027-06-18': { minutes: 20, open: ['shrubs'] } } }),
    );
  });

  it('is replaced whole by what is said of the day later', () => {
    expect(runsAfter(ran('2027-06-15', { minutes: 30, open: [] }), ran('2027-06-15', { minutes: 25 }))).toEqual(
      logged({ days: { '2027-06-15': { minutes: 25 } } }),
    );
  });

  it('takes the place of a total of the week, and a total that of the days', () => {
    const total: Edit = { type: 'set-minutes-run', zone: 'beds', week, minutes: 90 };
    expect(runsAfter(total, ran('2027-06-15', { minutes: 30 }))).toEqual(
      logged({ days: { '2027-06-15': { minutes: 30 } } }),
    );
    expect(runsAfter(ran('2027-06-15', { minutes: 30 }), total)).toEqual(logged(90));
  });

  it('is taken out; with the last day the record goes, and the plan is as before', () => {
    const two = [ran('2027-06-15', { minutes: 30 }), ran('2027-06-16', { minutes: 10 })];
    expect(runsAfter(...two, ran('2027-06-15', undefined))).toEqual(
      logged({ days: { '2027-06-16': { minutes: 10 } } }),
    );
    const gone = [...two, ran('2027-06-15', undefined), ran('2027-06-16', undefined)].reduce(applyEdit, plan);
    expect(gone).toEqual(plan);
    const cleared: Edit = { type: 'set-minutes-run', zone: 'beds', week, minutes: undefined };
    expect([...two, cleared].reduce(applyEdit, plan)).toEqual(plan);
  });

  it('that is not there is not taken out, and a total stays', () => {
    expect(applyEdit(plan, ran('2027-06-15', undefined))).toBe(plan);
    const total = applyEdit(plan, { type: 'set-minutes-run', zone: 'beds', week, minutes: 90 });
    expect(applyEdit(total, ran('2027-06-15', undefined))).toBe(total);
    const other = applyEdit(plan, ran('2027-06-16', { minutes: 5 }));
    expect(applyEdit(other, ran('2027-06-15', undefined))).toBe(other);
  });

  it('that is said again is the same plan', () => {
    const once = applyEdit(plan, ran('2027-06-15', { minutes: 30, open: ['shrubs'] }));
    expect(applyEdit(once, ran('2027-06-15', { minutes: 30, open: ['shrubs'] }))).toBe(once);
  });

  it('joins a record under another day of the week', () => {
    const log = { runs: { beds: { '2027-06-20': { days: { '2027-06-20': { minutes: 5 } } } } } };
    expect(applyEdit({ ...plan, log }, ran('2027-06-14', { minutes: 6 })).log?.runs).toEqual(
      logged({ days: { '2027-06-14': { minutes: 6 }, '2027-06-20': { minutes: 5 } } }),
    );
  });

  it.each<[string, Edit, string]>([
    [
      'more minutes than a day has',
      ran('2027-06-15', { minutes: 1441 }),
      `log.runs.beds.${week}.days.2027-06-15.minutes range`,
    ],
    ['less than none', ran('2027-06-15', { minutes: -1 }), `log.runs.beds.${week}.days.2027-06-15.minutes range`],
    [
      'a shut-off of another zone',
      ran('2027-06-15', { minutes: 1, open: ['roses'] }),
      `log.runs.beds.${week}.days.2027-06-15.open.0 planting-unknown`,
    ],
    ['a zone that is not there', ran('2027-06-15', { minutes: 1 }, 'cellar'), 'log.runs.cellar zone-unknown'],
    ['a day outside the season', ran('2028-06-15', { minutes: 1 }), 'log.runs.beds.2028-06-15 outside-season'],
    ['a day that is none', ran('June', { minutes: 1 }), 'log.runs.beds.June day'],
  ])('is refused: %s', (_name, edit, fault) => {
    const result = tryEdit(plan, edit);
    expect(result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`)).toContain(fault);
  });
});

describe('a planting whose shut-off was logged', () => {
  const open: readonly Edit[] = [
    ran('2027-06-15', { minutes: 30, open: ['shrubs', 'tomatoes'] }),
    ran('2027-06-16', { minutes: 30 }),
    ran('2027-06-15', { minutes: 12, open: ['roses'] }, 'border'),
    ran('2027-06-17', { minutes: 13, open: ['roses'] }, 'border'),
  ];
  const before = open.reduce(applyEdit, plan);

  it('goes out of the log with its planting', () => {
    const after = applyEdit(before, { type: 'remove-planting', zone: 'beds', planting: 'shrubs' });
    expect(after.log?.runs?.['beds']).toEqual({
      [week]: { days: { '2027-06-15': { minutes: 30, open: ['tomatoes'] }, '2027-06-16': { minutes: 30 } } },
    });
    expect(after.log?.runs?.['border']).toBe(before.log?.runs?.['border']);
  });

  it('that moves to another zone was open there on the same days', () => {
    const after = applyEdit(before, { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'border' });
    expect(after.log?.runs?.['border']).toEqual({
      [week]: {
        days: {
          '2027-06-15': { minutes: 12, open: ['roses', 'shrubs'] },
          '2027-06-17': { minutes: 13, open: ['roses'] },
        },
      },
    });
  });
});

describe('another season', () => {
  const moveTo =
    (firstDay: string, weeks = 5) =>
    (log: object) =>
      applyEdit({ ...plan, log }, { type: 'set-season', season: { firstDay, weeks } }).log;

  it('leaves what ran on its day, in the week that now holds it', () => {
    const log = {
      runs: { beds: { [week]: { days: { '2027-06-15': { minutes: 1 }, '2027-06-17': { minutes: 2, open: [] } } } } },
    };
    expect(moveTo('2027-06-09')(log)).toEqual({
      runs: {
        beds: {
          '2027-06-09': { days: { '2027-06-15': { minutes: 1 } } },
          '2027-06-16': { days: { '2027-06-17': { minutes: 2, open: [] } } },
        },
      },
    });
    expect(moveTo('2027-06-07', 6)(log)).toEqual(log);
  });

  it('adds days to a total that comes into their week', () => {
    const runs = {
      beds: { '2027-06-07': 90, [week]: { days: { '2027-06-14': { minutes: 5 }, '2027-06-17': { minutes: 2 } } } },
    };
    expect(moveTo('2027-06-08')({ runs })).toEqual({
      runs: { beds: { '2027-06-08': 95, '2027-06-15': { days: { '2027-06-17': { minutes: 2 } } } } },
    });
  });

  it('takes out what ran outside it', () => {
    const runs = { beds: { [week]: { days: { '2027-06-15': { minutes: 1 }, '2027-06-17': { minutes: 2 } } } } };
    expect(moveTo('2027-06-16')({ runs })).toEqual({
      runs: { beds: { '2027-06-16': { days: { '2027-06-17': { minutes: 2 } } } } },
    });
  });

  it('leaves the day that a total was read through, where it can', () => {
    const weeks = { [week]: { rain: 1, rainThrough: '2027-06-16' } };
    expect(moveTo('2027-06-08')({ weeks })).toEqual({
      weeks: { '2027-06-15': { rain: 1, rainThrough: '2027-06-16' } },
    });
    expect(moveTo('2027-06-10')({ weeks })).toEqual({
      weeks: { '2027-06-17': { rain: 1, rainThrough: '2027-06-17' } },
    });
  });
});
