import { describe, expect, it } from 'vitest';
import { PlanStorage } from '../../src/autosave/plan-storage.ts';
import {
  contains,
  newerOf,
  readSavedPlan,
  type SavedPlan,
  type SavedPlanReading,
  seenIn,
  writeSavedPlan,
} from '../../src/autosave/saved-plan.ts';
import { SavedPlans } from '../../src/autosave/saved-plans.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';
import { FakeStorage } from './fake-storage.ts';

const savedPlan = (change: Partial<SavedPlan> = {}): SavedPlan => ({
  writer: 'one',
  revision: 3,
  seen: { two: 2 },
  base: 'garden.runnel.json',
  saved: '2027-06-07T08:00:00.000Z',
  plan: oneBed(),
  ...change,
});
const changed = (change: Readonly<Record<string, unknown>>) =>
  JSON.stringify({ ...JSON.parse(writeSavedPlan(savedPlan())), ...change });
const why = (reading: SavedPlanReading) => (reading.ok ? 'read' : reading.damage.code);

describe('what is saved of a plan', () => {
  it('is read as it was written', () => {
    expect(readSavedPlan(writeSavedPlan(savedPlan()))).toEqual({ ok: true, saved: savedPlan() });
    const { base: _, ...baseless } = savedPlan();
    expect(readSavedPlan(writeSavedPlan(baseless))).toEqual({ ok: true, saved: baseless });
  });

  it.each([
    ['nothing', '', 'unreadable'],
    ['half of it', writeSavedPlan(savedPlan()).slice(0, 300), 'unreadable'],
    ['a list', '[1]', 'unreadable'],
    ['another format', changed({ format: 'other' }), 'no-heading'],
    ['no instant', changed({ saved: 'yesterday' }), 'no-heading'],
    ['no revision', changed({ revision: '3' }), 'no-heading'],
    ['a newer edition', changed({ version: 2 }), 'newer'],
    ['a newer plan', changed({ plan: { ...oneBed(), version: 99 } }), 'plan'],
    ['a plan with a fault', changed({ plan: { ...oneBed(), zones: [{}] } }), 'plan'],
    ['no plan', changed({ plan: undefined }), 'plan'],
  ])('is refused, with why: %s', (_, text, code) => {
    const reading = readSavedPlan(text);
    expect(why(reading)).toBe(code);
  });

  it('counts only numbers as revisions, and names none that JavaScript keeps for itself', () => {
    const reading = readSavedPlan(writeSavedPlan(savedPlan()).replace('"two":2', '"two":2,"three":"x","__proto__":7'));
    expect(reading.ok && Object.keys(reading.saved.seen)).toEqual(['two', '__proto__']);
    expect(({} as Record<string, unknown>)['two']).toBeUndefined();
  });

  it.each([2 ** 53 - 1, 2 ** 53, 2 ** 60])('is read at revision %d, and saved again after it', (revision) => {
    const storage = new FakeStorage();
    storage.setItem('runnel:beds', changed({ revision }));
    const plans = new SavedPlans(new PlanStorage('beds', storage.access), () => undefined);
    const { saved, damage } = plans.load();
    expect(damage).toBeUndefined();
    expect(saved?.revision).toBe(2 ** 53 - 1);
    plans.adopt(saved);
    for (const minutes of [70, 80]) {
      const choices = { beds: { '2027-06-07': { minutes } } };
      expect(plans.write(oneBed({ choices }), false)).toEqual({ kind: 'written', replaced: false });
      const written = readSavedPlan(storage.getItem('runnel:beds') ?? '');
      expect(written.ok && written.saved.plan.choices).toEqual(choices);
      expect(written.ok && saved && contains(written.saved, saved)).toBe(true);
    }
  });

  it('knows whose changes it has', () => {
    expect(contains(savedPlan(), { writer: 'one', revision: 3 })).toBe(true);
    expect(contains(savedPlan(), { writer: 'one', revision: 4 })).toBe(false);
    expect(contains(savedPlan(), { writer: 'two', revision: 2 })).toBe(true);
    expect(contains(savedPlan(), { writer: 'two', revision: 3 })).toBe(false);
    expect(contains(savedPlan(), { writer: 'three', revision: 1 })).toBe(false);
    expect(seenIn(savedPlan(), undefined, savedPlan({ writer: 'two', revision: 1, seen: { one: 9 } }))).toEqual({
      one: 9,
      two: 2,
    });
  });

  it('remembers the newest twenty writers', () => {
    const seen = Object.fromEntries(Array.from({ length: 50 }, (_, number) => [`tab${number}`, number]));
    const reading = readSavedPlan(writeSavedPlan(savedPlan({ seen })));
    const names = reading.ok ? Object.keys(reading.saved.seen) : [];
    expect(names).toHaveLength(20);
    expect(names).toContain('tab49');
    expect(names).not.toContain('tab29');
  });
});

describe('of two stored texts a visit begins with', () => {
  const ok = (change: Partial<SavedPlan>): SavedPlanReading => ({ ok: true, saved: savedPlan(change) });
  const bad: SavedPlanReading = { ok: false, damage: { code: 'unreadable' } };
  it.each([
    ['the only one', ok({}), undefined, 'main'],
    ['the mirror, where nothing else is there', undefined, ok({}), 'mirror'],
    ['the mirror, where the other is damaged', bad, ok({}), 'mirror'],
    ['the first place, where the mirror is damaged', ok({}), bad, 'main'],
    ['either, where they are the same', ok({}), ok({}), 'main'],
    ['the mirror, where it goes further', ok({}), ok({ revision: 4 }), 'mirror'],
    ['the first place, where the mirror is behind', ok({ revision: 4 }), ok({}), 'main'],
    [
      'the one that has seen the other',
      ok({}),
      ok({ writer: 'two', revision: 4, seen: { one: 3 }, plan: mixedGarden() }),
      'mirror',
    ],
    ['both, where each has something of its own', ok({}), ok({ writer: 'two', revision: 3, seen: { one: 2 } }), 'both'],
  ] as const)('%s', (_, main, copy, choice) => {
    expect(newerOf(main, copy)).toBe(choice);
  });
});
