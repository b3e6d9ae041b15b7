import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { RunnelChangeEvent } from '../../../src/elements/shared/events/change-event.ts';
import { RunnelEditEvent } from '../../../src/elements/shared/events/edit-event.ts';
import type { RunnelErrorEvent } from '../../../src/elements/shared/events/error-event.ts';
import { RunnelHistoryEvent } from '../../../src/elements/shared/events/history-event.ts';
import { RunnelOpenEvent } from '../../../src/elements/shared/events/open-event.ts';
import { RunnelSelectEvent } from '../../../src/elements/shared/events/select-event.ts';
import { en, type Words } from '../../../src/language/en.ts';
import { registerLanguage } from '../../../src/language/register-language.ts';
import { writePlan } from '../../../src/plan/reading/write-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { metricGarden, mixedGarden, oneBed } from '../../support/small-plans.ts';
import { chord } from '../shared/chord.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const setMinutes = (minutes: number) => ({ type: 'set-minutes', zone: 'beds', week: '2027-06-07', minutes }) as const;

async function shown(plan: Plan = oneBed()): Promise<{ plan: RunnelPlan; inside: HTMLElement }> {
  const place = onPage(html`<runnel-plan .plan=${plan}><p tabindex="0">Inside</p><input /></runnel-plan>`);
  const element = await settled(place, 'runnel-plan');
  const inside = element.querySelector('p');
  if (inside === null) throw new Error('there is nothing inside');
  return { plan: element, inside };
}

const addressOf = (text: string) => URL.createObjectURL(new Blob([text]));
const titleIn = (place: ParentNode) =>
  place.querySelector('runnel-chart')?.shadowRoot?.querySelector('h2')?.textContent;

const { warn } = console;

/** What the console is warned of until the test ends. */
function heardWarnings(): readonly unknown[] {
  const warnings: unknown[] = [];
  console.warn = (...values: unknown[]) => warnings.push(values);
  return warnings;
}

