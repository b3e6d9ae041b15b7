/** The states of autosave, what happens to it, and what it asks for. `transitions.ts` is the table. */

import type { Fault } from '../plan/reading/fault.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { AutosaveNote, AutosaveNoteCode, LinkFault } from './report.ts';
import type { SavedPlan, SavedPlanDamage } from './saved-plan.ts';
import type { Loaded } from './saved-plans.ts';
import type { StorageFault } from './text-storage.ts';

/**
 * `starting`: what is saved, and the link, are being read.
 * `current`: the plan on screen is the saved one, or none is saved yet. Changes are saved over it.
 * `different`: another plan is saved, or it is not known which. The first change makes that one a copy.
 * `conflict`: another tab has saved changes that this one lacks. Changes go into a copy until a person chooses.
 * `link`: the plan came with a link. Changes go into a copy until a person chooses.
 * `stopped`: nothing is saved any more.
 */
export const MODES = ['starting', 'current', 'different', 'conflict', 'link', 'stopped'] as const;
export type Mode = (typeof MODES)[number];

export interface AutosaveState {
  readonly mode: Mode;
  /** Whether anything may be saved: the page saves plans, and this one can be edited. */
  readonly canSave: boolean;
  /** The newest plan that is to be saved. */
  readonly unsaved: Plan | undefined;
  /** Each code once, the newest last. */
  readonly notes: readonly AutosaveNote[];
}

/** Another plan was opened. `isAny`: whether one is saved; undefined where that cannot be known. */
interface Opened {
  readonly type: 'opened';
  readonly plan: Plan;
  readonly by: 'person' | 'page';
  readonly isAny: boolean | undefined;
}

/** The plan of a link, whether its checksum was right, and whether there is another one to go back to. */
interface LinkedPlan {
  readonly link: Plan;
  readonly isChecked: boolean;
  readonly lacksYears: boolean;
  readonly isAny: boolean | undefined;
  readonly hasOwnPlan: boolean;
}

/** What follows once what is on screen is saved. */
export type Next =
  | Opened
  | (LinkedPlan & { readonly type: 'open-link' })
  | { readonly type: 'open-own-plan' }
  | { readonly type: 'open-saved-plan' }
  | { readonly type: 'take-other-tab' }
  | { readonly type: 'keep-this-plan' }
  | { readonly type: 'restore-copy'; readonly id: string; readonly copy: Plan }
  | { readonly type: 'delete-copy'; readonly id: string }
  | { readonly type: 'stop' };

/** `plan` is the one on screen, or the one that was to be saved. */
export type AutosaveEvent =
  // The plan.
  /** A person has edited, undone or redone. */
  | { readonly type: 'changed'; readonly plan: Plan }
  | Opened
  /** Whether anything may be saved is another answer now. */
  | { readonly type: 'access-changed'; readonly canSave: boolean }
  /** A plan that was to be opened could not be. `hasPlan`: another one is on screen. */
  | { readonly type: 'open-failed'; readonly faults: readonly Fault[]; readonly hasPlan: boolean }
  | { readonly type: 'copy-opened'; readonly id: string; readonly copy: Plan }
  // Links.
  | (LinkedPlan & { readonly type: 'link-followed'; readonly plan: Plan | undefined })
  | { readonly type: 'link-failed'; readonly fault: LinkFault }
  // The storage.
  /** What is saved was read. `base`: address of the page's own plan. */
  | (Loaded & {
      readonly type: 'loaded';
      readonly link: Plan | undefined;
      /** Of the link. */
      readonly isChecked: boolean;
      readonly lacksYears: boolean;
      readonly base: string | undefined;
      readonly hasOwnPlan: boolean;
    })
  /** The time to save has come, or the tab goes. */
  | { readonly type: 'save-due' }
  | {
      readonly type: 'saved';
      readonly place: 'main' | 'copy';
      readonly replaced: boolean;
      readonly damage: SavedPlanDamage | undefined;
      readonly next: Next | undefined;
    }
  | { readonly type: 'save-failed'; readonly plan: Plan; readonly fault: StorageFault; readonly next: Next | undefined }
  /** Nothing was saved, since another tab has. */
  | { readonly type: 'save-blocked'; readonly plan: Plan; readonly next: Next | undefined }
  /** The saved plan is a copy now: the page's own takes its place. */
  | { readonly type: 'made-way' }
  /** Something beside the plan could not be stored. */
  | { readonly type: 'storage-failed'; readonly fault: StorageFault }
  /** Another tab has saved. `isSeen`: with all that this tab has saved. `isTyping`: something is typed here and not entered. */
  | {
      readonly type: 'other-tab-saved';
      readonly saved: SavedPlan;
      readonly plan: Plan | undefined;
      readonly isSeen: boolean;
      readonly isTyping: boolean;
    }
  // Choices.
  | { readonly type: 'own-plan-chosen' }
  | { readonly type: 'saved-plan-chosen' }
  | { readonly type: 'other-tab-chosen'; readonly plan: Plan }
  | { readonly type: 'this-plan-chosen'; readonly plan: Plan }
  | { readonly type: 'copy-chosen'; readonly id: string; readonly copy: Plan; readonly plan: Plan }
  /** `canRead`: the storage can be read again. */
  | { readonly type: 'retry-chosen'; readonly canRead: boolean }
  | { readonly type: 'note-closed'; readonly code: AutosaveNoteCode }
  | { readonly type: 'stop' };

export type EventType = AutosaveEvent['type'];
export type EventOf<Type extends EventType> = Extract<AutosaveEvent, { readonly type: Type }>;

/** What a transition asks for; done in order. What comes of it is the next event. */
export type Effect =
  /** Ends in `saved`, `save-failed` or `save-blocked`. `replace`: what lies there becomes a copy first. */
  | {
      readonly type: 'save';
      readonly plan: Plan;
      readonly place: 'main' | 'copy';
      readonly replace: boolean;
      readonly next: Next | undefined;
    }
  /** `save-due` comes no later than that. */
  | { readonly type: 'schedule'; readonly withinMs: number }
  /** Ends in `loaded`. */
  | { readonly type: 'load' }
  /** From now on the plan on screen counts as what is saved, or as the first that will be. */
  | { readonly type: 'adopt'; readonly saved: SavedPlan | undefined }
  /** Ends in `made-way` or `storage-failed`. */
  | { readonly type: 'make-way' }
  /** May end in `open-failed`. */
  | { readonly type: 'open'; readonly plan: Plan }
  /** Ends in `copy-opened` or `open-failed`. */
  | { readonly type: 'open-copy'; readonly id: string; readonly copy: Plan }
  /** Ends in `opened`, once it has come. */
  | { readonly type: 'open-own-plan' }
  /** The copy that this tab writes to stays as it is. */
  | { readonly type: 'release-copy' }
  | { readonly type: 'remove-own-copy' }
  | { readonly type: 'delete-copy'; readonly id: string }
  /** Takes the plan out of the page's address. */
  | { readonly type: 'leave-link' }
  /** Listens to nothing any more. */
  | { readonly type: 'end' };

export interface Step {
  readonly state: AutosaveState;
  readonly effects: readonly Effect[];
}

export type EffectOf<Type extends Effect['type']> = Extract<Effect, { readonly type: Type }>;
