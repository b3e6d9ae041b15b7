/**
 * The elements for JSX, types alone. Written by the build from the class comments: whoever changes this file changes the
 * comments.
 *
 * ```ts
 * import type { HTMLAttributes, RefAttributes } from 'react';
 * import type { RunnelIntrinsicElements } from 'runnel-kit/jsx';
 *
 * type Common = HTMLAttributes<HTMLElement> & RefAttributes<HTMLElement>;
 * declare module 'react' {
 *   namespace JSX {
 *     interface IntrinsicElements extends RunnelIntrinsicElements<Common> {}
 *   }
 * }
 * ```
 *
 * The same with Preact: `HTMLAttributes<HTMLElement>` from `preact`, and `declare module 'preact'`. An event is heard by its
 * name after `on`, `onrunnel-change={(event) => …}`, as React does it from version 19 on, and Preact.
 */
import type { RunnelChart } from '../dist/elements/chart/runnel-chart.js';
import type { RunnelFiles } from '../dist/elements/files/runnel-files.js';
import type { RunnelGarden } from '../dist/elements/garden/runnel-garden.js';
import type { RunnelGrid } from '../dist/elements/grid/runnel-grid.js';
import type { RunnelMix } from '../dist/elements/mix/runnel-mix.js';
import type { RunnelPlan } from '../dist/elements/plan/runnel-plan.js';
import type { RunnelPlanner } from '../dist/elements/planner/runnel-planner.js';
import type { RunnelTrace } from '../dist/elements/trace/runnel-trace.js';
import type { RunnelWeek } from '../dist/elements/week/runnel-week.js';
import type { RunnelSelectEvent } from '../dist/elements/shared/events/select-event.js';
import type { RunnelHoverEvent } from '../dist/elements/shared/events/hover-event.js';
import type { RunnelOpenEvent } from '../dist/elements/shared/events/open-event.js';
import type { RunnelEditEvent } from '../dist/elements/shared/events/edit-event.js';
import type { RunnelHistoryEvent } from '../dist/elements/shared/events/history-event.js';
import type { RunnelWhyEvent } from '../dist/elements/shared/events/why-event.js';
import type { RunnelViewEvent } from '../dist/elements/shared/events/view-event.js';
import type { RunnelChangeEvent } from '../dist/elements/shared/events/change-event.js';
import type { RunnelAutosaveEvent } from '../dist/elements/shared/events/autosave-event.js';
import type { RunnelErrorEvent } from '../dist/elements/shared/events/error-event.js';

/** What any element takes, where no type of the framework's own is given for it. */
export interface RunnelCommonAttributes {
  id?: string | undefined;
  class?: string | undefined;
  className?: string | undefined;
  slot?: string | undefined;
  title?: string | undefined;
  lang?: string | undefined;
  dir?: 'ltr' | 'rtl' | 'auto' | undefined;
  hidden?: boolean | undefined;
  style?: string | object | undefined;
  key?: string | number | null | undefined;
  ref?: unknown;
  children?: unknown;
}

