import type { ReactiveControllerHost, TemplateResult } from 'lit';
import type { Noticed } from '../../remedies/notices/remedy.ts';
import { type RemediesShown, remediesTemplate } from './remedies-template.ts';
import { RemedyWork } from './remedy-work.ts';

/** Works out what would mend the notices that somebody looks at, and shows it. */
export class RemedyDesk {
  readonly #work: RemedyWork;

  constructor(host: ReactiveControllerHost) {
    this.#work = new RemedyWork(host);
  }

  /** Goes on with these notices, and gives up all others. */
  for(wanted: readonly Noticed[]): void {
    this.#work.for(wanted);
  }

  template(of: Noticed, shown: Omit<RemediesShown, 'notice' | 'remedies' | 'gardenName'>): TemplateResult {
    const remedies = this.#work.found(of);
    return remediesTemplate({ ...shown, notice: of.notice, remedies, gardenName: of.plan.name });
  }
}
