import type { AutosaveReport } from '../../../autosave/report.ts';

/** Tells how the plan is saved between visits, whenever that is another way than before. */
export class RunnelAutosaveEvent extends Event {
  static readonly type = 'runnel-autosave';

  readonly autosave: AutosaveReport;

  constructor(autosave: AutosaveReport) {
    super(RunnelAutosaveEvent.type, { bubbles: true, composed: true });
    this.autosave = autosave;
  }
}
