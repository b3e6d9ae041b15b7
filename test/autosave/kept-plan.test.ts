import { describe, expect, it } from 'vitest';
import {
  contains,
  type KeptPlan,
  type KeptReading,
  readKept,
  seenIn,
  writeKept,
} from '../../src/autosave/kept-plan.ts';
import { newerKept } from '../../src/autosave/newer-kept.ts';
import { mixedGarden, oneBed } from '../support/small-plans.ts';

const kept = (change: Partial<KeptPlan> = {}): KeptPlan => ({
  writer: 'one',
  revision: 3,
  seen: { two: 2 },
  base: 'garden.runnel.json',
  saved: '2027-06-07T08:00:00.000Z',
  plan: oneBed(),
  ...change,
});
const changed = (change: Readonly<Record<string, unknown>>) =>
  JSON.stringify({ ...JSON.parse(writeKept(kept())), ...change });
const why = (reading: KeptReading) =>
  reading.ok ? 'taken' : reading.faults.map(({ value, expected }) => `${value}: ${expected}`).join();

describe('what is kept of a plan', () => {
  it('is read as it was written', () => {
    expect(readKept(writeKept(kept()))).toEqual({ ok: true, kept: kept() });
    const { base: _, ...baseless } = kept();
    expect(readKept(writeKept(baseless))).toEqual({ ok: true, kept: baseless });
  });

  it.each([
    ['nothing', '', /^the text: .*damaged/],
    ['half of it', writeKept(kept()).slice(0, 300), /^the text: .*damaged/],
    ['a list', '[1]', /^the text: .*damaged/],
    ['another format', changed({ format: 'other' }), /^its heading: /],
    ['no instant', changed({ saved: 'yesterday' }), /^its heading: /],
    ['no revision', changed({ revision: '3' }), /^its heading: /],
    ['a newer edition', changed({ version: 2 }), /^version 2: version 1 or older: a newer edition of this page/],
    ['a newer plan', changed({ plan: { ...oneBed(), version: 99 } }), /newer edition/],
    ['a plan with a fault', changed({ plan: { ...oneBed(), zones: [{}] } }), /./],
    ['no plan', changed({ plan: undefined }), /./],
  ])('is refused in words: %s', (_, text, words) => {
    const reading = readKept(text);
    expect(reading.ok).toBe(false);
    expect(why(reading)).toMatch(words);
  });

  it('counts only numbers as revisions, and names none that JavaScript keeps for itself', () => {
    const reading = readKept(writeKept(kept()).replace('"two":2', '"two":2,"three":"x","__proto__":7'));
    expect(reading.ok && Object.keys(reading.kept.seen)).toEqual(['two', '__proto__']);
    expect(({} as Record<string, unknown>)['two']).toBeUndefined();
  });

  it('knows whose changes it has', () => {
    expect(contains(kept(), { writer: 'one', revision: 3 })).toBe(true);
    expect(contains(kept(), { writer: 'one', revision: 4 })).toBe(false);
    expect(contains(kept(), { writer: 'two', revision: 2 })).toBe(true);
    expect(contains(kept(), { writer: 'two', revision: 3 })).toBe(false);
    expect(contains(kept(), { writer: 'three', revision: 1 })).toBe(false);
    expect(seenIn(kept(), undefined, kept({ writer: 'two', revision: 1, seen: { one: 9 } }))).toEqual({
      one: 9,
      two: 2,
    });
  });

  it('remembers the newest twenty writers', () => {
    const seen = Object.fromEntries(Array.from({ length: 50 }, (_, number) => [`tab${number}`, number]));
    const reading = readKept(writeKept(kept({ seen })));
    const names = reading.ok ? Object.keys(reading.kept.seen) : [];
    expect(names).toHaveLength(20);
    expect(names).toContain('tab49');
    expect(names).not.toContain('tab29');
  });
});

describe('of two kept texts a visit begins with', () => {
  const ok = (change: Partial<KeptPlan>): KeptReading => ({ ok: true, kept: kept(change) });
  const bad: KeptReading = { ok: false, faults: [] };
  it.each([
    ['the only one', ok({}), undefined, 'main'],
    ['the copy, where nothing else is there', undefined, ok({}), 'copy'],
    ['the copy, where the other is damaged', bad, ok({}), 'copy'],
    ['the other, where the copy is damaged', ok({}), bad, 'main'],
    ['either, where they are the same', ok({}), ok({}), 'main'],
    ['the copy, where it goes further', ok({}), ok({ revision: 4 }), 'copy'],
    ['the other, where the copy is behind', ok({ revision: 4 }), ok({}), 'main'],
    [
      'the one that has seen the other',
      ok({}),
      ok({ writer: 'two', revision: 4, seen: { one: 3 }, plan: mixedGarden() }),
      'copy',
    ],
    ['both, where each has something of its own', ok({}), ok({ writer: 'two', revision: 3, seen: { one: 2 } }), 'both'],
  ] as const)('%s', (_, main, copy, choice) => {
    expect(newerKept(main, copy)).toBe(choice);
  });
});
