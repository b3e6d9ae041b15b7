import { consume } from '@lit/context';
import { property } from 'lit/decorators.js';
import type { SheetView } from '../../sheet/sheet-view.ts';
import { LateElement } from '../shared/late-element.ts';
import { sheetViewContext } from '../shared/sheet-view-context.ts';
import type { FilesBody } from './files-body.ts';

/**
 * @summary The plan as a file, the season as a table, tables imported after a preview of what they would change, and paper.
 *
 * Stands inside a `runnel-plan`. A table is CSV: minutes set by hand, a rain log or daily weather. Nothing is
 * imported before a person asks for it, and then it is one step that undo takes back. A read-only plan is saved and printed, and
 * imports nothing.
 *
 * @fires {RunnelOpenEvent} runnel-open - A plan file was chosen.
 * @fires {RunnelEditEvent} runnel-edit - A table was imported.
 * @fires {RunnelHistoryEvent} runnel-history - The import is to be undone.
 *
 * @csspart title - The heading.
 * @csspart drop - The place where a table is dropped.
 *
 * @cssprop --runnel-paper - Ground.
 * @cssprop --runnel-ink - Text.
 * @cssprop --runnel-quiet - Lesser text.
 * @cssprop --runnel-line - Rules.
 * @cssprop --runnel-water - Controls.
 * @cssprop --runnel-short - What was refused.
 */
export class RunnelFiles extends LateElement<FilesBody> {
  /** What the grid of the plan shows; undefined where there is none. */
  @consume({ context: sheetViewContext, subscribe: true })
  @property({ attribute: false })
  sheetView: SheetView | undefined;

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
