import { ContextProvider } from '@lit/context';
import type { ReactiveElement } from 'lit';
import { isTyping } from '../../autosave/drafts/is-typing.ts';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { historyKey } from '../../plan/history/history-key.ts';
import type { Later, PlanStore } from '../../store/plan-store.ts';
import { RunnelEditEvent } from '../shared/events/edit-event.ts';
import { RunnelFrameEvent } from '../shared/events/frame-event.ts';
import { RunnelHistoryEvent } from '../shared/events/history-event.ts';
import { RunnelHoverEvent } from '../shared/events/hover-event.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { RunnelSelectEvent } from '../shared/events/select-event.ts';
import { RunnelViewEvent } from '../shared/events/view-event.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { frameContext } from '../shared/frame-context.ts';
import { pointedWeekContext } from '../shared/pointed-week-context.ts';
import { sheetViewContext } from '../shared/sheet-view-context.ts';

/** What a plan's element answers its views with. */
export interface RequestedPlan extends ReactiveElement {
  readonly store: PlanStore;
  requestEdit(edit: Edit): EditResult | Promise<EditResult>;
  openFile(file: Blob): Promise<boolean>;
}

/** Answers what the views inside a plan ask for, and the keys of undo and redo. */
export class ViewRequests {
  readonly #element: RequestedPlan;
  readonly #later: Later;
  readonly #pointedWeek: ContextProvider<typeof pointedWeekContext>;
  readonly #sheetView: ContextProvider<typeof sheetViewContext>;
  readonly #frame: ContextProvider<typeof frameContext>;

  /** `later` goes on with an undo or a redo whose season takes long. */
  constructor(element: RequestedPlan, later: Later) {
    this.#later = later;
    this.#element = element;
    this.#pointedWeek = new ContextProvider(element, { context: pointedWeekContext });
    this.#sheetView = new ContextProvider(element, { context: sheetViewContext });
    this.#frame = new ContextProvider(element, { context: frameContext });
    this.#handle(RunnelEditEvent.type, (event) => {
      const answer = element.requestEdit(event.edit);
      if (answer instanceof Promise) {
        event.answer = answer;
        void answer.then((result) => {
          event.result = result;
        });
      } else event.result = answer;
    });
    this.#handle(RunnelSelectEvent.type, (event) => element.store.select(event.selection));
    this.#handle(RunnelHistoryEvent.type, (event) => {
      const answer = element.store.requestStep(event.step, later);
      if (answer instanceof Promise) {
        event.answer = answer;
        void answer.then((done) => {
          event.done = done;
        });
      } else event.done = answer;
    });
    this.#handle(RunnelFrameEvent.type, (event) => this.#frame.setValue(event.frame));
    this.#handle(RunnelHoverEvent.type, (event) => this.#pointedWeek.setValue(event.week));
    this.#handle(RunnelViewEvent.type, (event) => this.#showSheetView(event));
    this.#handle(RunnelOpenEvent.type, (event) => void element.openFile(event.file));
    this.#handle('runnel-year', (event) => {
      void fetchPart(() => import('./year-strip.ts')).then((part) => part?.showYear(element, event.year, later));
    });
    element.addEventListener('keydown', (event) => this.#onKeydown(event));
  }

  /** Handles a view's request and stops it there: a plan may stand inside another plan's page. */
  #handle<Type extends keyof HTMLElementEventMap>(
    type: Type,
    handle: (event: HTMLElementEventMap[Type]) => unknown,
  ): void {
    this.#element.addEventListener(type, (event) => {
      event.stopPropagation();
      handle(event);
    });
  }

  #showSheetView({ view, ended }: RunnelViewEvent): void {
    this.#sheetView.setValue(view);
    ended.addEventListener('abort', () => {
      if (this.#sheetView.value === view) this.#sheetView.setValue(undefined);
    });
  }

  #onKeydown(event: KeyboardEvent): void {
    const step = historyKey(event);
    if (step === undefined || event.defaultPrevented || isTyping(event.composedPath()[0])) return;
    event.preventDefault();
    event.stopPropagation();
    void this.#element.store.requestStep(step, this.#later);
  }
}
