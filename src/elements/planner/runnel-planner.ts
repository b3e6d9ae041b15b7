import { html, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { LatePart, type LocaleSource } from '../shared/late-part.ts';
import { lightRoot } from '../shared/light-root.ts';
import { isInsidePlan } from '../shared/outside-plan.ts';
import { resolveLocale } from '../shared/resolve-locale.ts';
import { checkToday, daySet } from '../shared/today-here.ts';
import { ViewElement } from '../shared/view-element.ts';
import { PlannerAddress } from './planner-address.ts';
import { type PlannerView, viewsNamed } from './planner-views.ts';
import { plannerStyles } from './runnel-planner.styles.ts';
import { ShowViewEvent } from './show-view-event.ts';
import { WindowRoom } from './window-room.ts';

/** A planner that is narrower stands on a phone. */
const NARROW_PX = 700;

/**
 * @summary All of the kit laid out as one tool: the season, this week, mixed zones, the garden and files, one view at a time.
 *
 * Inside a `runnel-plan` it shows that plan. Anywhere else it makes a plan of its own, which `src` or `plan` fills; without
 * either the steps to a new plan stand there. It renders in light DOM, as the grid must, and so must everything around it. Words
 * that stand in it, for pages without scripts, go when it starts. It fills the height that the page gives it, and is as high as it
 * needs to be where the page gives none.
 *
 * @fires {RunnelChangeEvent} runnel-change - From its own plan: another plan stands on the page.
 * @fires {RunnelAutosaveEvent} runnel-autosave - From its own plan: it is saved in another way than before.
 * @fires {RunnelErrorEvent} runnel-error - From its own plan: a plan or an edit was refused.
 *
 * @cssprop [--runnel-planner-grid-height=75vh] - Greatest height of the grid's sheet, where the planner is given no height.
 */
export class RunnelPlanner extends ViewElement {
  /** Plan file that the planner's own plan opens. */
  @property() src: string | undefined;

  /** BCP 47 tag for the numbers and dates of the planner's own plan; left out: the page's language. */
  @property() locale: string | undefined;

  /** Whether the planner's own plan can only be looked at. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  /** Name under which this browser saves the planner's own plan between visits; see `runnel-plan`. */
  @property({ attribute: 'storage-key' }) storageKey: string | undefined;

  /** Whether the planner's own plan opens from the page's address, where that carries one. */
  @property({ type: Boolean, attribute: 'from-link' }) fromLink = false;

  /** Addresses of a weather service for the planner's own plan; see `runnel-plan`. */
  @property({ attribute: 'weather-service' }) weatherService: string | undefined;

  /** Address of a plan that can be looked at as an example, where a plan is begun. */
  @property() example: string | undefined;

  /** The grid's licence key; see `runnel-grid`. */
  @property({ attribute: 'license-key' }) licenseKey = '';

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: string | undefined;

  /** The views that there are, by name, in order: `season`, `week`, `mix`, `garden`, `files`; all of them where it names none. */
  @property() views: string | undefined;

  /** The view that stands there; left out, this week on a narrow screen and the season on any other. */
  @property({ reflect: true }) view: PlannerView | undefined;

  /**
   * Whether the page is the planner's: it fills the window, and each view has an address, `?view=week`, to which the browser's back
   * button, a reload and a link lead. Of several planners on a page the first one has the address.
   */
  @property({ type: Boolean, attribute: 'full-page', reflect: true }) fullPage = false;

  /** A plan for the planner's own `runnel-plan`. */
  @property({ attribute: false }) plan: Plan | undefined;

  @state() private isInsidePlan = false;

  @state() private isNarrow = false;

  readonly #sizes = new ResizeObserver(() => {
    this.isNarrow = this.#isNarrow;
  });

  readonly #parts = new LatePart(this, localeAround(this), async () => {
    const { definePlannerParts, plannerSheetStyles } = await import('./planner-parts.ts');
    definePlannerParts();
    return plannerSheetStyles;
  });

  readonly #address = new PlannerAddress(this);
  readonly #addressOf = (view: PlannerView): string | undefined => this.#address.of(view);

  constructor() {
    super();
    this.addEventListener(ShowViewEvent.type, (event) => {
      event.stopPropagation();
      this.#go(event.view);
    });
    new WindowRoom(this);
  }

  override connectedCallback(): void {
    this.#adoptStyles();
    this.isInsidePlan = isInsidePlan(this);
    super.connectedCallback();
    this.isNarrow = this.#isNarrow;
    this.#sizes.observe(this);
  }

  #adoptStyles(): void {
    adoptStyles(this, plannerStyles);
    if (this.#parts.fetched) adoptStyles(this, this.#parts.fetched);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes.disconnect();
  }

  /** A hidden planner has no width: it is as wide as the window, until it is seen. */
  get #isNarrow(): boolean {
    return (this.clientWidth || innerWidth) < NARROW_PX;
  }

  /** @internal */
  get firstView(): PlannerView {
    const views = viewsNamed(this.views);
    const first = this.#isNarrow ? 'week' : 'season';
    return views.find((view) => view === first) ?? views[0] ?? 'season';
  }

  /** @internal */
  followAddress(view: PlannerView): void {
    if (viewsNamed(this.views).includes(view)) this.view = view;
  }

  #go(view: PlannerView): void {
    if (!viewsNamed(this.views).includes(view)) return;
    this.#address.go(view);
    this.view = view;
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    return (await this.#parts.isSettled()) && isComplete;
  }

  protected override willUpdate(): void {
    checkToday(this);
    const views = viewsNamed(this.views);
    const named = this.view ?? this.#address.read();
    this.view = views.find((view) => view === named) ?? this.firstView;
  }

  protected override createRenderRoot(): HTMLElement {
    return lightRoot(this);
  }

  protected override render(): TemplateResult {
    const sheet = this.#parts.part === undefined ? this.#waiting() : this.#sheet();
    if (this.isInsidePlan) return sheet;
    return html`<runnel-plan .src=${this.src} .locale=${this.locale} .readOnly=${this.readOnly} .plan=${this.plan}
      .storageKey=${this.storageKey} .fromLink=${this.fromLink}
      .weatherService=${this.weatherService}>${sheet}</runnel-plan>`;
  }

  #sheet(): TemplateResult {
    this.#adoptStyles();
    return html`<runnel-planner-sheet .licenseKey=${this.licenseKey} .today=${daySet(this.today)} .example=${this.example}
      .views=${viewsNamed(this.views)} .view=${this.view ?? this.firstView} .addressOf=${this.#addressOf} .isNarrow=${this.isNarrow}></runnel-planner-sheet>`;
  }

  #waiting(): TemplateResult {
    return html`<p class="runnel-planner__waiting" role="status">${this.#parts.waitingWords}</p>`;
  }
}

/** The locale of what the planner says before any plan stands in it. */
function localeAround(planner: RunnelPlanner): LocaleSource {
  return {
    get view() {
      return { locale: resolveLocale(planner, planner.locale) };
    },
  };
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-planner': RunnelPlanner;
  }
}
