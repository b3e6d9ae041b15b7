import type { ShownPart } from '../../../sheet/grid/season-setting.ts';

/** Part of the season that a sheet shows, or is to show. */
export interface Frame extends ShownPart {
  /** The view that says so: a sheet follows others, and not itself. */
  readonly from: Element;
  /** Whether the keyboard is to go into the sheet. */
  readonly enters?: boolean;
}

/** Tells the plan around which weeks and zones a sheet shows; from a season's strip, which it is to show. */
export class RunnelFrameEvent extends Event {
  static readonly type = 'runnel-frame';

  readonly frame: Frame;

  constructor(frame: Frame) {
    super(RunnelFrameEvent.type, { bubbles: true, composed: true });
    this.frame = frame;
  }
}
