import type { RunnelAutosaveEvent } from './autosave-event.ts';
import type { RunnelChangeEvent } from './change-event.ts';
import type { RunnelEditEvent } from './edit-event.ts';
import type { RunnelErrorEvent } from './error-event.ts';
import type { RunnelFrameEvent } from './frame-event.ts';
import type { RunnelHistoryEvent } from './history-event.ts';
import type { RunnelHoverEvent } from './hover-event.ts';
import type { RunnelOpenEvent } from './open-event.ts';
import type { RunnelSelectEvent } from './select-event.ts';
import type { RunnelStartDoneEvent } from './start-done-event.ts';
import type { RunnelViewEvent } from './view-event.ts';
import type { RunnelWhyEvent } from './why-event.ts';
import type { RunnelYearEvent } from './year-event.ts';

/**
 * Every event of the kit by its name. Each element's module gives this type out, so that whoever imports one element has
 * all of them typed, on an element and on the document and window to which they bubble.
 */
export interface RunnelEventMap {
  'runnel-autosave': RunnelAutosaveEvent;
  'runnel-change': RunnelChangeEvent;
  'runnel-edit': RunnelEditEvent;
  'runnel-error': RunnelErrorEvent;
  'runnel-frame': RunnelFrameEvent;
  'runnel-history': RunnelHistoryEvent;
  'runnel-hover': RunnelHoverEvent;
  'runnel-open': RunnelOpenEvent;
  'runnel-select': RunnelSelectEvent;
  'runnel-start-done': RunnelStartDoneEvent;
  'runnel-view': RunnelViewEvent;
  'runnel-why': RunnelWhyEvent;
  'runnel-year': RunnelYearEvent;
}

declare global {
  interface DocumentEventMap extends RunnelEventMap {}
  interface HTMLElementEventMap extends RunnelEventMap {}
  interface WindowEventMap extends RunnelEventMap {}
}
