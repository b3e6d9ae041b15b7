import { ContextConsumer, ContextRoot } from '@lit/context';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import { NO_PLAN } from '../../store/no-plan.ts';
import type { PlanView, Selection } from '../../store/plan-view.ts';
import { RunnelEditEvent } from './events/edit-event.ts';
import { RunnelHistoryEvent } from './events/history-event.ts';
import { RunnelSelectEvent } from './events/select-event.ts';
import { planContext } from './plan-context.ts';

let root: ContextRoot | undefined;

/** Keeps the requests of views that are defined before their plan, and repeats them when it comes. */
function keepEarlyRequests(): void {
  if (root !== undefined) return;
  root = new ContextRoot();
  root.attach(document.documentElement);
}

/** Holds the plan around a view, asks for an update when it changes, and sends the view's wishes up to it. */
export class PlanConsumer implements ReactiveController {
  /** Outside any plan: an empty one. */
  view: PlanView = NO_PLAN;

  readonly #host: ReactiveControllerHost & HTMLElement;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
    new ContextConsumer(host, {
      context: planContext,
      subscribe: true,
      callback: (view) => {
        this.view = view;
      },
    });
  }

  // Runs before the consumer's own, since this controller was added first.
  hostConnected(): void {
    keepEarlyRequests();
  }

  hostDisconnected(): void {
    this.view = NO_PLAN;
    this.#host.requestUpdate();
  }

  edit(edit: Edit): void {
    this.#host.dispatchEvent(new RunnelEditEvent(edit));
  }

  select(selection: Selection): void {
    this.#host.dispatchEvent(new RunnelSelectEvent(selection));
  }

  step(step: HistoryStep): void {
    this.#host.dispatchEvent(new RunnelHistoryEvent(step));
  }
}
