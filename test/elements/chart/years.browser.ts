/** Dry and wet years beside the plan, and the sheet in the weather of one of them. */
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/plan/define.ts';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { packedYears } from '../../../src/plan/packed-years.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, until } from '../shared/on-page.ts';

/** Invented: six years, each wetter than the one before. */
function withYears(): Plan {
  const firstDay = dayNumber('2015-01-01');
  const days = dayNumber('2021-01-01') - firstDay;
  const rainMm = Float64Array.from({ length: days }, (_, day) => (day % 9 === 0 ? 4 * Math.floor(day / 365) : 0));
  const etoMm = Float64Array.from({ length: days }, () => 4.5);
  const plan = oneBed({ supply: { sources: [], tank: { capacity: 400, start: 400 } } });
  const years = packedYears({ firstDay, rainMm, etoMm, source: 'a station', season: plan.season });
  return { ...plan, site: { ...plan.site, ...(years && { years }) } };
}

describe('dry and wet years', () => {
  afterEach(clearPage);

  it('stand in the chart, and the plan is shown in one of them, marked, with nothing changed', async () => {
    const own = withYears();
    const place = onPage(html`<runnel-plan .plan=${own}><runnel-chart></runnel-chart></runnel-plan>`);
    const plan = place.querySelector('runnel-plan');
    const chart = () => place.querySelector('runnel-chart')?.shadowRoot;
    if (plan === null) throw new Error('there is no plan');
    await quiet(plan);
    await until(() => chart()?.querySelector('select[name=year]') !== null, 'the years are run');
    expect(chart()?.querySelector('h2')?.textContent).to.match(/In \d years of 6 the tank lasts/);
    const select = chart()?.querySelector<HTMLSelectElement>('select[name=year]');
    const labels = [...(select?.options ?? [])].map(({ text }) => text);
    expect(labels[1]).to.equal('a dry year: 2015');
    expect(labels[3]).to.match(/^a wet year: 20(?:19|20)$/);
    const wet = labels[3]?.slice(-4) ?? '';
    const before = plan.season;
    const planBefore = plan.plan;
    if (select) {
      select.value = select.options[3]?.value ?? '';
      select.dispatchEvent(new Event('change'));
    }
    const strip = () => plan.shadowRoot?.querySelector('.year')?.textContent ?? '';
    await until(() => strip().includes(wet), 'the year stands over the page');
    expect(plan.season).not.to.equal(before);
    expect(plan.store.view.readOnly).to.equal(true);
    expect(plan.edit({ type: 'rename-plan', name: 'Other' }).ok).to.equal(false);
    expect(plan.plan).to.equal(planBefore);
    plan.shadowRoot?.querySelector<HTMLButtonElement>('.year button')?.click();
    await until(() => strip() === '', 'the plan is back');
    expect(plan.season).to.equal(before);
    expect(plan.edit({ type: 'rename-plan', name: 'Other' }).ok).to.equal(true);
  });
});
