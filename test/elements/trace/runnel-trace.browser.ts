import { expect } from 'chai';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/trace/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { RunnelTrace } from '../../../src/elements/trace/runnel-trace.ts';
import { traceCell } from '../../../src/explain/trace/trace-cell.ts';
import { describeStep, STEP_GROUPS, stepGroup } from '../../../src/language/describe-step.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled } from '../shared/on-page.ts';

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();
const textOf = (trace: RunnelTrace, selector: string) => plain(trace.shadowRoot?.querySelector(selector)?.textContent);
const textIn = (step: Element | undefined, selector: string) => plain(step?.querySelector(selector)?.textContent);
const stepsOf = (trace: RunnelTrace) => [...(trace.shadowRoot?.querySelectorAll('li') ?? [])];

async function shown(): Promise<{ trace: RunnelTrace; plan: RunnelPlan }> {
  const place = onPage(
    html`<runnel-plan locale="en-GB" .plan=${mixedGarden()}><runnel-trace></runnel-trace></runnel-plan>`,
  );
  return { trace: await settled(place, 'runnel-trace'), plan: await settled(place, 'runnel-plan') };
}

async function select(parts: Awaited<ReturnType<typeof shown>>, selection: Parameters<RunnelPlan['select']>[0]) {
  parts.plan.select(selection);
  await quiet(parts.trace);
}