describe('runnel-plan', () => {
  afterEach(() => {
    console.warn = warn;
    clearPage();
  });

  it('handles an edit, a selection and a step that come up from a view, and lets them go no further', async () => {
    const { plan, inside } = await shown();
    const beyond: string[] = [];
    const note = ({ type }: Event) => beyond.push(type);
    for (const type of ['runnel-edit', 'runnel-select', 'runnel-history'] as const) {
      document.addEventListener(type, note);
    }
    inside.dispatchEvent(new RunnelEditEvent(setMinutes(70)));
    expect(plan.plan?.choices).to.deep.equal({ beds: { '2027-06-07': { minutes: 70 } } });
    inside.dispatchEvent(new RunnelSelectEvent({ zone: 'beds', week: 2 }));
    expect(plan.store.view.selection).to.deep.include({ zone: 'beds', week: 2 });
    inside.dispatchEvent(new RunnelHistoryEvent('undo'));
    expect(plan.plan?.choices).to.equal(undefined);
    expect(beyond).to.deep.equal([]);
    for (const type of ['runnel-edit', 'runnel-select', 'runnel-history'] as const) {
      document.removeEventListener(type, note);
    }
  });

  it('answers an edit on its event: accepted, or refused with why', async () => {
    const { plan, inside } = await shown();
    const send = (minutes: number) => {
      const event = new RunnelEditEvent(setMinutes(minutes));
      inside.dispatchEvent(event);
      return event.result;
    };
    expect(send(70)).to.deep.equal({ ok: true, plan: plan.plan, changed: true });
    expect(send(70)).to.deep.equal({ ok: true, plan: plan.plan, changed: false });
    const refused = send(-5);
    expect(refused?.ok === false && refused.faults.map(({ path }) => path)).to.deep.equal([
      'choices.beds.2027-06-07.minutes',
    ]);
    expect(plan.faults).to.deep.equal([]);
    plan.readOnly = true;
    await plan.updateComplete;
    const locked = send(5);
    expect(locked?.ok === false && locked.faults.map(({ code }) => code)).to.deep.equal(['read-only']);
  });

  it('answers undo and redo on their event', async () => {
    const { plan, inside } = await shown();
    const send = (step: 'undo' | 'redo') => {
      const event = new RunnelHistoryEvent(step);
      inside.dispatchEvent(event);
      return event.done;
    };
    expect(send('undo')).to.equal(false);
    plan.edit(setMinutes(70));
    expect(send('undo')).to.equal(true);
    expect(send('redo')).to.equal(true);
  });

  it('leaves an edit unanswered where there is no plan around it', () => {
    const event = new RunnelEditEvent(setMinutes(70));
    document.body.dispatchEvent(event);
    expect(event.result).to.equal(undefined);
  });

  it('tells the page of every change, with plan, season, cause and edit', async () => {
    const { plan } = await shown();
    const changes: RunnelChangeEvent[] = [];
    plan.parentElement?.addEventListener('runnel-change', (event) => changes.push(event));
    const edit = setMinutes(70);
    plan.edit(edit);
    plan.undo();
    plan.redo();
    plan.plan = mixedGarden();
    expect(changes.map(({ cause }) => cause)).to.deep.equal(['edit', 'undo', 'redo', 'load']);
    expect(changes[0]?.edit).to.equal(edit);
    expect(changes[3]?.plan.name).to.equal('Mixed garden');
    const [first, , third, last] = changes.map(({ documentId }) => documentId);
    expect(third).to.equal(first);
    expect(last).not.to.equal(first);
    expect(changes[3]?.season).to.equal(plan.season);
  });

  it('tells the page of every refusal, with the faults: of a plan, of an edit in code, of one from a view', async () => {
    const { plan, inside } = await shown();
    const refusals: RunnelErrorEvent[] = [];
    plan.parentElement?.addEventListener('runnel-error', (event) => refusals.push(event));
    const edit = setMinutes(-5);
    plan.edit(edit);
    inside.dispatchEvent(new RunnelEditEvent(edit));
    plan.openText('{}');
    plan.plan = { ...oneBed(), name: '' };
    plan.select({ week: 2 });
    plan.edit(setMinutes(70));
    expect(refusals.map(({ refused }) => refused)).to.deep.equal(['edit', 'edit', 'plan', 'plan']);
    expect(refusals[0]?.edit).to.equal(edit);
    expect(refusals[0]?.faults.map(({ path }) => path)).to.deep.equal(['choices.beds.2027-06-07.minutes']);
    expect(refusals[3]?.faults.map(({ path }) => path)).to.deep.equal(['name']);
    expect(refusals[3]?.edit).to.equal(undefined);
    expect(plan.plan?.choices).to.deep.equal({ beds: { '2027-06-07': { minutes: 70 } } });
  });

  it('throws a TypeError that names it for what is no edit at all, without or with a plan', async () => {
    const { plan } = await shown();
    const edit = undefined as unknown as ReturnType<typeof setMinutes>;
    for (const element of [plan, document.createElement('runnel-plan')]) {
      expect(() => element.edit(edit)).to.throw(TypeError, 'edit is undefined; it must be an object.');
    }
    expect(() => new RunnelEditEvent(edit)).to.throw(TypeError, 'edit is undefined');
    expect(() => plan.openText(5 as unknown as string)).to.throw(TypeError, 'text is 5');
    expect(plan.plan?.name).to.equal('One bed');
  });

  it('opens the file at src, and another when src is another', async () => {
    const place = onPage(html`<runnel-plan src=${addressOf(writePlan(oneBed()))}></runnel-plan>`);
    const plan = await settled(place, 'runnel-plan');
    await until(() => plan.plan?.name === 'One bed', 'the first file is open');
    plan.src = addressOf(writePlan(mixedGarden()));
    await until(() => plan.plan?.name === 'Mixed garden', 'the second file is open');
  });

  it('reads no more of a file, or of an answer without end, than tells that it is too long', async () => {
    const { plan } = await shown();
    const million = new Blob([' '.repeat(1_000_000)]);
    expect(await plan.openFile(new Blob(Array.from({ length: 120 }, () => million)))).to.equal(false);
    expect(plan.faults[0]).to.deep.include({ path: '', code: 'too-long' });
    const { fetch } = window;
    const part = new TextEncoder().encode(' '.repeat(1_000_000));
    let isCancelled = false;
    const pull = (to: ReadableStreamDefaultController) => to.enqueue(part);
    window.fetch = (_, init) => {
      init?.signal?.addEventListener('abort', () => (isCancelled = true));
      return Promise.resolve(new Response(new ReadableStream({ pull })));
    };
    try {
      plan.src = 'without-end.runnel.json';
      await until(() => isCancelled, 'the answer is ended');
      await until(() => plan.store.view.status === 'ready', 'it is refused');
      expect(plan.faults[0]).to.deep.include({ path: '', code: 'too-long' });
      expect(plan.plan?.name).to.equal('One bed');
    } finally {
      window.fetch = fetch;
    }
  });

  it('says so where a file that was chosen is there no more', async () => {
    const { plan } = await shown();
    const gone = new File([''], 'beds.runnel.json');
    gone.slice = () =>
      ({ text: () => Promise.reject(new DOMException('gone', 'NotReadableError')) }) as unknown as Blob;
    expect(await plan.openFile(gone)).to.equal(false);
    expect(plan.faults[0]?.code).to.equal('file-unreadable');
    expect(plan.faults[0]?.values.found).to.equal('beds.runnel.json');
    expect(plan.store.view.status).to.equal('ready');
  });

  it('opens only the file that was asked for last', async () => {
    const { plan } = await shown();
    const first = plan.openFile(new Blob([writePlan(mixedGarden())]));
    const last = plan.openFile(new Blob([writePlan(metricGarden())]));
    expect(await first).to.equal(false);
    expect(await last).to.equal(true);
    expect(plan.plan?.name).to.equal('Metric garden');
  });

  it('says so in words where the file at src cannot be had, and keeps what is on screen', async () => {
    const { plan } = await shown();
    plan.src = '/no-such-plan.runnel.json';
    await until(() => plan.faults.length > 0, 'the fault is told');
    expect(plan.faults[0]).to.deep.include({ path: '', code: 'file-refused' });
    expect(plan.faults[0]?.values).to.deep.include({ status: 404, found: '/no-such-plan.runnel.json' });
    expect(plan.plan?.name).to.equal('One bed');
    expect(plan.store.view.status).to.equal('ready');
  });

  it('opens a file that a person chose inside', async () => {
    const { plan, inside } = await shown();
    inside.dispatchEvent(new RunnelOpenEvent(new Blob([writePlan(mixedGarden())])));
    await until(() => plan.plan?.name === 'Mixed garden', 'the file is open');
  });

  it('leaves the plan on screen as it was where a file is bad, and lists each fault', async () => {
    const { plan } = await shown();
    const before = plan.plan;
    const [bed] = oneBed().zones;
    const bad = { ...oneBed(), units: 'us', zones: [{ ...bed, wateringDays: 9, name: '' }] };
    expect(plan.openText(JSON.stringify(bad))).to.equal(false);
    expect(plan.plan).to.equal(before);
    expect(plan.faults.map(({ path }) => path)).to.have.members(['zones.0.name', 'zones.0.wateringDays']);
    expect(plan.openText('{"format":')).to.equal(false);
    expect(plan.faults).to.have.length(1);
  });

  it('takes the last change back on Ctrl+Z, makes it again on Ctrl+Shift+Z and Ctrl+Y', async () => {
    const { plan, inside } = await shown();
    const minutes = () => plan.plan?.choices?.['beds']?.['2027-06-07']?.minutes;
    plan.edit(setMinutes(70));
    plan.edit(setMinutes(80));
    inside.focus();
    await chord('Control', 'z');
    expect(minutes()).to.equal(70);
    await chord('Control', 'Shift', 'Z');
    expect(minutes()).to.equal(80);
    await chord('Control', 'z');
    await chord('Control', 'z');
    expect(minutes()).to.equal(undefined);
    await chord('Control', 'y');
    expect(minutes()).to.equal(70);
  });

  it('leaves Ctrl+Z to a text field, and to whoever took it already', async () => {
    const { plan, inside } = await shown();
    plan.edit(setMinutes(70));
    plan.querySelector('input')?.focus();
    await chord('Control', 'z');
    inside.addEventListener('keydown', (event) => event.preventDefault());
    inside.focus();
    await chord('Control', 'z');
    expect(plan.plan?.choices).to.deep.equal({ beds: { '2027-06-07': { minutes: 70 } } });
  });

  it('takes no edit while it is read-only', async () => {
    const { plan } = await shown();
    plan.readOnly = true;
    await plan.updateComplete;
    const refused = plan.edit(setMinutes(70));
    expect(refused.ok ? [] : refused.faults.map(({ code }) => code)).to.deep.equal(['read-only']);
    expect(plan.store.view.readOnly).to.equal(true);
    plan.removeAttribute('read-only');
    plan.readOnly = false;
    await plan.updateComplete;
    expect(plan.edit(setMinutes(70)).ok).to.equal(true);
  });

  it('speaks its own locale, else the page’s language, English where that is not registered or is no language', async () => {
    const { plan } = await shown();
    expect(plan.store.view.locale).to.match(/^en/);
    for (const [locale, spoken] of [
      ['en-AU', 'en-AU'],
      ['nb', 'en-GB'],
      ['es-US', 'en-US'],
    ] as const) {
      plan.locale = locale;
      await plan.updateComplete;
      expect(plan.store.view.locale).to.equal(spoken);
    }
    plan.locale = 'no_such_language';
    await plan.updateComplete;
    expect(plan.store.view.locale).to.match(/^en/);
  });

  it('waits for the first language, and shows nothing before it has come', async () => {
    let come: (words: Words) => void = () => undefined;
    registerLanguage('fi', () => new Promise((resolve) => (come = resolve)));
    const place = onPage(html`<runnel-plan locale="fi" .plan=${oneBed()}><runnel-chart></runnel-chart></runnel-plan>`);
    const plan = await settled(place, 'runnel-plan');
    const chart = await settled(place, 'runnel-chart');
    expect(plan.plan?.name).to.equal('One bed');
    expect(getComputedStyle(chart).visibility).to.equal('hidden');
    expect(titleIn(place)).to.equal(undefined);
    come({ ...en, chart: { ...en.chart, table: 'Taulukko' } });
    await until(() => plan.store.view.locale === 'fi', 'it is shown in the language');
    await until(() => chart.shadowRoot?.textContent?.includes('Taulukko') === true, 'its words are there');
    expect(getComputedStyle(chart).visibility).to.equal('visible');
  });

  it('keeps the language before while another one comes, and where that does not come', async () => {
    const { plan } = await shown();
    const before = plan.store.view.locale;
    let fail: (error: Error) => void = () => undefined;
    registerLanguage('cy', () => new Promise((_, reject) => (fail = reject)));
    const warnings = heardWarnings();
    plan.locale = 'cy';
    await plan.updateComplete;
    expect(plan.store.view.locale).to.equal(before);
    fail(new Error('no connection'));
    await until(() => warnings.length > 0, 'the page’s author is told');
    expect(plan.store.view.locale).to.equal(before);
  });

  it('speaks English where the first language does not come', async () => {
    registerLanguage('eu', () => Promise.reject(new Error('no connection')));
    const warnings = heardWarnings();
    const place = onPage(html`<runnel-plan locale="eu" .plan=${oneBed()}><p>Inside</p></runnel-plan>`);
    const plan = await settled(place, 'runnel-plan');
    await until(() => plan.store.view.locale === 'en-GB', 'it is shown in English');
    expect(warnings).to.have.length(1);
    await quiet(plan);
    expect(getComputedStyle(place.querySelector('p') as Element).visibility).to.equal('visible');
  });

  it('takes up a language that is registered later', async () => {
    const place = onPage(html`<runnel-plan locale="sv" .plan=${oneBed()}></runnel-plan>`);
    const plan = await settled(place, 'runnel-plan');
    expect(plan.store.view.locale).to.equal('en-GB');
    registerLanguage('sv', () => en);
    await until(() => plan.store.view.locale === 'sv', 'it is shown in the language');
  });

  it('keeps two plans on one page apart', async () => {
    const place = onPage(html`
      <runnel-plan class="one" .plan=${oneBed()}><runnel-chart></runnel-chart></runnel-plan>
      <runnel-plan class="two" .plan=${mixedGarden()}><runnel-chart></runnel-chart></runnel-plan>
    `);
    const plans = [...place.querySelectorAll('runnel-plan')];
    for (const plan of plans) await quiet(plan);
    const [one, two] = plans;
    if (one === undefined || two === undefined) throw new Error('there are not two plans');
    const title = titleIn(two);
    one.select({ zone: 'beds', week: 1 });
    one.edit({ type: 'close-week', zone: 'beds', week: '2027-06-07', closed: true });
    await quiet(one);
    await quiet(two);
    expect(two.store.view.selection).to.deep.equal({});
    expect(titleIn(two)).to.equal(title);
  });

  it('gives a view that moves from one plan to another the other’s season', async () => {
    const place = onPage(html`
      <runnel-plan .plan=${oneBed()}><runnel-chart></runnel-chart></runnel-plan>
      <runnel-plan .plan=${metricGarden()}></runnel-plan>
    `);
    const [one, two] = [...place.querySelectorAll('runnel-plan')];
    const chart = place.querySelector('runnel-chart');
    if (one === undefined || two === undefined || chart === null) throw new Error('something is missing');
    await quiet(one);
    two.append(chart);
    await quiet(two);
    const rows = () => chart.shadowRoot?.querySelectorAll('tbody tr').length;
    expect(rows()).to.equal(20);
    one.edit(setMinutes(70));
    await quiet(chart);
    expect(rows()).to.equal(20);
  });

  it('serves a view that is put into it later, and one that is wrapped in other elements’ shadow roots', async () => {
    const { plan, inside } = await shown();
    const shell = document.createElement('div');
    shell.attachShadow({ mode: 'open' }).append(document.createElement('runnel-chart'));
    inside.after(shell);
    const chart = shell.shadowRoot?.querySelector('runnel-chart');
    if (chart === null || chart === undefined) throw new Error('the chart is missing');
    await quiet(chart);
    expect(chart.shadowRoot?.querySelectorAll('tbody tr')).to.have.length(4);
    expect(plan.contains(shell)).to.equal(true);
  });

  it('takes a plan that was set before the element was defined', async () => {
    class Late extends (customElements.get('runnel-plan') as typeof RunnelPlan) {}
    const element = document.createElement('late-plan') as RunnelPlan;
    Object.assign(element, { plan: oneBed() });
    onPage(html`${element}`);
    customElements.define('late-plan', Late);
    await element.updateComplete;
    expect(element.plan?.name).to.equal('One bed');
    expect(element.season?.zones).to.have.length(1);
  });
});
