import { describe, expect, it } from 'vitest';
import { applyEdit, tryEdit } from '../../../src/plan/edits/apply-edit.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import type { Plan, PlanLine } from '../../../src/plan/schema/plan-schema.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const plan = mixedGarden();
const ids = ({ zones }: Plan) => zones.map(({ id }) => id);
const plantings = ({ zones }: Plan) => zones.map((each) => each.plantings.map(({ id }) => id));
const faults = (edit: Edit, of = plan) => {
  const result = tryEdit(of, edit);
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
};

describe('an edit of zones', () => {
  const orchard = zone({ id: 'orchard', name: 'Orchard', plantings: [] });

  it.each<[string, Edit, string[]]>([
    ['adds one at the end', { type: 'add-zone', zone: orchard }, ['beds', 'containers', 'orchard']],
    ['adds one at a place', { type: 'add-zone', zone: orchard, at: 1 }, ['beds', 'orchard', 'containers']],
    ['adds one before all', { type: 'add-zone', zone: orchard, at: -3 }, ['orchard', 'beds', 'containers']],
    ['moves one down', { type: 'move-zone', zone: 'beds', to: 1 }, ['containers', 'beds']],
    ['moves one up', { type: 'move-zone', zone: 'containers', to: 0 }, ['containers', 'beds']],
    ['removes one', { type: 'remove-zone', zone: 'beds' }, ['containers']],
  ])('%s', (_name, edit, expected) => {
    expect(ids(applyEdit(plan, edit))).toEqual(expected);
  });

  it('moves one to where it is: the same plan', () => {
    expect(applyEdit(plan, { type: 'move-zone', zone: 'containers', to: 9 })).toBe(plan);
  });

  it('removes choices and runs with a zone, and no others', () => {
    const rest = applyEdit(plan, { type: 'remove-zone', zone: 'beds' });
    expect(rest.choices).toEqual({ containers: { '2027-08-02': { closed: true } } });
    expect(rest.log).toEqual({ days: plan.log?.days, weeks: plan.log?.weeks });
    const none = applyEdit(rest, { type: 'remove-zone', zone: 'containers' });
    expect(none).not.toHaveProperty('choices');
  });

  it('changes named fields, and neither its id nor its plantings', () => {
    const change = { name: 'Raised beds', wateringDays: 2, id: 'other', plantings: [] };
    const [beds] = applyEdit(plan, { type: 'change-zone', zone: 'beds', change }).zones;
    expect(beds).toEqual({ ...plan.zones[0], name: 'Raised beds', wateringDays: 2 });
    const again = applyEdit(plan, { type: 'change-zone', zone: 'beds', change: { soil: 'clay' } });
    expect(applyEdit(again, { type: 'change-zone', zone: 'beds', change: { soil: undefined } })).toEqual(plan);
  });

  it.each<[string, Edit, string]>([
    ['a zone that is there', { type: 'add-zone', zone: zone({ plantings: [] }) }, 'zones.2.id id-taken'],
    ['a zone that is not there', { type: 'remove-zone', zone: 'cellar' }, 'zones zone-unknown'],
    [
      'a rule without its planting',
      { type: 'change-zone', zone: 'beds', change: { rule: { kind: 'planting', planting: 'pots' } } },
      'zones.0.rule.planting planting-unknown',
    ],
  ])('refuses %s', (_name, edit, fault) => {
    expect(faults(edit)).toEqual([fault]);
  });
});

