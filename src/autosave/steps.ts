/** The steps in the table of `transitions.ts`. Each gives the next state, and what is to be done. */
import type { Plan } from '../plan/schema/plan-schema.ts';
import { follow, leave, openPlan, step } from './follow.ts';
import { withNote, withoutNotes, withoutOrigin } from './notes.ts';
import { isLinked } from './read-link.ts';
import type { AutosaveChoice } from './report.ts';
import type { AutosaveState, Effect, EventOf, Next, Step } from './state.ts';

/** How long an edit waits for those that follow it at once. */
export const SAVE_WITHIN_MS = 250;
const RETRY_WITHIN_MS = 3000;

const SAVE_SOON: Effect = { type: 'schedule', withinMs: SAVE_WITHIN_MS };

// The plan.

export function changed(state: AutosaveState, { plan }: EventOf<'changed'>): Step {
  return state.canSave ? step({ ...state, unsaved: plan }, SAVE_SOON) : step(state);
}

/** A person was quicker than the storage: what is saved is not opened any more. */
export function changedAtStart(state: AutosaveState, event: EventOf<'changed'>): Step {
  return changed({ ...state, mode: 'different' }, event);
}

export function opened(state: AutosaveState, event: EventOf<'opened'>): Step {
  return whenSaved(state, event);
}

/** The page's own plan makes way for a saved one, which may still come. */
export function openedAtStart(state: AutosaveState, event: EventOf<'opened'>): Step {
  return event.by === 'page' ? step(state) : follow(state, event);
}

/** What was changed while it was allowed is saved. */
export function accessChanged(state: AutosaveState, { canSave }: EventOf<'access-changed'>): Step {
  const { state: next, effects } = canSave ? step(state) : whenSaved(state, undefined);
  return { state: { ...next, canSave }, effects };
}

/** The plan on screen stays. */
export function openFailed(state: AutosaveState, { faults, hasPlan }: EventOf<'open-failed'>): Step {
  const isLink = state.mode === 'link';
  const notes = withoutOrigin(state.notes, 'link');
  const next: AutosaveState = {
    ...state,
    mode: 'different',
    notes: isLink
      ? withNote(notes, { code: 'bad-link', fault: { faults } })
      : withNote(notes, { code: 'damaged', damage: { code: 'plan', faults } }),
  };
  return step(next, ...leave(state), ...(hasPlan ? [] : [{ type: 'open-own-plan' } as const]));
}

export function copyOpened(state: AutosaveState, { id, copy }: EventOf<'copy-opened'>): Step {
  return save(state, copy, { place: 'main', replace: true, next: { type: 'delete-copy', id } });
}

// Links.

export function linkFollowed(state: AutosaveState, event: EventOf<'link-followed'>): Step {
  const { link, isChecked, lacksYears, plan, isAny, hasOwnPlan } = event;
  if (isLinked(plan, link, lacksYears)) return step(state, { type: 'leave-link' });
  return whenSaved(state, { type: 'open-link', link, isChecked, lacksYears, isAny, hasOwnPlan });
}

export function linkFailed(state: AutosaveState, { fault }: EventOf<'link-failed'>): Step {
  return step({ ...state, notes: withNote(state.notes, { code: 'bad-link', fault }) });
}

// The storage.

/** A visit begins with the plan of a link, else with the saved one, else with the page's own. */
export function loadedAtStart(state: AutosaveState, event: EventOf<'loaded'>): Step {
  const { saved, fault, link, isChecked, lacksYears, base, hasOwnPlan } = event;
  const begun = { ...state, notes: notesOfLoading(state, event) };
  if (link !== undefined && !isLinked(saved?.plan, link, lacksYears)) {
    return follow(begun, { type: 'open-link', link, isChecked, lacksYears, isAny: saved !== undefined, hasOwnPlan });
  }
  const left: readonly Effect[] = link === undefined ? [] : [{ type: 'leave-link' }];
  if (saved === undefined) {
    const isNone = state.canSave && fault === undefined;
    const adopted: readonly Effect[] = isNone ? [{ type: 'adopt', saved: undefined }] : [];
    const mode = isNone ? 'current' : 'different';
    return step({ ...begun, mode }, ...left, ...adopted, { type: 'open-own-plan' });
  }
  const choices: readonly AutosaveChoice[] = hasOwnPlan ? ['own-plan', 'close'] : ['close'];
  const values = { code: 'restored', saved: saved.saved, hasOtherBase: saved.base !== base } as const;
  const notes = withNote(withoutOrigin(begun.notes), values, choices);
  return step({ ...begun, mode: 'current', notes }, ...left, { type: 'adopt', saved }, openPlan(saved.plan));
}

export function loadedFromOtherTab(state: AutosaveState, event: EventOf<'loaded'>): Step {
  const { saved } = event;
  const notes = notesOfLoading(state, event);
  // What has been changed since then is saved first.
  if (saved === undefined || state.unsaved !== undefined) return step({ ...state, notes });
  const next: AutosaveState = {
    ...state,
    mode: 'current',
    notes: withNote(withoutOrigin(notes, 'conflict'), { code: 'other-tab', isChosen: true }),
  };
  return step(next, ...leave(state), { type: 'adopt', saved }, openPlan(saved.plan));
}

export function saveDue(state: AutosaveState): Step {
  return whenSaved(state, undefined);
}