/** The elements by their tags, to be merged into the interface of that name which a JSX framework has. */
export interface RunnelIntrinsicElements<Common = RunnelCommonAttributes> {
  /** Cumulative supply against cumulative demand over the season, with any shortfall named in its title. */
  'runnel-chart': Common & {
    /** Week of the season that any view of the plan points at. */
    pointedWeek?: RunnelChart['pointedWeek'] | undefined;
    /** Whose water is shown. The zone is the selected one; without one it is the whole garden all the same. */
    scope?: RunnelChart['scope'] | undefined;
    /** A week was chosen; `selection` keeps the zone that was selected. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** Another week is under the pointer, or none. */
    'onrunnel-hover'?: ((event: RunnelHoverEvent) => void) | undefined;
  };
  /** The plan as a file, the season as a table, tables imported after a preview of what they would change, and paper. */
  'runnel-files': Common & {
    /** What the grid of the plan shows; undefined where there is none. */
    sheetView?: RunnelFiles['sheetView'] | undefined;
    /** A plan file was chosen. */
    'onrunnel-open'?: ((event: RunnelOpenEvent) => void) | undefined;
    /** A table was imported. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** The import is to be undone. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
  };
  /** Edits the garden itself: place, climate, supply, zones, plantings and lines. */
  'runnel-garden': Common & {
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelGarden['today'] | undefined;
    /** Something was changed. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** The last change was undone. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
    /** A new plan was started. */
    'onrunnel-open'?: ((event: RunnelOpenEvent) => void) | undefined;
    /** The section that was asked for is in sight: no longer selected. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
  };
  /** The season as a spreadsheet: zones against weeks, with gallons, minutes and rain counted in every cell. */
  'runnel-grid': Common & {
    /** Key of the spreadsheet component Handsontable; `non-commercial-and-evaluation` where its terms of that use are met. */
    licenseKey?: RunnelGrid['licenseKey'] | undefined;
    /** Which figures a cell shows: `all`, `volume`, `minutes` or `rain`. */
    measure?: RunnelGrid['measure'] | undefined;
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelGrid['today'] | undefined;
    /** Week of the season that any view of the plan points at; its header is marked. */
    pointedWeek?: RunnelGrid['pointedWeek'] | undefined;
    /** Key of the spreadsheet component Handsontable; `non-commercial-and-evaluation` where its terms of that use are met. */
    'license-key'?: string | undefined;
    /** A figure was entered, taken back, pasted or dragged. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** A cell was selected. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** The keys for undo or redo were pressed. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
    /** Another week is under the pointer, or none. */
    'onrunnel-hover'?: ((event: RunnelHoverEvent) => void) | undefined;
    /** It was asked why a figure is so; `selection` is where. */
    'onrunnel-why'?: ((event: RunnelWhyEvent) => void) | undefined;
    /** The sheet shows other figures, rows or weeks; `view` is which. */
    'onrunnel-view'?: ((event: RunnelViewEvent) => void) | undefined;
  };
  /** The plantings of one zone side by side: which is overwatered, which goes short, in which weeks, at what cost, and what to do about it. */
  'runnel-mix': Common & {
    /** Goods that a remedy may propose; the kit's usual trade sizes unless set. */
    catalogue?: RunnelMix['catalogue'] | undefined;
    /** Another zone was chosen. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** A remedy was taken, or what was tried is kept. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** The remedy just taken was undone. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
  };
  /** What needs attention in the season, worst first, each with where it holds and what to do about it. */
  'runnel-notices': Common & {
    /** A notice's cell was asked for. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** A notice's remedy was taken. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** The remedy just taken was undone. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
  };
  /** Holds one plan and its season for every runnel element inside it. */
  'runnel-plan': Common & {
    /** Address of a plan file (`*.runnel.json`). */
    src?: RunnelPlan['src'] | undefined;
    /** BCP 47 tag of the reader's language, numbers and dates; left out: the page's. A language that is not registered is English. */
    locale?: RunnelPlan['locale'] | undefined;
    /** Whether the plan can only be looked at. */
    readOnly?: RunnelPlan['readOnly'] | undefined;
    /** Name under which this browser saves the plan between visits; left out, nothing is saved. What was changed and saved comes before `src`. A read-only plan is neither read from there nor written. */
    storageKey?: RunnelPlan['storageKey'] | undefined;
    /** Whether the plan opens from the page's own address, where that carries one behind `#runnel=`. */
    fromLink?: RunnelPlan['fromLink'] | undefined;
    /** The plan on screen. Setting it opens that plan, with its faults listed where it has any; undefined changes nothing. */
    plan?: RunnelPlan['plan'] | undefined;
    /** Whether the plan can only be looked at. */
    'read-only'?: true | '' | undefined;
    /** Name under which this browser saves the plan between visits; left out, nothing is saved. What was changed and saved comes before `src`. A read-only plan is neither read from there nor written. */
    'storage-key'?: string | undefined;
    /** Whether the plan opens from the page's own address, where that carries one behind `#runnel=`. */
    'from-link'?: true | '' | undefined;
    /** The plan is another: loaded, edited, undone or redone. Carries `plan`, `season`, `documentId`, `cause` and, for an edit, `edit`. */
    'onrunnel-change'?: ((event: RunnelChangeEvent) => void) | undefined;
    /** The plan is saved in another way than before, or there is something to say about it. Carries `autosave`: `status`, `notes` by their codes with values and choices, `copies` of plans that would have been overwritten, and `drafts`, which were typed and not entered. */
    'onrunnel-autosave'?: ((event: RunnelAutosaveEvent) => void) | undefined;
    /** A plan or an edit was refused, and what is on screen stays. Carries `refused` (`plan` or `edit`), `faults` and, for an edit, `edit`. `describeFault` puts a fault in words. */
    'onrunnel-error'?: ((event: RunnelErrorEvent) => void) | undefined;
  };
  /** The season's grid, chart, notices and the trace of a number, laid out as one tool. */
  'runnel-planner': Common & {
    /** Plan file that the planner's own plan opens. */
    src?: RunnelPlanner['src'] | undefined;
    /** BCP 47 tag for the numbers and dates of the planner's own plan; left out: the page's language. */
    locale?: RunnelPlanner['locale'] | undefined;
    /** Whether the planner's own plan can only be looked at. */
    readOnly?: RunnelPlanner['readOnly'] | undefined;
    /** Name under which this browser saves the planner's own plan between visits; see `runnel-plan`. */
    storageKey?: RunnelPlanner['storageKey'] | undefined;
    /** Whether the planner's own plan opens from the page's address, where that carries one. */
    fromLink?: RunnelPlanner['fromLink'] | undefined;
    /** The grid's licence key; see `runnel-grid`. */
    licenseKey?: RunnelPlanner['licenseKey'] | undefined;
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelPlanner['today'] | undefined;
    /** A plan for the planner's own `runnel-plan`. */
    plan?: RunnelPlanner['plan'] | undefined;
    /** Whether the planner's own plan can only be looked at. */
    'read-only'?: true | '' | undefined;
    /** Name under which this browser saves the planner's own plan between visits; see `runnel-plan`. */
    'storage-key'?: string | undefined;
    /** Whether the planner's own plan opens from the page's address, where that carries one. */
    'from-link'?: true | '' | undefined;
    /** The grid's licence key; see `runnel-grid`. */
    'license-key'?: string | undefined;
    /** From its own plan: another plan stands on the page. */
    'onrunnel-change'?: ((event: RunnelChangeEvent) => void) | undefined;
    /** From its own plan: it is saved in another way than before. */
    'onrunnel-autosave'?: ((event: RunnelAutosaveEvent) => void) | undefined;
    /** From its own plan: a plan or an edit was refused. */
    'onrunnel-error'?: ((event: RunnelErrorEvent) => void) | undefined;
  };
  /** Why the selected number is so: every step with its inputs, units, formula and source. */
  'runnel-trace': Common & {
    /** Week of the season that any view of the plan points at; it is marked where it is the one that is explained. */
    pointedWeek?: RunnelTrace['pointedWeek'] | undefined;
    /** Another planting of the zone, or its total, was chosen. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** The pointer came to the trace, whose week it then points at, or left it. */
    'onrunnel-hover'?: ((event: RunnelHoverEvent) => void) | undefined;
  };
  /** One week's instructions by zone, for a phone or the shed door: what to open, how long, on which days. */
  'runnel-week': Common & {
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelWeek['today'] | undefined;
    /** Another week was stepped to. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** A zone was checked off or that was taken back, a day was logged, rain or a forecast was entered. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
  };
}
