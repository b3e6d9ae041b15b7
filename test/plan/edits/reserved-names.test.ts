/** No edit brings in a name that JavaScript keeps for itself: not as a field, not as a key of a record, not as what it names. */
import { describe, expect, it } from 'vitest';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { mixedGarden, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const RESERVED = ['__proto__', 'constructor', 'prototype'];

const plan = mixedGarden({ log: { runs: { beds: { '2027-06-07': { days: { '2027-06-08': { minutes: 30 } } } } } } });
const [beds, pots] = plan.zones;
if (beds === undefined || pots === undefined) throw new Error('the garden has two zones');
const [planting] = beds.plantings;
const [line] = planting?.lines ?? [];
if (planting === undefined || line === undefined) throw new Error('a planting with a line');
const at = { zone: beds.id, planting: planting.id };
const week = '2027-07-05';

/** One of each kind, with every record that it can hold. */
const EDITS: { readonly [Type in Edit['type']]: Extract<Edit, { type: Type }> } = {
  'set-minutes': { type: 'set-minutes', zone: beds.id, week, minutes: 30 },
  'set-minutes-run': { type: 'set-minutes-run', zone: beds.id, week, minutes: 30 },
  'set-week-run': {
    type: 'set-week-run',
    zone: beds.id,
    week,
    run: { days: { [week]: { minutes: 9, open: [planting.id] } }, rest: 'computed' },
  },
  'close-week': { type: 'close-week', zone: beds.id, week, closed: true },
  'set-open-days': { type: 'set-open-days', ...at, week, days: 1 },
  'set-note': { type: 'set-note', zone: beds.id, week, note: 'Hot' },
  'set-choice': { type: 'set-choice', zone: beds.id, week, choice: { minutes: 5, openDays: { [planting.id]: 1 } } },
  'set-day-run': { type: 'set-day-run', zone: beds.id, day: week, run: { minutes: 9, open: [planting.id] } },
  'set-week-rain': { type: 'set-week-rain', week, rain: 1, through: '2027-07-08' },
  'set-week-eto': { type: 'set-week-eto', week, eto: 1 },
  'set-week-note': { type: 'set-week-note', week, note: 'Supply off' },
  'set-meter': { type: 'set-meter', day: week, reading: 1200 },
  'set-day-weather': { type: 'set-day-weather', day: week, weather: { rain: 0.3 } },
  'change-day-weather': { type: 'change-day-weather', day: week, change: { rain: 0.3 } },
  'set-forecast': { type: 'set-forecast', issued: week, days: { '2027-07-06': { rain: 0.1 } } },
  'set-climate': { type: 'set-climate', climate: plan.site.climate },
  'set-departure': { type: 'set-departure', from: week, weeks: 1, eto: 1.3 },
  'rename-plan': { type: 'rename-plan', name: 'Beds' },
  'set-assumed': { type: 'set-assumed', assumed: ['soil'] },
  'set-plan-notes': { type: 'set-plan-notes', notes: 'Hot' },
  'set-season': { type: 'set-season', season: { ...plan.season, weeks: plan.season.weeks - 1 } },
  'change-site': { type: 'change-site', change: { rain: { method: 'tr21' } } },
  'change-supply': { type: 'change-supply', change: { sources: [{ name: 'Hose' }] } },
  'set-what-if': {
    type: 'set-what-if',
    name: 'One shut-off',
    edits: [{ type: 'change-planting', ...at, change: { shutOff: true } }],
  },
  'convert-units': { type: 'convert-units', units: 'metric' },
  'add-zone': { type: 'add-zone', zone: zone({ id: 'new', plantings: [tomatoes({ id: 'new-plants' })] }) },
  'change-zone': { type: 'change-zone', zone: beds.id, change: { rule: { kind: 'planting', planting: planting.id } } },
  'remove-zone': { type: 'remove-zone', zone: pots.id },
  'move-zone': { type: 'move-zone', zone: pots.id, to: 0 },
  'add-planting': { type: 'add-planting', zone: beds.id, planting: shrubs({ id: 'new-shrubs' }) },
  'change-planting': { type: 'change-planting', ...at, change: { lines: [line] } },
  'remove-planting': { type: 'remove-planting', ...at },
  'move-planting': { type: 'move-planting', ...at, toZone: pots.id },
  'add-line': { type: 'add-line', ...at, line: { ...line, from: '2027-06-02' } },
  'replace-line': { type: 'replace-line', ...at, index: 0, line: { ...line, from: '2027-06-01' } },
  'remove-line': { type: 'remove-line', ...at, index: 0 },
  together: { type: 'together', edits: [{ type: 'set-note', zone: beds.id, week, note: 'Hot' }] },
};

/** The value with the reserved name in one more place each: as a key beside, as a key in place of each, as each text. */
function* spoiled(value: unknown, name: string): Generator<unknown> {
  if (typeof value === 'string') yield name;
  if (typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) {
      for (const other of spoiled(item, name)) yield value.with(index, other);
    }
    return;
  }
  const entries = Object.entries(value);
  yield Object.fromEntries([...entries, [name, 1]]);
  yield Object.fromEntries([...entries, [name, { [name]: {} }]]);
  for (const [key, item] of entries) {
    const others = entries.filter(([other]) => other !== key);
    yield Object.fromEntries([...others, [name, item]]);
    for (const other of spoiled(item, name)) yield Object.fromEntries([...others, [key, other]]);
  }
}

/** Every key and text that stands in a value. */
function* wordsIn(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value;
  if (typeof value !== 'object' || value === null) return;
  for (const [key, item] of Object.entries(value)) {
    yield key;
    yield* wordsIn(item);
  }
}

/** Texts that a person writes may say anything. */
const WRITTEN = new Set(['name', 'note', 'notes', 'source', 'place']);

describe.each(RESERVED)('%s', (name) => {
  it.each(Object.values(EDITS).map((edit) => [edit.type, edit] as const))('is let in by no %s', (_, edit) => {
    expect(tryEdit(plan, edit)).toMatchObject({ ok: true });
    let tried = 0;
    for (const other of spoiled(edit, name)) {
      tried++;
      const result = tryEdit(plan, other as Edit);
      if (!result.ok) {
        expect(result.faults.length).toBeGreaterThan(0);
        for (const { values } of result.faults) expect(values.place).toBeDefined();
        continue;
      }
      const text = JSON.stringify(result.plan, (key, value) => (WRITTEN.has(key) ? '' : value));
      expect([...wordsIn(JSON.parse(text))], JSON.stringify(other)).not.toContain(name);
      expect(readPlan(JSON.stringify(result.plan))).toMatchObject({ ok: true });
      expect(() => computeSeason(result.plan)).not.toThrow();
    }
    expect(tried).toBeGreaterThan(3);
  });
});
