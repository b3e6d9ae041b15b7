import { describe, expect, it } from 'vitest';
import type { SavedPlan } from '../../src/autosave/saved-plan.ts';
import {
  type AutosaveEvent,
  type AutosaveState,
  type EventOf,
  type EventType,
  MODES,
  type Mode,
} from '../../src/autosave/state.ts';
import { COLUMNS, rowFor, TRANSITIONS, transition } from '../../src/autosave/transitions.ts';
import { oneBed } from '../support/small-plans.ts';

const named = (name: string) => ({ ...oneBed(), name });
const [screen, newer, other, copy] = ['On screen', 'Newer', 'Other', 'Copy'].map(named) as [P, P, P, P];
type P = ReturnType<typeof oneBed>;
const stored: SavedPlan = { writer: 'two', revision: 2, seen: {}, saved: '2027-06-07T08:00:00.000Z', plan: other };

const loaded: EventOf<'loaded'> = {
  type: 'loaded',
  saved: stored,
  damage: undefined,
  fault: undefined,
  link: undefined,
  isChecked: true,
  lacksYears: false,
  base: undefined,
  hasOwnPlan: true,
};
const saved: EventOf<'saved'> = { type: 'saved', place: 'main', replaced: false, damage: undefined, next: undefined };

/** One event of each type. */
const EVENTS: { readonly [Type in EventType]: EventOf<Type> } = {
  changed: { type: 'changed', plan: newer },
  opened: { type: 'opened', plan: other, by: 'person', isAny: true },
  'access-changed': { type: 'access-changed', canSave: false },
  'open-failed': { type: 'open-failed', faults: [], hasPlan: true },
  'copy-opened': { type: 'copy-opened', id: 'c', copy },
  'link-followed': {
    type: 'link-followed',
    link: other,
    isChecked: true,
    lacksYears: false,
    plan: screen,
    isAny: true,
    hasOwnPlan: true,
  },
  'link-failed': { type: 'link-failed', fault: { code: 'damaged' } },
  loaded,
  'save-due': { type: 'save-due' },
  saved,
  'save-failed': { type: 'save-failed', plan: screen, fault: 'full', next: undefined },
  'save-blocked': { type: 'save-blocked', plan: screen, next: undefined },
  'made-way': { type: 'made-way' },
  'storage-failed': { type: 'storage-failed', fault: 'full' },
  'other-tab-saved': { type: 'other-tab-saved', saved: stored, plan: screen, isSeen: true, isTyping: false },
  'own-plan-chosen': { type: 'own-plan-chosen' },
  'saved-plan-chosen': { type: 'saved-plan-chosen' },
  'other-tab-chosen': { type: 'other-tab-chosen', plan: screen },
  'this-plan-chosen': { type: 'this-plan-chosen', plan: screen },
  'copy-chosen': { type: 'copy-chosen', id: 'c', copy, plan: screen },
  'retry-chosen': { type: 'retry-chosen', canRead: true },
  'note-closed': { type: 'note-closed', code: 'restored' },
  stop: { type: 'stop' },
};

const at = (mode: Mode, change: Partial<AutosaveState> = {}): AutosaveState => ({
  mode,
  canSave: true,
  unsaved: undefined,
  notes: [],
  ...change,
});

/** The mode that follows, and the effects; of a save where to, and what follows it. */
function outcome(state: AutosaveState, event: AutosaveEvent): string {
  if (rowFor(state.mode, event.type) === undefined) return '-';
  const after = transition(state, event);
  const effects = after.effects.map((effect) => {
    if (effect.type !== 'save') return effect.type;
    const to = effect.replace ? 'main!' : effect.place;
    return `save>${to}${effect.next === undefined ? '' : `>${effect.next.type}`}`;
  });
  return [after.state.mode, ...effects].join(' ');
}

/** A change is never unsaved before what is saved was read: the first one ends that. */
const LATER = COLUMNS.slice(1);

const TYPES = Object.keys(EVENTS) as readonly EventType[];

/**
 * By event, a column a mode: `starting`, `current`, `different`, `conflict`, `link`. The mode that follows and the effects; `-`: ignored.
 * `save>main!>next`: what lies there becomes a copy first, and `next` follows.
 */
type Table = { readonly [Type in EventType]: readonly string[] };

