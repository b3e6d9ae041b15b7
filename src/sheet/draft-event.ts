/** Lets whoever saves drafts know what is typed in a field of the sheet. */

/** Marks a field whose text waits for a button, not for the field to be left: until then it is unfinished. */
export const WAITING_FIELD = 'data-runnel-waits';

/** Marks a field whose text is kept by whoever shows it, so that it needs no draft. */
export const KEPT_FIELD = 'data-runnel-kept';

/** Something was typed in a field that does not stand inside the grid, or the field is gone. Sent from the grid itself. */
export class DraftEvent extends Event {
  static readonly type = 'runnel-draft';
  readonly field: HTMLTextAreaElement;

  constructor(field: HTMLTextAreaElement) {
    super(DraftEvent.type, { bubbles: true, composed: true });
    this.field = field;
  }
}
