/**
 * What autosave does, as a table: for every event and mode a step to the next state and its effects, or that the event is ignored.
 * Pure; `autosave.ts` runs it. Nothing is overwritten that this tab has not seen, and what would be lost becomes a copy first.
 */

import { madeWay } from './follow.ts';
import type { AutosaveEvent, AutosaveState, EventOf, EventType, Mode, Step } from './state.ts';
import {
  accessChanged,
  changed,
  changedAtStart,
  copyChosen,
  copyChosenInConflict,
  copyOpened,
  linkFailed,
  linkFollowed,
  loadedAtStart,
  loadedFromOtherTab,
  noteClosed,
  opened,
  openedAtStart,
  openFailed,
  otherTabChosen,
  otherTabSaved,
  ownPlanChosen,
  retryChosen,
  saveBlocked,
  saveDue,
  saved,
  savedPlanChosen,
  saveFailed,
  stop,
  storageFailed,
  thisPlanChosen,
} from './steps.ts';

export type Row<Type extends EventType> = (state: AutosaveState, event: EventOf<Type>) => Step;
type Cell<Type extends EventType> = Row<Type> | 'ignored';

const ____ = 'ignored';

/** Once autosave is stopped, every event is ignored. */
export const COLUMNS = ['starting', 'current', 'different', 'conflict', 'link'] as const satisfies readonly Mode[];

type Columns<Type extends EventType> = readonly [Cell<Type>, Cell<Type>, Cell<Type>, Cell<Type>, Cell<Type>];

// biome-ignore format: one line an event, one column a mode
export const TRANSITIONS: { readonly [Type in EventType]: Columns<Type> } = {
  //                     starting        current          different        conflict              link
  changed:             [changedAtStart, changed,         changed,         changed,              changed],
  opened:              [openedAtStart,  opened,          opened,          opened,               opened],
  'access-changed':    [accessChanged,  accessChanged,   accessChanged,   accessChanged,        accessChanged],
  'open-failed':       [____,           openFailed,      openFailed,      ____,                 openFailed],
  'copy-opened':       [____,           ____,            copyOpened,      ____,                 ____],
  'link-followed':     [linkFollowed,   linkFollowed,    linkFollowed,    linkFollowed,         linkFollowed],
  'link-failed':       [linkFailed,     linkFailed,      linkFailed,      linkFailed,           linkFailed],
  loaded:              [loadedAtStart,  ____,            ____,            loadedFromOtherTab,   ____],
  'save-due':          [____,           saveDue,         saveDue,         saveDue,              saveDue],
  saved:               [____,           saved,           saved,           saved,                saved],
  'save-failed':       [____,           saveFailed,      saveFailed,      saveFailed,           saveFailed],
  'save-blocked':      [____,           saveBlocked,     ____,            ____,                 ____],
  'made-way':          [____,           madeWay,         madeWay,         ____,                 madeWay],
  'storage-failed':    [storageFailed,  storageFailed,   storageFailed,   storageFailed,        storageFailed],
  'other-tab-saved':   [____,           otherTabSaved,   ____,            ____,                 ____],
  'own-plan-chosen':   [____,           ownPlanChosen,   ownPlanChosen,   ____,                 ownPlanChosen],
  'saved-plan-chosen': [____,           ____,            savedPlanChosen, ____,                 savedPlanChosen],
  'other-tab-chosen':  [____,           ____,            ____,            otherTabChosen,       ____],
  'this-plan-chosen':  [____,           ____,            ____,            thisPlanChosen,       thisPlanChosen],
  'copy-chosen':       [____,           copyChosen,      copyChosen,      copyChosenInConflict, copyChosen],
  'retry-chosen':      [retryChosen,    retryChosen,     retryChosen,     retryChosen,          retryChosen],
  'note-closed':       [noteClosed,     noteClosed,      noteClosed,      noteClosed,           noteClosed],
  stop:                [stop,           stop,            stop,            stop,                 stop],
};

export function transition(state: AutosaveState, event: AutosaveEvent): Step {
  const row = rowFor(state.mode, event.type);
  return row === undefined ? { state, effects: [] } : row(state, event);
}

/** Undefined where the event is ignored. */
export function rowFor<Type extends EventType>(mode: Mode, type: Type): Row<EventType> | undefined {
  const cell = mode === 'stopped' ? ____ : TRANSITIONS[type][COLUMNS.indexOf(mode)];
  return cell === ____ ? undefined : (cell as Row<EventType> | undefined);
}
