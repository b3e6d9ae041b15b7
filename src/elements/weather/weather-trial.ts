/** Weeks that are tried hotter or drier than usual: the season that would come of it, before anything is kept. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { computingSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { planSeasonOf } from '../../store/plan-view.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { sliced } from './slices.ts';

export type DepartureEdit = Extract<Edit, { readonly type: 'set-departure' }>;

export type TrialState =
  | { readonly step: 'none' | 'busy' }
  | { readonly step: 'done'; readonly edits: readonly DepartureEdit[]; readonly season: Season; readonly from: Plan }
  /** `after`: the plan that it made. */
  | { readonly step: 'kept'; readonly after: Plan };

const NONE: TrialState = { step: 'none' };

export class WeatherTrial implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: PlanConsumer;
  #turn = 0;
  state: TrialState = NONE;

  constructor(host: ReactiveControllerHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    host.addController(this);
  }

  /** With another plan, what is tried is over. */
  hostUpdate(): void {
    const { state } = this;
    const { plan } = this.#plan.view;
    if (state.step === 'done' && state.from !== plan) this.state = NONE;
    if (state.step === 'kept' && state.after !== plan) this.state = NONE;
  }

  hostDisconnected(): void {
    this.drop();
  }

  async try(edits: readonly DepartureEdit[]): Promise<void> {
    const { plan: from } = this.#plan.view;
    const before = planSeasonOf(this.#plan.view);
    const result = from && tryEdit(from, { type: 'together', edits });
    if (from === undefined || result?.ok !== true) return;
    this.#turn += 1;
    const turn = this.#turn;
    this.#show({ step: 'busy' });
    const isWanted = () => turn === this.#turn;
    const season = await sliced(computingSeason(result.plan, before), isWanted);
    if (season !== undefined && isWanted()) this.#show({ step: 'done', edits, season, from });
  }

  /** Into the plan, or beside it under a name. */
  keep(edits: readonly DepartureEdit[], name?: string): void {
    const [only] = edits;
    const own: Edit = only !== undefined && edits.length === 1 ? only : { type: 'together', edits };
    const edit: Edit = name === undefined ? own : { type: 'set-what-if', name, edits };
    onceAnswered(this.#plan.edit(edit), (result) => {
      if (result.ok) this.#show({ step: 'kept', after: result.plan });
    });
  }

  drop(): void {
    this.#turn += 1;
    this.#show(NONE);
  }

  #show(state: TrialState): void {
    this.state = state;
    this.#host.requestUpdate();
  }
}
