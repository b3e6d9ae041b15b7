/** What follows once what was on screen is saved. */

import type { Plan } from '../plan/schema/plan-schema.ts';
import { withNote, withoutNotes, withoutOrigin } from './notes.ts';
import type { AutosaveChoice } from './report.ts';
import type { AutosaveState, Effect, EventOf, Next, Step } from './state.ts';

export function step(state: AutosaveState, ...effects: readonly Effect[]): Step {
  return { state, effects };
}

export const openPlan = (plan: Plan): Effect => ({ type: 'open', plan });

/** What a conflict or a link leaves behind. */
export function leave({ mode }: AutosaveState): readonly Effect[] {
  if (mode === 'conflict') return [{ type: 'release-copy' }];
  return mode === 'link' ? [{ type: 'release-copy' }, { type: 'leave-link' }] : [];
}

/** Goes on once what was on screen is saved. */
export function follow(state: AutosaveState, next: Next): Step {
  switch (next.type) {
    case 'opened':
      return next.by === 'page' ? ownPlanOpened(state, next) : planOpened(state, next);
    case 'open-link':
      return linkOpened(state, next);
    case 'open-own-plan':
      return state.canSave ? step(state, { type: 'make-way' }) : madeWay(state);
    case 'open-saved-plan': {
      const notes = withoutNotes(state.notes, 'own-plan', 'link');
      return step({ ...state, mode: 'starting', notes }, ...leave(state), { type: 'load' });
    }
    case 'take-other-tab':
      return step(state, { type: 'load' });
    case 'keep-this-plan': {
      const notes = withoutNotes(state.notes, 'conflict', 'link');
      return step({ ...state, mode: 'current', notes }, { type: 'remove-own-copy' }, ...leave(state));
    }
    case 'restore-copy': {
      const { id, copy } = next;
      const notes = withoutNotes(state.notes, 'restored', 'own-plan', 'other-tab', 'conflict', 'link');
      return step({ ...state, mode: 'different', notes }, ...leave(state), { type: 'open-copy', id, copy });
    }
    case 'delete-copy':
      return step(state, next);
    case 'stop':
      return step({ ...state, mode: 'stopped', unsaved: undefined }, { type: 'end' });
  }
}

/** The saved plan is a copy now: the page's own takes its place. */
export function madeWay(state: AutosaveState): Step {
  const notes = withoutNotes(state.notes, 'restored', 'link');
  const isCopied = state.canSave && state.mode !== 'link';
  const next: AutosaveState = {
    ...state,
    mode: 'current',
    notes: isCopied ? withNote(notes, { code: 'own-plan', savedPlan: 'copy' }) : notes,
  };
  return step(next, ...leave(state), { type: 'adopt', saved: undefined }, { type: 'open-own-plan' });
}

/** A person has opened a plan: it is saved at once. */
function planOpened(state: AutosaveState, { plan }: EventOf<'opened'>): Step {
  const notes = withoutNotes(
    state.notes,
    'restored',
    'own-plan',
    'replaced',
    'other-tab',
    'conflict',
    'link',
    'bad-link',
  );
  const next: AutosaveState = { ...state, mode: 'different', unsaved: state.canSave ? plan : undefined, notes };
  return step(next, ...leave(state), ...(state.canSave ? [{ type: 'schedule', withinMs: 0 } as const] : []));
}

/** The page has opened its own plan. Nothing is saved of it until it is changed. */
function ownPlanOpened(state: AutosaveState, { isAny }: EventOf<'opened'>): Step {
  const notes = withoutNotes(state.notes, 'restored', 'replaced', 'other-tab', 'conflict', 'link');
  const mode = isAny === false ? 'current' : 'different';
  const adopted: readonly Effect[] = mode === 'current' ? [{ type: 'adopt', saved: undefined }] : [];
  const noted =
    isAny === true && state.canSave
      ? withNote(notes, { code: 'own-plan', savedPlan: 'saved' }, ['saved-plan', 'close'])
      : notes;
  return step({ ...state, mode, unsaved: undefined, notes: noted }, ...leave(state), ...adopted);
}

/** A link's plan is on screen, and is not saved until a person chooses. */
function linkOpened(state: AutosaveState, next: Extract<Next, { type: 'open-link' }>): Step {
  const { link, isChecked, lacksYears, isAny, hasOwnPlan } = next;
  const { canSave } = state;
  const ownPlan: readonly AutosaveChoice[] = hasOwnPlan ? ['own-plan'] : [];
  const back: readonly AutosaveChoice[] = canSave && isAny === true ? ['saved-plan'] : ownPlan;
  const choices: readonly AutosaveChoice[] = canSave
    ? ['this-plan', ...back, 'save-file']
    : ['save-file', ...back, 'close'];
  const notes = withNote(
    withoutOrigin(state.notes, 'conflict', 'bad-link'),
    { code: 'link', canSave, isChecked, lacksYears },
    choices,
  );
  return step({ ...state, mode: 'link', notes }, { type: 'release-copy' }, openPlan(link));
}