describe('runnel-trace', () => {
  afterEach(clearPage);

  it('says the next step while no cell is selected', async () => {
    const parts = await shown();
    expect(textOf(parts.trace, '.waiting')).to.match(/^Select a cell of the sheet/);
    await select(parts, { zone: 'beds' });
    expect(textOf(parts.trace, '.waiting')).to.match(/^Select a cell of the sheet/);
  });

  it('asks about the number of the selected cell, and answers with every step of the engine’s trace', async () => {
    const parts = await shown();
    // Minutes of that week are set by hand.
    await select(parts, { zone: 'beds', week: 13 });
    expect(textOf(parts.trace, 'h2')).to.match(/^Why 120 min, \d+ gal\?$/);
    expect(textOf(parts.trace, 'header p')).to.equal('Beds, 5–11 Jul');
    const season = parts.plan.season;
    if (season === undefined) throw new Error('there is no season');
    const groupOf = (id: Parameters<typeof stepGroup>[0]) => STEP_GROUPS.indexOf(stepGroup(id, reader.language));
    const reader = readerFor('en-GB', 'us');
    const steps = traceCell(season, { zoneId: 'beds', week: 13 }).toSorted(
      (one, other) => groupOf(one.id) - groupOf(other.id),
    );
    expect(stepsOf(parts.trace)).to.have.length(steps.length);
    for (const [order, step] of steps.entries()) {
      const item = stepsOf(parts.trace)[order];
      const { title, says, formula, source, result, inputs } = describeStep(step, reader);
      expect(textIn(item, '.title')).to.equal(plain(title));
      expect(textIn(item, '.says')).to.equal(plain(says));
      expect(textIn(item, '.result')).to.equal(plain(result));
      expect(textIn(item, '.working')).to.contain(plain(formula)).and.to.contain(plain(source));
      expect([...(item?.querySelectorAll('dt, dd') ?? [])].map(({ textContent }) => plain(textContent))).to.deep.equal(
        inputs.flatMap(({ label, value }) => [plain(label), plain(value)]),
      );
    }
  });

  it('answers in three sentences first, and names the planting that sets the run, which leads there', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', week: 15 });
    const sentences = [...(parts.trace.shadowRoot?.querySelectorAll('.answer p') ?? [])].map((p) =>
      plain(p.textContent),
    );
    expect(sentences).to.have.length(3);
    expect(sentences[0]).to.match(/^This week the plants need \d\.\d\d in, most of all Tomatoes: \d\.\d\d in\.$/);
    expect(sentences[1]).to.match(/^Rain gives \d\.\d\d in of the \d\.\d\d in that usually falls\.$/);
    expect(sentences[2]).to.match(/^The run is set by Tomatoes: \d days? of \d+ min\.$/);
    const folds = [...(parts.trace.shadowRoot?.querySelectorAll('details.group') ?? [])];
    expect(folds.map((fold) => textIn(fold, '.title'))).to.deep.equal(['Weather', 'Need', 'Minutes', 'Check']);
    parts.trace.shadowRoot?.querySelector<HTMLElement>('.answer button')?.click();
    await quiet(parts.trace);
    expect(parts.plan.store.view.selection).to.deep.include({ zone: 'beds', planting: 'tomatoes', week: 15 });
    expect(textOf(parts.trace, '.answer .need')).to.match(/^What Tomatoes would use this week: \d\.\d\d in\.$/);
    await select(parts, { zone: 'beds', week: 13 });
    expect(textOf(parts.trace, '.answer .run')).to.match(/^The run is set by hand: /);
  });

  it('says how deep a run wets the ground, how long it is of use, and what to look for, folded beneath', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', planting: 'tomatoes', week: 15 });
    const told = [...(parts.trace.shadowRoot?.querySelectorAll('.depths p') ?? [])].map((p) => plain(p.textContent));
    expect(told).to.have.length(2);
    expect(told[0]).to.match(/^Tomatoes: \d+ min wet the ground .*in/);
    expect(told[1]).to.match(/^The day after, push a thin rod into the ground beside an emitter/);
    expect(textOf(parts.trace, 'summary')).to.equal('How deep, and what to look for');
  });

  it('asks about a week’s weather alone where that is selected', async () => {
    const parts = await shown();
    await select(parts, { weather: 'rain', week: 4 });
    // The total of that week is entered by hand.
    expect(textOf(parts.trace, 'h2')).to.equal('Why 0.30 in of rain?');
    expect(stepsOf(parts.trace).map((step) => textIn(step, '.title'))).to.deep.equal([
      'Measured rain of the week',
      'Rain',
    ]);
    await select(parts, { weather: 'eto', week: 4 });
    expect(textOf(parts.trace, 'h2')).to.match(/^Why \d\.\d\d in of reference ET\?$/);
    expect(textIn(stepsOf(parts.trace).at(-1), '.title')).to.equal('Reference evapotranspiration (ETo)');
  });

  it('folds how a step is worked out beneath its sentence', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', week: 13 });
    const group = parts.trace.shadowRoot?.querySelector<HTMLDetailsElement>('details.group');
    expect(group?.open).to.equal(false);
    group?.querySelector('summary')?.click();
    expect(group?.open).to.equal(true);
    const details = stepsOf(parts.trace)[0]?.querySelector('details');
    expect(details?.open).to.equal(false);
    details?.querySelector('summary')?.click();
    expect(details?.open).to.equal(true);
  });

  it('shows figures in the plan’s units', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', week: 13 });
    const results = stepsOf(parts.trace).map((step) => plain(step.querySelector('.result')?.textContent));
    expect(results.some((result) => / gal$/.test(result))).to.equal(true);
    expect(results.some((result) => / in$/.test(result))).to.equal(true);
    parts.plan.edit({ type: 'convert-units', units: 'metric' });
    await quiet(parts.trace);
    const metric = stepsOf(parts.trace).map((step) => plain(step.querySelector('.result')?.textContent));
    expect(metric.some((result) => / L$/.test(result))).to.equal(true);
    expect(metric.some((result) => / (gal|in)$/.test(result))).to.equal(false);
  });

  it('turns to one planting of the zone and back to its total', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', week: 13 });
    const whose = parts.trace.shadowRoot?.querySelector('select');
    if (whose === null || whose === undefined) throw new Error('there is no choice of plantings');
    expect([...whose.options].map((option) => plain(option.textContent))).to.deep.equal([
      'The whole zone',
      'Tomatoes',
      'Shrubs',
    ]);
    whose.value = 'shrubs';
    whose.dispatchEvent(new Event('change'));
    await quiet(parts.trace);
    expect(parts.plan.store.view.selection).to.deep.include({ zone: 'beds', planting: 'shrubs', week: 13 });
    expect(textOf(parts.trace, 'h2')).to.match(/^Why \S+ gal\?$/);
    whose.value = '';
    whose.dispatchEvent(new Event('change'));
    await quiet(parts.trace);
    expect(parts.plan.store.view.selection.planting).to.equal(undefined);
  });

  it('explains a week of the whole garden where no zone is selected', async () => {
    const parts = await shown();
    await select(parts, { week: 13 });
    expect(textOf(parts.trace, 'header p')).to.equal('Whole garden, 5–11 Jul');
    expect(stepsOf(parts.trace).length).to.be.greaterThan(2);
  });

  it('follows an edit', async () => {
    const parts = await shown();
    await select(parts, { zone: 'beds', week: 13 });
    parts.plan.edit({ type: 'set-minutes', zone: 'beds', week: '2027-07-05', minutes: 33 });
    await quiet(parts.trace);
    expect(textOf(parts.trace, 'h2')).to.match(/^Why 33 min, /);
  });
});
