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
import type { RunnelStart } from '../dist/elements/start/runnel-start.js';
import type { RunnelTrace } from '../dist/elements/trace/runnel-trace.js';
import type { RunnelWeather } from '../dist/elements/weather/runnel-weather.js';
import type { RunnelWeek } from '../dist/elements/week/runnel-week.js';
import type { RunnelSelectEvent } from '../dist/elements/shared/events/select-event.js';
import type { RunnelHoverEvent } from '../dist/elements/shared/events/hover-event.js';
import type { RunnelYearEvent } from '../dist/elements/shared/events/year-event.js';
import type { RunnelFrameEvent } from '../dist/elements/shared/events/frame-event.js';
import type { RunnelOpenEvent } from '../dist/elements/shared/events/open-event.js';
import type { RunnelEditEvent } from '../dist/elements/shared/events/edit-event.js';
import type { RunnelHistoryEvent } from '../dist/elements/shared/events/history-event.js';
import type { RunnelWhyEvent } from '../dist/elements/shared/events/why-event.js';
import type { RunnelViewEvent } from '../dist/elements/shared/events/view-event.js';
import type { RunnelChangeEvent } from '../dist/elements/shared/events/change-event.js';
import type { RunnelAutosaveEvent } from '../dist/elements/shared/events/autosave-event.js';
import type { RunnelErrorEvent } from '../dist/elements/shared/events/error-event.js';
import type { RunnelStartDoneEvent } from '../dist/elements/shared/events/start-done-event.js';

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
    /** Whether the season stands there as a strip: curves, and beneath them, on the same weeks, a thin row a zone and a tile a week in the tone of its water. A frame on it is what the plan's sheet shows; it is dragged, or moved by keys, and the sheet follows. */
    strip?: RunnelChart['strip'] | undefined;
    /** The day that counts as today in the strip, year-month-day; the reader's own unless set. */
    today?: RunnelChart['today'] | undefined;
    /** Weeks and zones that the sheet of the plan shows. */
    frame?: RunnelChart['frame'] | undefined;
    /** A week was chosen; `selection` keeps the zone that was selected. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** Another week is under the pointer, or none. */
    'onrunnel-hover'?: ((event: RunnelHoverEvent) => void) | undefined;
    /** The plan is to be shown in the weather of one of its years, or in its own again. */
    'onrunnel-year'?: ((event: RunnelYearEvent) => void) | undefined;
    /** The frame of a strip was moved: the plan's sheet is to show that. */
    'onrunnel-frame'?: ((event: RunnelFrameEvent) => void) | undefined;
  };
  /** The plan as a file, the season on paper, as a calendar, as a workbook that computes on and as a table, tables imported after a preview of what they would change, the season in review, and next year's plan. */
  'runnel-files': Common & {
    /** What the grid of the plan shows; undefined where there is none. */
    sheetView?: RunnelFiles['sheetView'] | undefined;
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelFiles['today'] | undefined;
    /** A plan file was chosen, or next year's plan is to be opened. */
    'onrunnel-open'?: ((event: RunnelOpenEvent) => void) | undefined;
    /** A table was imported, or the time zone or the opening of the window was set for a calendar. */
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
    /** The weeks and zones that the sheet shows, or that another view of the plan asks it to show. */
    frame?: RunnelGrid['frame'] | undefined;
    /** Where the controls above the sheet are to stand instead, and its key: elements of the page, anywhere in it. */
    places?: RunnelGrid['places'] | undefined;
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
    /** Other weeks or zones have come into view; `frame` is which. */
    'onrunnel-frame'?: ((event: RunnelFrameEvent) => void) | undefined;
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
    /** Addresses in the Open-Meteo layout that end in `/archive` and `/forecast`, or of files of days; asked once a button is pressed. */
    weatherService?: RunnelPlan['weatherService'] | undefined;
    /** The plan on screen. Setting it opens that plan, with its faults listed where it has any; undefined changes nothing. Of a large one the season is computed a little at a time: `runnel-change` tells when it stands there. */
    plan?: RunnelPlan['plan'] | undefined;
    /** Whether the plan can only be looked at. */
    'read-only'?: true | '' | undefined;
    /** Name under which this browser saves the plan between visits; left out, nothing is saved. What was changed and saved comes before `src`. A read-only plan is neither read from there nor written. */
    'storage-key'?: string | undefined;
    /** Whether the plan opens from the page's own address, where that carries one behind `#runnel=`. */
    'from-link'?: true | '' | undefined;
    /** Addresses in the Open-Meteo layout that end in `/archive` and `/forecast`, or of files of days; asked once a button is pressed. */
    'weather-service'?: string | undefined;
    /** The plan is another: loaded, edited, undone or redone. Carries `plan`, `season`, `documentId`, `cause` and, for an edit, `edit`. */
    'onrunnel-change'?: ((event: RunnelChangeEvent) => void) | undefined;
    /** The plan is saved in another way than before, or there is something to say about it. Carries `autosave`: `status`, `notes` by their codes with values and choices, `copies` of plans that would have been overwritten, and `drafts`, which were typed and not entered. */
    'onrunnel-autosave'?: ((event: RunnelAutosaveEvent) => void) | undefined;
    /** A plan or an edit was refused, and what is on screen stays. Carries `refused` (`plan` or `edit`), `faults` and, for an edit, `edit`. `describeFault` puts a fault in words. */
    'onrunnel-error'?: ((event: RunnelErrorEvent) => void) | undefined;
  };
  /** All of the kit laid out as one tool: the season, this week, mixed zones, the garden and files, one view at a time. */
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
    /** Addresses of a weather service for the planner's own plan; see `runnel-plan`. */
    weatherService?: RunnelPlanner['weatherService'] | undefined;
    /** Address of a plan that can be looked at as an example, where a plan is begun. */
    example?: RunnelPlanner['example'] | undefined;
    /** The grid's licence key; see `runnel-grid`. */
    licenseKey?: RunnelPlanner['licenseKey'] | undefined;
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelPlanner['today'] | undefined;
    /** The views that there are, by name, in order: `season`, `week`, `mix`, `garden`, `files`; all of them where it names none. */
    views?: RunnelPlanner['views'] | undefined;
    /** The view that stands there; left out, this week on a narrow screen and the season on any other. */
    view?: RunnelPlanner['view'] | undefined;
    /** Whether the page is the planner's: it fills the window, and each view has an address, `?view=week`, to which the browser's back button, a reload and a link lead. Of several planners on a page the first one has the address. */
    fullPage?: RunnelPlanner['fullPage'] | undefined;
    /** A plan for the planner's own `runnel-plan`. */
    plan?: RunnelPlanner['plan'] | undefined;
    /** Whether the planner's own plan can only be looked at. */
    'read-only'?: true | '' | undefined;
    /** Name under which this browser saves the planner's own plan between visits; see `runnel-plan`. */
    'storage-key'?: string | undefined;
    /** Whether the planner's own plan opens from the page's address, where that carries one. */
    'from-link'?: true | '' | undefined;
    /** Addresses of a weather service for the planner's own plan; see `runnel-plan`. */
    'weather-service'?: string | undefined;
    /** The grid's licence key; see `runnel-grid`. */
    'license-key'?: string | undefined;
    /** Whether the page is the planner's: it fills the window, and each view has an address, `?view=week`, to which the browser's back button, a reload and a link lead. Of several planners on a page the first one has the address. */
    'full-page'?: true | '' | undefined;
    /** From its own plan: another plan stands on the page. */
    'onrunnel-change'?: ((event: RunnelChangeEvent) => void) | undefined;
    /** From its own plan: it is saved in another way than before. */
    'onrunnel-autosave'?: ((event: RunnelAutosaveEvent) => void) | undefined;
    /** From its own plan: a plan or an edit was refused. */
    'onrunnel-error'?: ((event: RunnelErrorEvent) => void) | undefined;
  };
  /** From nothing to a season in five steps: where, water, timer, what grows, and how it gets its water. */
  'runnel-start': Common & {
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelStart['today'] | undefined;
    /** Address of a plan that can be looked at as an example. */
    example?: RunnelStart['example'] | undefined;
    /** An answer changes the plan. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** A new plan, an example or a file is to be opened. */
    'onrunnel-open'?: ((event: RunnelOpenEvent) => void) | undefined;
    /** What was taken was taken back. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
    /** The steps are done, or were left. Carries `view`, the view that is wanted next: `season`, or `week` to print it. */
    'onrunnel-start-done'?: ((event: RunnelStartDoneEvent) => void) | undefined;
  };
  /** Why the selected number is so: three sentences, then every step with its inputs, units, formula and source. */
  'runnel-trace': Common & {
    /** Week of the season that any view of the plan points at; it is marked where it is the one that is explained. */
    pointedWeek?: RunnelTrace['pointedWeek'] | undefined;
    /** The week that is asked about was changed: its minutes, its note, or whether it is closed. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** Another planting of the zone, or its total, was chosen. */
    'onrunnel-select'?: ((event: RunnelSelectEvent) => void) | undefined;
    /** The pointer came to the trace, whose week it then points at, or left it. */
    'onrunnel-hover'?: ((event: RunnelHoverEvent) => void) | undefined;
  };
  /** The garden's place and its weather: climate by month as a picture and a table, years of days, files, a weather service. */
  'runnel-weather': Common & {
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelWeather['today'] | undefined;
    /** The place, the climate, the years or readings were changed. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** What was taken was taken back. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
  };
  /** This week on a phone or at a desk: what to run today, the rain, the week day by day, and closing it. */
  'runnel-week': Common & {
    /** The day that counts as today, year-month-day; the reader's own unless set. */
    today?: RunnelWeek['today'] | undefined;
    /** Whether something around it shows why a week's run is so: then each zone asks. */
    answersWhy?: RunnelWeek['answersWhy'] | undefined;
    /** Whether something around it shows why a week's run is so: then each zone asks. */
    'answers-why'?: true | '' | undefined;
    /** It was asked why the run of a zone is so; `selection` is where. */
    'onrunnel-why'?: ((event: RunnelWhyEvent) => void) | undefined;
    /** A run was ticked or that was taken back, a week was closed, rain, a forecast or the meter was entered. */
    'onrunnel-edit'?: ((event: RunnelEditEvent) => void) | undefined;
    /** A week that was closed was taken back. */
    'onrunnel-history'?: ((event: RunnelHistoryEvent) => void) | undefined;
  };
}