const NOTHING_UNSAVED: Table = {
  changed: ['different schedule', 'current schedule', 'different schedule', 'conflict schedule', 'link schedule'],
  opened: [
    'different schedule',
    'different schedule',
    'different schedule',
    'different release-copy schedule',
    'different release-copy leave-link schedule',
  ],
  'access-changed': ['starting', 'current', 'different', 'conflict', 'link'],
  'open-failed': ['-', 'different', 'different', '-', 'different release-copy leave-link'],
  'copy-opened': ['-', '-', 'different save>main!>delete-copy', '-', '-'],
  'link-followed': [
    'link release-copy open',
    'link release-copy open',
    'link release-copy open',
    'link release-copy open',
    'link release-copy open',
  ],
  'link-failed': ['starting', 'current', 'different', 'conflict', 'link'],
  loaded: ['current adopt open', '-', '-', 'current release-copy adopt open', '-'],
  'save-due': ['-', 'current', 'different', 'conflict', 'link'],
  saved: ['-', 'current', 'current', 'conflict', 'link'],
  'save-failed': ['-', 'current schedule', 'different schedule', 'conflict schedule', 'link schedule'],
  'save-blocked': ['-', 'conflict save>copy', '-', '-', '-'],
  'made-way': [
    '-',
    'current adopt open-own-plan',
    'current adopt open-own-plan',
    '-',
    'current release-copy leave-link adopt open-own-plan',
  ],
  'storage-failed': ['starting', 'current', 'different', 'conflict', 'link'],
  'other-tab-saved': ['-', 'current adopt open', '-', '-', '-'],
  'own-plan-chosen': ['-', 'current make-way', 'different make-way', '-', 'link make-way'],
  'saved-plan-chosen': ['-', '-', 'starting load', '-', 'starting release-copy leave-link load'],
  'other-tab-chosen': ['-', '-', '-', 'conflict save>copy>take-other-tab', '-'],
  'this-plan-chosen': ['-', '-', '-', 'conflict save>main!>keep-this-plan', 'link save>main!>keep-this-plan'],
  'copy-chosen': [
    '-',
    'different open-copy',
    'different open-copy',
    'conflict save>copy>restore-copy',
    'different release-copy leave-link open-copy',
  ],
  'retry-chosen': ['starting', 'current', 'different', 'conflict', 'link'],
  'note-closed': ['starting', 'current', 'different', 'conflict', 'link'],
  stop: ['stopped end', 'stopped end', 'stopped end', 'stopped end', 'stopped end'],
};

/** Where that differs while the newest change is not saved yet, which is never so in `starting`. */
const UNSAVED: Partial<Table> = {
  opened: [
    'current save>main>opened',
    'different save>main!>opened',
    'conflict save>copy>opened',
    'link save>copy>opened',
  ],
  'access-changed': ['current save>main', 'different save>main!', 'conflict save>copy', 'link save>copy'],
  'link-followed': [
    'current save>main>open-link',
    'different save>main!>open-link',
    'conflict save>copy>open-link',
    'link save>copy>open-link',
  ],
  loaded: ['-', '-', 'conflict', '-'],
  'save-due': ['current save>main', 'different save>main!', 'conflict save>copy', 'link save>copy'],
  'other-tab-saved': ['conflict save>copy', '-', '-', '-'],
  'own-plan-chosen': [
    'current save>main>open-own-plan',
    'different save>main!>open-own-plan',
    '-',
    'link save>copy>open-own-plan',
  ],
  'saved-plan-chosen': ['-', 'different save>main!>open-saved-plan', '-', 'link save>copy>open-saved-plan'],
  'copy-chosen': [
    'current save>main>restore-copy',
    'different save>main!>restore-copy',
    'conflict save>copy>restore-copy',
    'link save>copy>restore-copy',
  ],
  'retry-chosen': ['current save>main', 'different save>main!', 'conflict save>copy', 'link save>copy'],
  stop: ['current save>main>stop', 'different save>main!>stop', 'conflict save>copy>stop', 'link save>copy>stop'],
};

describe('the table', () => {
  it('has a column for every mode, and ignores everything once it is stopped', () => {
    expect([...COLUMNS, 'stopped']).toEqual(MODES);
    for (const type of TYPES) expect(outcome(at('stopped'), EVENTS[type])).toBe('-');
  });

  it('has a row for every event', () => {
    expect(Object.keys(TRANSITIONS).sort()).toEqual([...TYPES].sort());
  });

  it.each(TYPES)('says what comes of: %s', (type) => {
    expect(COLUMNS.map((mode) => outcome(at(mode), EVENTS[type]))).toEqual(NOTHING_UNSAVED[type]);
  });

  it.each(TYPES)('says what comes of it while a change is not saved yet: %s', (type) => {
    const rows = LATER.map((mode) => outcome(at(mode, { unsaved: newer }), EVENTS[type]));
    expect(rows).toEqual(UNSAVED[type] ?? NOTHING_UNSAVED[type].slice(1));
  });
});

