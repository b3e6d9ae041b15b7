import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canRedo,
  canUndo,
  type History,
  MOST_STEPS,
  record,
  redo,
  type Step,
  startHistory,
  undo,
} from '../../../src/plan/history/history.ts';
import { oneBed } from '../../support/small-plans.ts';

const named = (name: string) => oneBed({ name });
const recorded = (history: History, name: string) => record(history, { type: 'rename-plan', name }, named(name));
const name = ({ present }: History) => present.name;
const editOf = (step: Step | undefined) => step && [step.before.name, step.edit, step.after.name];
const called = (before: string, after: string) => [before, { type: 'rename-plan', name: after }, after];

describe('history', () => {
  const start = startHistory(named('a'));
  const three = recorded(recorded(start, 'b'), 'c');

  it('begins with nothing to undo or redo', () => {
    expect([canUndo(start), canRedo(start)]).toEqual([false, false]);
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
  });

  it('goes back and forth, and keeps the edit of each step', () => {
    const shown = (history: History) => [name(history), editOf(history.past.at(-1)), editOf(history.future[0])];
    expect(shown(three)).toEqual(['c', called('b', 'c'), undefined]);
    const back = undo(three);
    expect(shown(back)).toEqual(['b', called('a', 'b'), called('b', 'c')]);
    const first = undo(back);
    expect(shown(first)).toEqual(['a', undefined, called('a', 'b')]);
    expect(redo(redo(first))).toEqual(three);
  });

  it('forgets what was undone once something else is done', () => {
    const other = recorded(undo(three), 'd');
    expect(canRedo(other)).toBe(false);
    expect(name(undo(other))).toBe('b');
  });

  it('does not record a plan that did not change', () => {
    expect(record(three, { type: 'rename-plan', name: 'c' }, three.present)).toBe(three);
  });

  it(`keeps the last ${MOST_STEPS} steps`, () => {
    let history = start;
    for (let step = 0; step < MOST_STEPS + 50; step++) history = recorded(history, `plan ${step}`);
    expect(history.past).toHaveLength(MOST_STEPS);
    while (canUndo(history)) history = undo(history);
    expect(name(history)).toBe('plan 49');
  });

  it('never changes what it was given', () => {
    const frozen: History = Object.freeze({
      ...three,
      past: Object.freeze(three.past),
      future: Object.freeze(three.future),
    });
    expect(() => [undo(frozen), redo(undo(frozen)), recorded(frozen, 'e')]).not.toThrow();
  });

  it('any row of steps: undoing and redoing as often as one likes comes back to the same', () => {
    const moves = fc.array(fc.constantFrom('record', 'undo', 'redo'), { maxLength: 60 });
    const after = (history: History, move: string, index: number) =>
      move === 'record' ? recorded(history, `plan ${index}`) : move === 'undo' ? undo(history) : redo(history);
    fc.assert(
      fc.property(moves, (steps) => {
        let history = start;
        for (const [index, step] of steps.entries()) {
          history = after(history, step, index);
          if (canUndo(history)) expect(redo(undo(history))).toEqual(history);
          if (canRedo(history)) expect(undo(redo(history))).toEqual(history);
        }
        while (canUndo(history)) history = undo(history);
        expect(history.present).toBe(start.present);
      }),
    );
  });
});
