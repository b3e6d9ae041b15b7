/** Seasons that take long: the page goes on, progress shows, views change all at once, and edits are answered in order. */
import { expect } from 'chai';
import '../../../src/elements/garden/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/trace/define.ts';
import '../../../src/elements/week/define.ts';
import { RunnelEditEvent } from '../../../src/elements/shared/events/edit-event.ts';
import { RunnelHistoryEvent } from '../../../src/elements/shared/events/history-event.ts';
import type { Edit } from '../../../src/plan/edits/edit.ts';
import { benchGarden, zoneIdAt } from '../../bench/gardens.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, until } from '../shared/on-page.ts';

const LARGE = benchGarden(150);
const wet = (factor: number): Edit => ({
  type: 'set-climate',
  climate: { ...LARGE.site.climate, rain: LARGE.site.climate.rain?.map((month) => (month ?? 0) * factor) },
});
const minutes: Edit = { type: 'set-minutes', zone: zoneIdAt(0), week: '2027-06-07', minutes: 77 };

async function opened() {
  const place = onPage(html`<runnel-plan .plan=${LARGE}><runnel-week today="2027-06-08"></runnel-week></runnel-plan>`);
  const plan = place.querySelector('runnel-plan') ?? expect.fail('there is no plan');
  const week = place.querySelector('runnel-week') ?? expect.fail('there is no week');
  return { place, plan, week };
}

const strip = (plan: HTMLElement) => plan.shadowRoot?.querySelector('.progress');

function sent(from: HTMLElement, edit: Edit): RunnelEditEvent {
  const event = new RunnelEditEvent(edit);
  from.dispatchEvent(event);
  return event;
}

describe('a season that takes long', () => {
  afterEach(clearPage);

  it('is computed while its page goes on, with progress, where the plan is a property', async () => {
    const { plan } = await opened();
    expect(plan.plan).to.equal(undefined);
    expect(plan.store.view.status).to.equal('loading');
    const steps: number[] = [];
    await until(() => {
      const bar = strip(plan)?.querySelector('progress');
      if (bar) steps.push(bar.value / bar.max);
      return plan.plan !== undefined;
    }, 'the plan is open');
    expect(plan.plan?.zones.length).to.equal(150);
    expect(plan.store.view.status).to.equal('ready');
    expect(steps.every((share) => share >= 0 && share <= 1)).to.equal(true);
    await plan.updateComplete;
    expect(strip(plan) ?? null).to.equal(null);
  });

  it('of an edit leaves all views as they were until it is there; what is asked for meanwhile comes after it', async () => {
    const { plan, week } = await opened();
    await until(() => plan.season !== undefined, 'the plan is open');
    await quiet(plan);
    const { view } = plan.store;
    const causes: string[] = [];
    plan.addEventListener('runnel-change', ({ cause }) => causes.push(cause));
    const climate = sent(week, wet(1.4));
    expect(climate.result).to.equal(undefined);
    expect(climate.answer).to.be.instanceOf(Promise);
    const set = sent(week, minutes);
    const wrong = sent(week, { ...minutes, minutes: -3 });
    const undo = new RunnelHistoryEvent('undo');
    week.dispatchEvent(undo);
    expect(plan.store.view).to.equal(view);
    expect((await climate.answer)?.ok).to.equal(true);
    expect(plan.season?.garden.site).not.to.equal(view.season?.garden.site);
    expect((await set.answer)?.ok).to.equal(true);
    expect((await wrong.answer)?.ok).to.equal(false);
    expect(await undo.answer).to.equal(true);
    expect([climate.result?.ok, set.result?.ok, wrong.result?.ok, undo.done]).to.deep.equal([true, true, false, true]);
    expect(causes).to.deep.equal(['edit', 'edit', 'undo']);
    expect(plan.plan?.choices).to.deep.equal(LARGE.choices);
    expect(sent(week, minutes).result?.ok).to.equal(true);
  });

  it('is given up where another plan is set meanwhile', async () => {
    const { plan } = await opened();
    const changes: number[] = [];
    plan.addEventListener('runnel-change', (event) => changes.push(event.plan.zones.length));
    plan.plan = mixedGarden();
    await until(() => plan.plan !== undefined, 'a plan is open');
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(changes).to.deep.equal([mixedGarden().zones.length]);
    expect(plan.store.view.status).to.equal('ready');
  });
});
