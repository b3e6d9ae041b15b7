/** How a plan is saved between visits, for whoever shows it. Codes and values, no words. */
import type { LinkErrorCode } from '../exchange/link/plan-text-from-link.ts';
import type { Fault } from '../plan/reading/fault.ts';
import type { SavedPlanDamage } from './saved-plan.ts';
import type { StorageFault } from './text-storage.ts';

/** `off`: nothing is saved. `asking`: it waits for a choice, and what is changed meanwhile goes into a copy. */
export type AutosaveStatus = 'off' | 'saved' | 'not-saved' | 'asking';

/** What can be chosen in a note. */
export type AutosaveChoice =
  | 'own-plan'
  | 'saved-plan'
  | 'other-tab'
  | 'this-plan'
  | 'save-file'
  | 'retry'
  | 'close'
  // Of a copy.
  | 'restore-copy'
  | 'save-copy'
  | 'delete-copy'
  // Of a draft.
  | 'copy-draft'
  | 'delete-draft';

/** Why the plan of a link was not opened: the link itself, or the plan in it. */
export type LinkFault = { readonly code: LinkErrorCode } | { readonly faults: readonly Fault[] };

/** What there is to say, each code once. */
export type AutosaveNote = NoteValues & { readonly choices: readonly AutosaveChoice[] };

export type NoteValues =
  /** The visit began with what was saved at that instant, ISO 8601. `hasOtherBase`: the page has another plan of its own since. */
  | { readonly code: 'restored'; readonly saved: string; readonly hasOtherBase: boolean }
  /** The page's own plan is on screen; the saved one is still saved, or is a copy now. */
  | { readonly code: 'own-plan'; readonly savedPlan: 'saved' | 'copy' }
  /** The plan on screen is the saved one now; the one before is a copy. */
  | { readonly code: 'replaced' }
  /** What was saved cannot be read; it is a copy now. */
  | { readonly code: 'damaged'; readonly damage: SavedPlanDamage }
  | { readonly code: 'not-saved'; readonly fault: StorageFault }
  /** Another tab's changes are shown here. `isChosen`: instead of this tab's, which are a copy. `isOnPage`: as of `conflict`. */
  | { readonly code: 'other-tab'; readonly isChosen: boolean; readonly isOnPage?: boolean }
  /** Changed here and in another tab; `isOnPage`: no tab, but another plan of the same page that has the same key. */
  | { readonly code: 'conflict'; readonly isOnPage?: boolean }
  /** The plan came with a link. `canSave`: the page saves plans, though not yet this one. `isChecked`: by the link's checksum. `lacksYears`: its real years were left out. */
  | { readonly code: 'link'; readonly canSave: boolean; readonly isChecked: boolean; readonly lacksYears: boolean }
  | { readonly code: 'bad-link'; readonly fault: LinkFault };

export type AutosaveNoteCode = AutosaveNote['code'];

/** A plan that would have been overwritten. */
export interface SavedCopy {
  readonly id: string;
  /** Undefined where it cannot be read; it can be had as a file all the same. */
  readonly name: string | undefined;
  /** The instant of its last change, ISO 8601. */
  readonly saved: string | undefined;
}

/** What was being typed in a tab when it went, and is no part of any plan. */
export interface Draft {
  readonly id: string;
  /** The field in words; empty where it is not known. */
  readonly field: string;
  readonly text: string;
}

export interface AutosaveReport {
  readonly status: AutosaveStatus;
  readonly notes: readonly AutosaveNote[];
  readonly copies: readonly SavedCopy[];
  readonly drafts: readonly Draft[];
}

export const AUTOSAVE_OFF: AutosaveReport = Object.freeze({ status: 'off', notes: [], copies: [], drafts: [] });
