import { html, LitElement, render } from 'lit';
import { planElementWords } from '../../language/en/plan-element.ts';
import { languageFor } from '../../language/languages.ts';
import { wasSlow } from '../../store/slow-seasons.ts';
import { isLarge } from '../../store/waiting-work.ts';
import { fetchPart } from './fetch-part.ts';
import { afterOthers } from './in-slices.ts';
import { PlanConsumer } from './plan-consumer.ts';
import { resolveLocale } from './resolve-locale.ts';

/**
 * An element that shows a plan. Where anything throws as it is drawn, it says so in place of all that it showed, so that nothing of an
 * earlier plan stays; the page hears of the error as of any that nobody caught. The next plan is drawn as ever.
 */
export abstract class ViewElement extends LitElement {
  constructor() {
    super();
    const watch = async () => {
      const part = await fetchPart(() => import('./keep-focus.ts'));
      if (part !== undefined) new part.KeepFocus(this);
    };
    this.addEventListener('focusin', watch, { once: true });
  }

  /**
   * Views of a large garden, or of a season that was long to compute, are drawn one after another: together they would keep the page waiting.
   *
   * @internal
   */
  protected override scheduleUpdate(): Promise<unknown> | undefined {
    if (this.#isLong() && !this.isDrawnAtOnce) return new Promise<void>(afterOthers).then(() => super.scheduleUpdate());
    super.scheduleUpdate();
    return undefined;
  }

  /**
   * Whether it does not wait for its turn among the views, however large the garden is.
   *
   * @internal
   */
  protected get isDrawnAtOnce(): boolean {
    return false;
  }

  #isLong(): boolean {
    try {
      const season = PlanConsumer.of(this)?.view.season;
      return season !== undefined && (wasSlow(season) || isLarge(season.zones, season.garden.span));
    } catch {
      // What cannot be read is told of as it is drawn.
      return false;
    }
  }

  /** @internal */
  protected override performUpdate(): void {
    try {
      super.performUpdate();
    } catch (error) {
      this.fail(error);
    }
  }

  /**
   * What it shows cannot be drawn.
   *
   * @internal
   */
  fail(error: unknown): void {
    reportError(error);
    const locale = PlanConsumer.of(this)?.view.locale ?? resolveLocale(this, undefined);
    render(this.failure(planElementWords(languageFor(locale)).viewFailed), this.renderRoot, this.renderOptions);
  }

  /**
   * What stands there then.
   *
   * @internal
   */
  protected failure(words: string): unknown {
    return html`<p class="waiting" role="alert">${words}</p>`;
  }
}
