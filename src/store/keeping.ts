/** How a plan is kept between visits, for whoever shows it. */

/** `off`: it is not to be. `asking`: it waits for a choice, and what is typed meanwhile is put aside. */
export type KeepingStatus = 'off' | 'kept' | 'not-kept' | 'asking';

export type KeepingNoteKind =
  | 'returned'
  | 'page-plan'
  | 'replaced'
  | 'damaged'
  | 'not-kept'
  | 'other-tab'
  | 'two-tabs'
  | 'link'
  | 'bad-link';

/** What can be chosen in a note. */
export type KeepingChoice =
  | 'page-plan'
  | 'kept-plan'
  | 'other-tab'
  | 'this-plan'
  | 'save'
  | 'retry'
  | 'close'
  // Of a plan that was put aside.
  | 'bring-back'
  | 'save-aside'
  | 'throw-away'
  // Of a text that was typed and not entered.
  | 'copy-text'
  | 'forget-text';

export interface KeepingNote {
  readonly kind: KeepingNoteKind;
  /** For a reader: what is so, and what can be done. */
  readonly text: string;
  readonly choices: readonly KeepingChoice[];
}

/** A plan that would have been overwritten. */
export interface PutAside {
  readonly id: string;
  /** Undefined where it cannot be read; it can be had as a file all the same. */
  readonly name: string | undefined;
  /** The instant of its last change, ISO 8601. */
  readonly saved: string | undefined;
}

/** What was being typed in a tab when it went, and is no part of any plan. */
export interface LostText {
  readonly id: string;
  /** The field in words; empty where it is not known. */
  readonly of: string;
  readonly text: string;
}

export interface Keeping {
  readonly status: KeepingStatus;
  readonly notes: readonly KeepingNote[];
  readonly putAside: readonly PutAside[];
  readonly typed: readonly LostText[];
}

export const NOT_KEPT: Keeping = Object.freeze({ status: 'off', notes: [], putAside: [], typed: [] });
