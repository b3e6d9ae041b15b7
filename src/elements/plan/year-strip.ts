/** A plan that is shown in the weather of one of its years, and what stands over the page meanwhile. */
import { css, html, type ReactiveElement, render } from 'lit';
import { runningSeason } from '../../engine/season/run-season.ts';
import type { Season } from '../../engine/season/season.ts';
import { gardenInYear } from '../../engine/years/year-seasons.ts';
import { shownYearWords } from '../../language/en/shown-year.ts';
import { languageFor } from '../../language/languages.ts';
import type { Later, PlanStore } from '../../store/plan-store.ts';
import { planSeasonOf } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';

const styles = css`
  .year {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 0.75rem;
    align-items: center;
    margin: 0;
    padding: 0.5rem 0.75rem;
    border-block-end: 2px dashed currentcolor;
    font: 0.9375rem system-ui, sans-serif;
  }

  .year button {
    min-block-size: 2.25rem;
    padding: 0.35rem 0.75rem;
    border: 1px solid currentcolor;
    border-radius: 0.4rem;
    background: none;
    color: inherit;
    font: inherit;
  }
`;

/** A plan's element. */
interface ShownPlan extends ReactiveElement {
  readonly store: PlanStore;
}

/** Where it stands, by the plan's element: above all that the element draws itself. */
const places = new WeakMap<ShownPlan, HTMLElement>();

/** The season of one of the plan's years, by its index among them; undefined: that of its own weather again. */
export function showYear(element: ShownPlan, index: number | undefined, later: Later): void {
  const { store } = element;
  const planSeason = planSeasonOf(store.view);
  if (planSeason === undefined) return;
  if (!places.has(element)) {
    adoptStyles(element.renderRoot, styles);
    const place = document.createElement('div');
    element.renderRoot.prepend(place);
    places.set(element, place);
    store.subscribe(() => mark(store, place));
  }
  if (index === undefined) store.showYear(planSeason, undefined);
  else later(showing(store, planSeason, index));
}

function* showing(store: PlanStore, planSeason: Season, index: number): Generator<number, void> {
  const season = yield* runningSeason(gardenInYear(planSeason, index), planSeason);
  const calendarYear = planSeason.weather.years().calendarYears?.[index];
  store.showYear(season, { index, calendarYear, planSeason });
}

function mark(store: PlanStore, place: HTMLElement): void {
  const { year, locale } = store.view;
  const say = shownYearWords(languageFor(locale));
  const back = () => year && store.showYear(year.planSeason, undefined);
  const strip = () => html`<p class="year" role="status">
    <span>${year?.calendarYear === undefined ? say.madeYear : say.inYear(year.calendarYear)}</span>
    <button @click=${back}>${say.back}</button>
  </p>`;
  render(year === undefined ? html`` : strip(), place);
}
