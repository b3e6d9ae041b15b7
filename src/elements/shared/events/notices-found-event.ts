/** Tells the element around a list of notices how many it holds. */
export class NoticesFoundEvent extends Event {
  static readonly type = 'runnel-notices-found';

  readonly urgent: number;
  readonly all: number;

  constructor(urgent: number, all: number) {
    super(NoticesFoundEvent.type, { bubbles: true, composed: true });
    this.urgent = urgent;
    this.all = all;
  }
}

declare global {
  interface HTMLElementEventMap {
    'runnel-notices-found': NoticesFoundEvent;
  }
}
