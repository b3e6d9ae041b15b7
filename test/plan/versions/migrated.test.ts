import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { type Migration, migrated } from '../../../src/plan/versions/migrated.ts';
import { MIGRATIONS } from '../../../src/plan/versions/migrations.ts';
import { oneBed } from '../../support/small-plans.ts';

/** Formats that never were: version -1 called the name `title`, version 0 counted the season in days. */
const FROM_MINUS_1: Migration = {
  from: -1,
  migrate: ({ title, ...document }) => ({
    document: { ...document, name: title },
    changes: [{ code: 'rain-read-through', values: { weeks: 3 } }],
  }),
};
const FROM_0: Migration = {
  from: 0,
  migrate: ({ days, ...document }) => ({
    document: {
      ...document,
      season: { firstDay: (document['season'] as { firstDay: string }).firstDay, weeks: Number(days) / 7 },
    },
    changes: [{ code: 'rain-method', values: { from: 'tr21', to: 'balance' } }],
  }),
};
const FROM_1: Migration = { from: 1, migrate: (document) => ({ document, changes: [] }) };
const PLACE = { part: 'plan', fields: ['version'] };
const FIXTURE = [FROM_0, FROM_MINUS_1, FROM_1];

const { name, season, ...rest } = oneBed();
const version0 = { ...rest, version: 0, name, season: { firstDay: season.firstDay }, days: 28 };
const versionMinus1 = { ...rest, version: -1, title: name, season: { firstDay: season.firstDay }, days: 28 };

describe('a plan of an older version', () => {
  it('is taken to this one', () => {
    const changes = [{ code: 'rain-method', values: { from: 'tr21', to: 'balance' } }];
    expect(checkPlan(version0, FIXTURE)).toEqual({ ok: true, plan: oneBed(), migration: { from: 0, changes } });
  });

  it('is taken step by step over several, and says what each has changed', () => {
    const result = readPlan(JSON.stringify(versionMinus1), FIXTURE);
    expect(result).toMatchObject({ ok: true, plan: oneBed(), migration: { from: -1 } });
    expect(result.ok && result.migration?.changes.map(({ code }) => code)).toEqual([
      'rain-read-through',
      'rain-method',
    ]);
  });

  it('that is handed on as it was read still says where it came from; a copy of it says nothing', () => {
    const read = checkPlan(version0, FIXTURE);
    if (!read.ok) throw new Error('the plan is refused');
    const again = checkPlan(read.plan);
    expect(again).toMatchObject({ ok: true, migration: { from: 0 } });
    expect(again.ok && checkPlan(again.plan)).toMatchObject({ ok: true, migration: { from: 0 } });
    expect(checkPlan(structuredClone(read.plan))).not.toHaveProperty('migration');
  });

  it('is left as it was', () => {
    const frozen = Object.freeze(structuredClone(version0));
    checkPlan(frozen, FIXTURE);
    expect(frozen).toEqual(version0);
  });

  it('is refused with its faults where it is a bad plan in the new form too', () => {
    const result = checkPlan({ ...version0, days: 7.5 }, FIXTURE);
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(['season.weeks']);
  });

  it('is refused where a step fails on it', () => {
    expect(checkPlan({ ...version0, season: null }, FIXTURE)).toEqual({
      ok: false,
      faults: [{ path: 'version', code: 'damaged-version', values: { version: 0, place: PLACE, found: 0 } }],
    });
  });

  it('is refused where no step begins at its version', () => {
    expect(checkPlan({ ...version0, version: -2 }, FIXTURE)).toMatchObject({
      ok: false,
      faults: [{ code: 'older-version', values: { oldest: 2 } }],
    });
  });
});

describe('a plan of this version', () => {
  it('passes no step', () => {
    const document = { ...oneBed() };
    expect(migrated(document, FIXTURE)).toEqual({ document, from: undefined, changes: [] });
    expect(checkPlan(document)).toEqual({ ok: true, plan: oneBed() });
  });
});

describe('a plan of a newer version', () => {
  it('is refused for that, and nothing else is found in it', () => {
    expect(checkPlan({ format: 'runnel-plan', version: 3, gardens: [] })).toEqual({
      ok: false,
      faults: [{ path: 'version', code: 'newer-version', values: { newest: 2, place: PLACE, found: 3 } }],
    });
  });
});

describe('a version that is no number', () => {
  it.each(['2', 1.5, null, undefined, Number.NaN])('%s', (version) => {
    const result = checkPlan({ ...oneBed(), version });
    expect(result.ok ? [] : result.faults).toMatchObject([
      { path: 'version', code: 'choice', values: { options: ['2'] } },
    ]);
  });
});

it('each step of this kit begins at a version of its own, before this one', () => {
  const versions = MIGRATIONS.map(({ from }) => from);
  expect(new Set(versions).size).toBe(versions.length);
  expect(versions.every((from) => Number.isInteger(from) && from >= 1)).toBe(true);
});
