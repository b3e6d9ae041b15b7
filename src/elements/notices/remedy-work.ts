/** Works out the remedies of the notices that somebody looks at, in slices, and keeps them until the plan changes. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Notice } from '../../explain/notices/notice.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { searchRemedies } from '../../remedies/notices/remedies-of.ts';
import type { Noticed, Remedy } from '../../remedies/notices/remedy.ts';
import { inSlices } from '../shared/in-slices.ts';

/** A notice is of one season; a plan that only goes by another name may share it. */
const kept = new WeakMap<Notice, { readonly plan: Plan; readonly remedies: readonly Remedy[] }>();

export class RemedyWork implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #under = new Map<Notice, Noticed>();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Undefined while they are being worked out. */
  found({ plan, notice }: Noticed): readonly Remedy[] | undefined {
    const known = kept.get(notice);
    return known?.plan === plan ? known.remedies : undefined;
  }

  /** Goes on with these, begins what is new among them, and gives up the others. */
  for(wanted: readonly Noticed[]): void {
    const under = new Map(this.#under);
    this.#under.clear();
    for (const of of wanted) {
      if (this.found(of) !== undefined) continue;
      const before = under.get(of.notice);
      const isGoingOn = before?.plan === of.plan;
      this.#under.set(of.notice, isGoingOn ? before : of);
      if (!isGoingOn) this.#begin(of);
    }
  }

  hostDisconnected(): void {
    this.#under.clear();
  }

  #begin(of: Noticed): void {
    inSlices({
      steps: searchRemedies(of),
      isWanted: () => this.#under.get(of.notice) === of,
      onEnd: (remedies) => {
        kept.set(of.notice, { plan: of.plan, remedies });
        this.#under.delete(of.notice);
        this.#host.requestUpdate();
      },
    });
  }
}
