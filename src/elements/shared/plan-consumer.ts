import { ContextConsumer, ContextRoot } from '@lit/context';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { HistoryStep } from '../../plan/history/history-key.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import { NO_PLAN } from '../../store/no-plan.ts';
import type { PlanView, Selection } from '../../store/plan-view.ts';
import { refusedFor } from '../../store/refusals.ts';
import { ElementLanguage } from './element-language.ts';
import { RunnelEditEvent } from './events/edit-event.ts';
import { RunnelHistoryEvent } from './events/history-event.ts';
import { RunnelSelectEvent } from './events/select-event.ts';
import { markOutside, markupAround } from './outside-plan.ts';
import { planContext } from './plan-context.ts';
import { resolveLocale } from './resolve-locale.ts';
import { checkToday } from './today-here.ts';
import { warnDeveloper } from './warn-developer.ts';

export type EditAnswer = EditResult | Promise<EditResult>;

/** Goes on at once with an answer that is there. */
export function onceAnswered(answer: EditAnswer, then: (result: EditResult) => void): void {
  if (answer instanceof Promise) void answer.then(then);
  else then(answer);
}

let root: ContextRoot | undefined;

/** Keeps the requests of views that are defined before their plan, and repeats them when it comes. */
function keepEarlyRequests(): void {
  if (root !== undefined) return;
  root = new ContextRoot();
  root.attach(document.documentElement);
}

/** So long a page may take to put a plan around a view before whoever makes it is warned. */
const SEARCH_MS = 1000;

/** Holds the plan around a view, asks for an update when it changes, and sends the view's requests up to it. */
export class PlanConsumer implements ReactiveController {
  static readonly #consumers = new WeakMap<object, PlanConsumer>();

  /** The one of an element that shows a plan. */
  static of(host: object): PlanConsumer | undefined {
    return PlanConsumer.#consumers.get(host);
  }

  /** Outside any plan: an empty one, in the page's language. */
  view: PlanView = NO_PLAN;
  /** Why the last edit that this view sent was refused; empty where it was accepted, and once the plan is another. */
  refused: readonly Fault[] = [];
  /** Whether what this view asked for was done at once, and it has not been drawn since. */
  isDoneAtOnce = false;

  readonly #host: ReactiveControllerHost & HTMLElement;
  /** The view where no plan has given one. */
  #outside: PlanView = NO_PLAN;
  #search: ReturnType<typeof setTimeout> | undefined;
  readonly #language = new ElementLanguage((locale) => {
    const isOutside = this.view === this.#outside;
    this.#outside = markOutside(Object.freeze({ ...NO_PLAN, locale }), this.#host);
    if (!isOutside) return;
    this.view = this.#outside;
    this.#host.requestUpdate();
  });

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    PlanConsumer.#consumers.set(host, this);
    host.addController(this);
    new ContextConsumer(host, {
      context: planContext,
      subscribe: true,
      callback: (view) => {
        if (view.plan !== this.view.plan) this.refused = [];
        this.view = view;
      },
    });
  }

  // Runs before the consumer's own, since this controller was added first.
  hostConnected(): void {
    keepEarlyRequests();
    this.#language.connect();
    this.#language.want(resolveLocale(this.#host, undefined));
    this.#search = setTimeout(() => this.#warnOutside(), SEARCH_MS);
  }

  hostUpdate(): void {
    this.isDoneAtOnce = false;
    checkToday(this.#host);
  }

  hostDisconnected(): void {
    this.#language.disconnect();
    clearTimeout(this.#search);
    this.view = this.#outside;
    this.refused = [];
    this.#host.requestUpdate();
  }

  #warnOutside(): void {
    const markup = this.view === this.#outside ? markupAround(this.view) : undefined;
    if (markup === undefined) return;
    warnDeveloper(this.#host, `there is no plan around <${this.#host.localName}>. Write ${markup}`);
  }

  /**
   * Sends an edit up to the plan. `unanswered` is the code of its fault where there is none around the view. The answer is promised
   * where its season takes long.
   */
  edit(edit: Edit): EditAnswer {
    const event = new RunnelEditEvent(edit);
    this.#host.dispatchEvent(event);
    const { answer } = event;
    this.isDoneAtOnce = answer === undefined;
    return answer === undefined
      ? this.#answered(event.result ?? refusedFor('unanswered'))
      : answer.then((result) => this.#answered(result));
  }

  #answered(result: EditResult): EditResult {
    this.refused = result.ok ? [] : result.faults;
    this.#host.requestUpdate();
    return result;
  }

  select(selection: Selection): void {
    this.#host.dispatchEvent(new RunnelSelectEvent(selection));
  }

  /** Asks for undo or redo; false where there is nothing to take back or to make again. Promised where its season takes long. */
  step(step: HistoryStep): boolean | Promise<boolean> {
    const event = new RunnelHistoryEvent(step);
    this.#host.dispatchEvent(event);
    this.isDoneAtOnce = event.done === true;
    return event.answer ?? event.done ?? false;
  }
}
