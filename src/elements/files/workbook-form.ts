/** The season as a workbook that computes on: what it is, and the file. */
import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber } from '../../engine/calendar.ts';
import type { WorkbookContent } from '../../exchange/workbook/sheet-content.ts';
import { filesWords } from '../../language/en/files.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { afterOthers, inSlices, SLICE_MS } from '../shared/in-slices.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, readingOf } from '../shared/plan-state.ts';
import { fileNameOf, saveFile } from '../shared/save-file.ts';
import { todayOf } from '../shared/today-here.ts';
import type { FilesHost } from './files-host.ts';

/** Media type of the file that is written. */
export const WORKBOOK_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

type Writing = typeof import('./workbook-writing.ts');

export class WorkbookForm {
  readonly #host: FilesHost;
  readonly #plan: PlanConsumer;
  #state: 'idle' | 'writing' | 'failed' = 'idle';

  constructor(host: FilesHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
  }

  render(): TemplateResult {
    const { workbook: say, notFetched } = filesWords(readingOf(this.#plan.view).language);
    return html`<section class="workbook">
      <h3>${say.title}</h3>
      <p>${say.says}</p>
      <div class="actions">
        <button name="workbook" ?disabled=${this.#state === 'writing'} @click=${() => void this.#save()}>${say.save}</button>
      </div>
      <div role="status">${this.#state === 'writing' ? html`<p class="quiet">${say.writing}</p>` : nothing}</div>
      <div role="alert">${this.#state === 'failed' ? html`<p class="refused">${notFetched}</p>` : nothing}</div>
    </section>`;
  }

  async #save(): Promise<void> {
    this.#show('writing');
    const work = await fetchPart(() => import('./workbook-writing.ts'));
    const { view } = this.#plan;
    if (work === undefined || !isReady(view)) return this.#show(work === undefined ? 'failed' : 'idle');
    const { plan, season, locale } = view;
    const choice = { planName: plan.name, units: plan.units, locale, today: dayNumber(todayOf(this.#host.today)) };
    inSlices({
      steps: work.workbookSteps(season, choice),
      isWanted: () => this.#host.isConnected,
      onEnd: (content) => void this.#write(content, plan.name, work),
    });
  }

  async #write(content: WorkbookContent, planName: string, { writeWorkbook, workbookWords }: Writing): Promise<void> {
    const file = await fetchPart(() => writeWorkbook(content, pauses()));
    this.#show(file === undefined ? 'failed' : 'idle');
    const { language } = readingOf(this.#plan.view);
    const name = workbookWords(language).file(fileNameOf(planName));
    if (file !== undefined) saveFile(name, file as Uint8Array<ArrayBuffer>, WORKBOOK_TYPE);
  }

  #show(state: 'idle' | 'writing' | 'failed'): void {
    this.#state = state;
    this.#host.requestUpdate();
  }
}

/** Lets the page have its turn once a slice of time has passed. */
function pauses(): () => Promise<void> {
  let end = performance.now() + SLICE_MS;
  return async () => {
    if (performance.now() < end) return;
    await new Promise<void>((done) => afterOthers(done));
    end = performance.now() + SLICE_MS;
  };
}