describe('an edit of plantings', () => {
  const roses = shrubs({ id: 'roses', name: 'Roses' });

  it.each<[string, Edit, string[][]]>([
    ['adds one', { type: 'add-planting', zone: 'beds', planting: roses }, [['tomatoes', 'shrubs', 'roses'], ['pots']]],
    [
      'adds one at a place',
      { type: 'add-planting', zone: 'beds', planting: roses, at: 0 },
      [['roses', 'tomatoes', 'shrubs'], ['pots']],
    ],
    ['removes one', { type: 'remove-planting', zone: 'beds', planting: 'shrubs' }, [['tomatoes'], ['pots']]],
    [
      'moves one within its zone',
      { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'beds', at: 0 },
      [['shrubs', 'tomatoes'], ['pots']],
    ],
    [
      'moves one to another zone',
      { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'containers' },
      [['tomatoes'], ['pots', 'shrubs']],
    ],
    [
      'moves one to a place of another zone',
      { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'containers', at: 0 },
      [['tomatoes'], ['shrubs', 'pots']],
    ],
  ])('%s', (_name, edit, expected) => {
    expect(plantings(applyEdit(plan, edit))).toEqual(expected);
  });

  it('moves hand-set open days with a planting', () => {
    const moved = applyEdit(plan, { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'containers' });
    expect(moved.choices).toEqual({
      beds: { '2027-07-05': { minutes: 120 }, '2027-07-12': { note: 'Heat is coming.' } },
      containers: { '2027-07-12': { openDays: { shrubs: 1 } }, '2027-08-02': { closed: true } },
    });
    expect(moved.zones[1]?.plantings[1]).toBe(plan.zones[0]?.plantings[1]);
  });

  it('removes hand-set open days with a planting', () => {
    expect(applyEdit(plan, { type: 'remove-planting', zone: 'beds', planting: 'shrubs' }).choices?.['beds']).toEqual({
      '2027-07-05': { minutes: 120 },
      '2027-07-12': { note: 'Heat is coming.' },
    });
  });

  it.each<[string, Edit]>([
    ['removed', { type: 'remove-planting', zone: 'beds', planting: 'shrubs' }],
    ['moved away', { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'containers' }],
  ])('gives a rule back whose planting is %s', (_name, edit) => {
    const ruled = applyEdit(plan, {
      type: 'change-zone',
      zone: 'beds',
      change: { rule: { kind: 'planting', planting: 'shrubs' } },
    });
    expect(applyEdit(ruled, edit).zones[0]).not.toHaveProperty('rule');
  });

  it('changes named fields but not its id', () => {
    const change = { target: 0.5, id: 'other', shutOff: undefined };
    const changed = applyEdit(plan, { type: 'change-planting', zone: 'beds', planting: 'shrubs', change });
    const { shutOff: _shutOff, ...rest } = shrubs();
    expect(changed.zones[0]?.plantings[1]).toEqual({ ...rest, target: 0.5 });
  });

  it.each<[string, Edit, string]>([
    [
      'a planting that is there',
      { type: 'add-planting', zone: 'containers', planting: tomatoes() },
      'zones.1.plantings.1.id id-taken',
    ],
    [
      'a planting that is not there',
      { type: 'remove-planting', zone: 'beds', planting: 'pots' },
      'zones planting-unknown',
    ],
    [
      'a move to nowhere',
      { type: 'move-planting', zone: 'beds', planting: 'shrubs', toZone: 'cellar' },
      'zones zone-unknown',
    ],
    [
      'an area below nothing',
      { type: 'change-planting', zone: 'beds', planting: 'tomatoes', change: { extent: { kind: 'area', area: -1 } } },
      'zones.0.plantings.0.extent.area range',
    ],
  ])('refuses %s', (_name, edit, fault) => {
    expect(faults(edit)).toEqual([fault]);
  });
});

describe('an edit of lines', () => {
  const garden = metricGarden();
  const at = { zone: 'vegetables', planting: 'lettuce' } as const;
  const from = (of: Plan) => of.zones[0]?.plantings[0]?.lines.map((line) => line.from);
  const solid = (day?: string): PlanLine => ({ kind: 'solid', ...(day === undefined ? {} : { from: day }) });

  it.each<[string, Edit, (string | undefined)[]]>([
    [
      'adds one after the others',
      { type: 'add-line', ...at, line: solid('2027-07-01') },
      [undefined, '2027-06-01', '2027-07-01'],
    ],
    [
      'adds one between',
      { type: 'add-line', ...at, line: solid('2027-05-01') },
      [undefined, '2027-05-01', '2027-06-01'],
    ],
    ['replaces one', { type: 'replace-line', ...at, index: 1, line: solid('2027-08-01') }, [undefined, '2027-08-01']],
    ['removes one', { type: 'remove-line', ...at, index: 0 }, ['2027-06-01']],
  ])('%s', (_name, edit, expected) => {
    expect(from(applyEdit(garden, edit))).toEqual(expected);
  });

  it('adds the first line before those of a day', () => {
    const late = applyEdit(garden, { type: 'remove-line', ...at, index: 0 });
    expect(from(applyEdit(late, { type: 'add-line', ...at, line: solid() }))).toEqual([undefined, '2027-06-01']);
  });

  it('replaces a line by the same: the same plan', () => {
    const line = structuredClone(garden.zones[0]?.plantings[0]?.lines[0]) as PlanLine;
    expect(applyEdit(garden, { type: 'replace-line', ...at, index: 0, line })).toBe(garden);
  });

  it.each<[string, Edit, string]>([
    ['a line that is not there', { type: 'remove-line', ...at, index: 2 }, 'zones line-unknown'],
    ['a line before all', { type: 'remove-line', ...at, index: -1 }, 'zones line-unknown'],
    [
      'a place that is no number',
      { type: 'remove-line', ...at, index: 'length' as unknown as number },
      'zones line-unknown',
    ],
  ])('refuses %s', (_name, edit, fault) => {
    expect(faults(edit, garden)).toEqual([fault]);
  });
});

describe('several edits together', () => {
  it('are one, and only what they come to must be valid', () => {
    const next = applyEdit(oneBed(), {
      type: 'together',
      edits: [
        { type: 'add-zone', zone: zone({ name: 'Other beds', plantings: [] }) },
        { type: 'remove-zone', zone: 'beds' },
      ],
    });
    expect(next.zones.map(({ name }) => name)).toEqual(['Other beds']);
  });

  it('are refused as a whole', () => {
    const edits: readonly Edit[] = [
      { type: 'rename-plan', name: 'Another' },
      { type: 'set-minutes', zone: 'beds', week: '2027-08-02', minutes: -1 },
    ];
    expect(tryEdit(plan, { type: 'together', edits }).ok).toBe(false);
  });
});

it('an edit of a kind that is none is refused', () => {
  expect(faults({ type: 'water-everything' } as unknown as Edit)).toEqual([' edit-unknown']);
});
