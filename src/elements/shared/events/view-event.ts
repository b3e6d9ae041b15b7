import type { SheetView } from '../../../sheet/sheet-view.ts';

/** Tells the plan around a grid what its sheet shows. */
export class RunnelViewEvent extends Event {
  static readonly type = 'runnel-view';

  readonly view: SheetView;

  /** Aborted once the sheet shows something else, or is no longer there. */
  readonly ended: AbortSignal;

  constructor(view: SheetView, ended: AbortSignal) {
    super(RunnelViewEvent.type, { bubbles: true, composed: true });
    this.view = view;
    this.ended = ended;
  }
}