export function saved(state: AutosaveState, { place, replaced, damage, next }: EventOf<'saved'>): Step {
  let notes = withoutNotes(state.notes, 'not-saved');
  if (replaced) notes = withNote(withoutNotes(notes, 'own-plan'), { code: 'replaced' });
  if (damage !== undefined) notes = withNote(notes, { code: 'damaged', damage });
  const mode = place === 'main' && state.mode === 'different' ? 'current' : state.mode;
  const settled = { ...state, mode, notes };
  if (next === undefined) return step(settled);
  return follow(settled, 'isAny' in next && state.mode !== 'link' ? { ...next, isAny: true } : next);
}

/** It is tried again; what cannot wait for that goes on. */
export function saveFailed(state: AutosaveState, { plan, fault, next }: EventOf<'save-failed'>): Step {
  const noted = { ...state, notes: withNote(state.notes, { code: 'not-saved', fault }) };
  if (next?.type === 'opened' || next?.type === 'stop') return follow(noted, next);
  return step({ ...noted, unsaved: state.unsaved ?? plan }, { type: 'schedule', withinMs: RETRY_WITHIN_MS });
}

export function saveBlocked(state: AutosaveState, { plan, next }: EventOf<'save-blocked'>): Step {
  // A choice that was made before another tab's changes were known is a person's to make again.
  const isChoice = next?.type === 'open-own-plan' || next?.type === 'open-saved-plan';
  return conflict(state, state.unsaved ?? plan, isChoice ? undefined : next);
}

export function storageFailed(state: AutosaveState, { fault }: EventOf<'storage-failed'>): Step {
  return step({ ...state, notes: withNote(state.notes, { code: 'not-saved', fault }) });
}

/** Its changes are shown here, unless this tab has changes of its own. */
export function otherTabSaved(state: AutosaveState, event: EventOf<'other-tab-saved'>): Step {
  const { saved, plan, isSeen, isTyping } = event;
  if (plan !== undefined && (state.unsaved !== undefined || isTyping || !isSeen))
    return conflict(state, plan, undefined);
  const notes = withNote(withoutOrigin(state.notes), { code: 'other-tab', isChosen: false });
  return step({ ...state, notes }, { type: 'adopt', saved }, openPlan(saved.plan));
}

// Choices.

export function ownPlanChosen(state: AutosaveState): Step {
  return whenSaved(state, { type: 'open-own-plan' });
}

export function savedPlanChosen(state: AutosaveState): Step {
  return whenSaved(state, { type: 'open-saved-plan' });
}

export function otherTabChosen(state: AutosaveState, { plan }: EventOf<'other-tab-chosen'>): Step {
  return state.canSave ? saveCopy(state, plan, { type: 'take-other-tab' }) : step(state);
}

export function thisPlanChosen(state: AutosaveState, { plan }: EventOf<'this-plan-chosen'>): Step {
  if (!state.canSave) return step(state);
  return save(state, plan, { place: 'main', replace: true, next: { type: 'keep-this-plan' } });
}

export function copyChosen(state: AutosaveState, { id, copy }: EventOf<'copy-chosen'>): Step {
  return state.canSave ? whenSaved(state, { type: 'restore-copy', id, copy }) : step(state);
}

export function copyChosenInConflict(state: AutosaveState, { id, copy, plan }: EventOf<'copy-chosen'>): Step {
  return state.canSave ? saveCopy(state, plan, { type: 'restore-copy', id, copy }) : step(state);
}

export function retryChosen(state: AutosaveState, { canRead }: EventOf<'retry-chosen'>): Step {
  return whenSaved(canRead ? { ...state, notes: withoutNotes(state.notes, 'not-saved') } : state, undefined);
}

export function noteClosed(state: AutosaveState, { code }: EventOf<'note-closed'>): Step {
  return step({ ...state, notes: withoutNotes(state.notes, code) });
}

export function stop(state: AutosaveState): Step {
  return whenSaved(state, { type: 'stop' });
}

// What they are made of.

/** Saves what is not saved yet, and then goes on with `next`. */
function whenSaved(state: AutosaveState, next: Next | undefined): Step {
  const { unsaved, canSave, mode } = state;
  if (unsaved !== undefined && canSave) {
    const place = mode === 'conflict' || mode === 'link' ? 'copy' : 'main';
    return save(state, unsaved, { place, replace: mode === 'different', next });
  }
  return next === undefined ? step(state) : follow(state, next);
}

function save(state: AutosaveState, plan: Plan, how: Omit<Extract<Effect, { type: 'save' }>, 'type' | 'plan'>): Step {
  return step({ ...state, unsaved: undefined }, { type: 'save', plan, ...how });
}

/** Another tab has saved changes that this one lacks: the plan on screen goes into a copy. */
function conflict(state: AutosaveState, plan: Plan, next: Next | undefined): Step {
  const notes = withNote(withoutOrigin(state.notes), { code: 'conflict' });
  return saveCopy({ ...state, mode: 'conflict', notes }, plan, next);
}

function saveCopy(state: AutosaveState, plan: Plan, next: Next | undefined): Step {
  return save(state, plan, { place: 'copy', replace: false, next });
}

function notesOfLoading({ notes }: AutosaveState, { damage, fault }: EventOf<'loaded'>): AutosaveState['notes'] {
  const damaged = damage === undefined ? notes : withNote(notes, { code: 'damaged', damage });
  return fault === undefined ? damaged : withNote(damaged, { code: 'not-saved', fault });
}