describe('whatever happens', () => {
  const cells = TYPES.flatMap((type) => LATER.map((mode) => [type, mode] as const));

  /** They carry what is on screen, which is as new as what is not saved yet. */
  const CARRYING_SCREEN: ReadonlySet<EventType> = new Set([
    'changed',
    'other-tab-saved',
    'other-tab-chosen',
    'this-plan-chosen',
    'copy-chosen',
  ]);
  /** The table itself asks for it, and only once all is saved. */
  const isAfterSaving = (type: EventType) => type === 'copy-opened';

  it.each(cells)('a change that is not saved is saved or stays to be saved: %s, %s', (type, mode) => {
    const { state, effects } = transition(at(mode, { unsaved: newer }), EVENTS[type]);
    const plans = [state.unsaved, ...effects.map((effect) => (effect.type === 'save' ? effect.plan : undefined))];
    const isCarried = CARRYING_SCREEN.has(type) && plans.includes(screen);
    expect(plans.includes(newer) || isCarried || isAfterSaving(type)).toBe(true);
  });

  it.each(cells)('nothing is saved while nothing may be: %s, %s', (type, mode) => {
    const { effects } = transition(at(mode, { canSave: false }), EVENTS[type]);
    const saves = effects.filter((effect) => effect.type === 'save' || effect.type === 'make-way');
    // Those go on with what was begun while it was allowed.
    const isBegun = isAfterSaving(type) || type === 'save-blocked';
    expect(isBegun ? [] : saves).toEqual([]);
  });

  it.each(cells)('another plan is opened only once what is on screen is saved: %s, %s', (type, mode) => {
    const { effects } = transition(at(mode, { unsaved: newer }), EVENTS[type]);
    expect(effects.filter((effect) => effect.type === 'open' || effect.type === 'open-copy')).toEqual([]);
  });
});

describe('in particular', () => {
  it('what was changed while a save was refused is what goes into the copy', () => {
    const { effects } = transition(at('current', { unsaved: newer }), EVENTS['save-blocked']);
    expect(effects).toEqual([{ type: 'save', plan: newer, place: 'copy', replace: false, next: undefined }]);
  });

  it('a save that failed is tried again, unless something newer is to be saved', () => {
    expect(transition(at('current'), EVENTS['save-failed']).state.unsaved).toBe(screen);
    expect(transition(at('current', { unsaved: newer }), EVENTS['save-failed']).state.unsaved).toBe(newer);
  });

  it.each(['open-own-plan', 'open-saved-plan'] as const)('%s is chosen anew where another tab had saved', (next) => {
    expect(outcome(at('current'), { ...EVENTS['save-blocked'], next: { type: next } })).toBe('conflict save>copy');
  });

  it('a plan that a person opened is opened, and autosave stops, though the one before could not be saved', () => {
    const failed = EVENTS['save-failed'];
    expect(outcome(at('current'), { ...failed, next: EVENTS.opened })).toBe('different schedule');
    expect(outcome(at('conflict'), { ...failed, next: { type: 'stop' } })).toBe('stopped end');
  });

  it('a link is opened only once the plan before it is saved', () => {
    const next = { ...EVENTS['link-followed'], type: 'open-link' } as const;
    expect(outcome(at('current'), { ...EVENTS['save-failed'], next })).toBe('current schedule');
    expect(outcome(at('current'), { ...saved, next })).toBe('link release-copy open');
  });

  it('the page’s own plan counts as the first to be saved where none is, and what is saved as a copy to be where one is', () => {
    const opened = { ...EVENTS.opened, by: 'page' } as const;
    expect(outcome(at('current'), { ...opened, isAny: false })).toBe('current adopt');
    expect(outcome(at('current'), { ...opened, isAny: true })).toBe('different');
    expect(outcome(at('current'), { ...opened, isAny: undefined })).toBe('different');
    // What was saved before it was opened is there by then.
    expect(outcome(at('current'), { ...saved, next: { ...opened, isAny: false } })).toBe('different');
  });

  it('a visit begins with the plan of a link, else with the saved one, else with the page’s own', () => {
    const none = { ...loaded, saved: undefined };
    expect(outcome(at('starting'), { ...loaded, link: copy })).toBe('link release-copy open');
    expect(outcome(at('starting'), { ...loaded, link: other })).toBe('current leave-link adopt open');
    expect(outcome(at('starting'), loaded)).toBe('current adopt open');
    expect(outcome(at('starting'), none)).toBe('current adopt open-own-plan');
    expect(outcome(at('starting'), { ...none, fault: 'forbidden' })).toBe('different open-own-plan');
    expect(outcome(at('starting', { canSave: false }), none)).toBe('different open-own-plan');
  });

  it('another tab’s changes make a conflict where this tab has changes, texts or saves that they lack', () => {
    const news = EVENTS['other-tab-saved'];
    expect(outcome(at('current'), news)).toBe('current adopt open');
    expect(outcome(at('current', { unsaved: newer }), news)).toBe('conflict save>copy');
    expect(outcome(at('current'), { ...news, isTyping: true })).toBe('conflict save>copy');
    expect(outcome(at('current'), { ...news, isSeen: false })).toBe('conflict save>copy');
  });

  it('what a conflict or a link left is tidied up once it is decided', () => {
    const kept = { ...saved, next: { type: 'keep-this-plan' } } as const;
    expect(outcome(at('conflict'), kept)).toBe('current remove-own-copy release-copy');
    expect(outcome(at('link'), kept)).toBe('current remove-own-copy release-copy leave-link');
    expect(outcome(at('conflict'), { ...saved, place: 'copy', next: { type: 'take-other-tab' } })).toBe(
      'conflict load',
    );
    const restored = { ...saved, next: { type: 'delete-copy', id: 'c' } } as const;
    expect(outcome(at('different'), restored)).toBe('current delete-copy');
  });
});
