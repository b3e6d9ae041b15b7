/** What is done when a season is over: it is looked back on, and the next one's plan is begun. */
import { html, nothing, type TemplateResult } from 'lit';
import { filesWords } from '../../language/en/files.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import type { FilesHost } from './files-host.ts';
import type { NextYearForm } from './next-year-form.ts';
import { printPaper } from './print-paper.ts';

export class SeasonEnd {
  readonly #host: FilesHost;
  #form: NextYearForm | undefined;
  #hasFailed = false;

  constructor(host: FilesHost) {
    this.#host = host;
  }

  render(view: ReadyView): TemplateResult {
    const { review, nextYear, notFetched } = filesWords(readingOf(view).language);
    const print = () => void printPaper(this.#host, view, 'review');
    return html`<div class="parts end">
        <section>
          <h3>${review.title}</h3>
          <p>${review.says}</p>
          <div class="actions"><button name="review" @click=${print}>${review.open}</button></div>
        </section>
        <section>
          <h3>${nextYear.title}</h3>
          <p>${nextYear.says}</p>
          <div class="actions">
            <button name="next-year" aria-expanded=${this.#form === undefined ? 'false' : 'true'} @click=${() => void this.#toggle()}>${nextYear.open}</button>
          </div>
          <div role="alert">${this.#hasFailed ? html`<p class="refused">${notFetched}</p>` : nothing}</div>
        </section>
      </div>
      ${this.#form?.render(view) ?? nothing}`;
  }

  async #toggle(): Promise<void> {
    if (this.#form !== undefined) return this.#close();
    const part = await fetchPart(() => import('./next-year-form.ts'));
    this.#hasFailed = part === undefined;
    this.#form = part && new part.NextYearForm(this.#host, () => this.#close());
    this.#host.requestUpdate();
  }

  #close(): void {
    this.#form = undefined;
    this.#host.requestUpdate();
    void this.#host.updateComplete.then(() =>
      this.#host.renderRoot.querySelector<HTMLElement>('[name=next-year]')?.focus(),
    );
  }
}
