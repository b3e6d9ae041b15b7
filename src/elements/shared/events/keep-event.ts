import type { Keeping } from '../../../store/keeping.ts';

/** Tells how the plan is kept between visits, whenever that is another way than before. */
export class RunnelKeepEvent extends Event {
  static readonly type = 'runnel-keep';

  readonly keeping: Keeping;

  constructor(keeping: Keeping) {
    super(RunnelKeepEvent.type, { bubbles: true, composed: true });
    this.keeping = keeping;
  }
}
