import { consume } from '@lit/context';
import { property } from 'lit/decorators.js';
import type { SheetView } from '../../sheet/sheet-view.ts';
import { LateElement } from '../shared/late-element.ts';
import { sheetViewContext } from '../shared/sheet-view-context.ts';
import type { FilesBody } from './files-body.ts';

/**
 * @summary The plan as a file, the season on paper, as a calendar, as a workbook that computes on and as a table, tables imported after a preview of what they would change, the season in review, and next year's plan.
 *
 * Stands inside a `runnel-plan`. A table is CSV or a workbook (.xlsx): a season as it was written here, minutes set by hand, a rain log or
 * daily weather. Nothing is imported before a person asks for it, and then it is one step that undo takes back. A read-only plan is saved
 * and printed, and imports nothing. Next year's plan is a file of its own; the plan that it is made of stays as it is.
 *
 * @fires {RunnelOpenEvent} runnel-open - A plan file was chosen, or next year's plan is to be opened.
 * @fires {RunnelEditEvent} runnel-edit - A table was imported, or the time zone or the opening of the window was set for a calendar.
 * @fires {RunnelHistoryEvent} runnel-history - The import is to be undone.
 *
 * @csspart title - The heading.
 * @csspart drop - The place where a table is dropped.
 *
 * @cssprop --runnel-paper - Ground.
 * @cssprop --runnel-ink - Text and controls.
 * @cssprop --runnel-quiet - Lesser text.
 * @cssprop --runnel-line - Rules.
 * @cssprop --runnel-short - What was refused.
 */
export class RunnelFiles extends LateElement<FilesBody> {
  /** What the grid of the plan shows; undefined where there is none. */
  @consume({ context: sheetViewContext, subscribe: true })
  @property({ attribute: false })
  sheetView: SheetView | undefined;

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: string | undefined;

  protected override readonly lateWords = 'files';

  protected override async fetchBody(): Promise<FilesBody> {
    const { FilesBody } = await import('./files-body.ts');
    return new FilesBody(this, this.plan);
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-files': RunnelFiles;
  }
}
