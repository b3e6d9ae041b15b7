import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/chart/define.ts';
import '../../../src/elements/plan/define.ts';
import type { RunnelChart } from '../../../src/elements/chart/runnel-chart.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { RunnelHoverEvent } from '../../../src/elements/shared/events/hover-event.ts';
import { fieldByWeek } from '../../../src/engine/season/field-by-week.ts';
import { type Season, SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const partOf = <Part extends Element = HTMLElement>(chart: RunnelChart, selector: string): Part => {
  const part = chart.shadowRoot?.querySelector<Part>(selector);
  if (part === null || part === undefined) throw new Error(`the chart has no ${selector}`);
  return part;
};
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u2060', '').replaceAll(/\s+/g, ' ').trim();
const titleOf = (chart: RunnelChart) => plain(partOf(chart, 'h2').textContent);
const canvasOf = (chart: RunnelChart) => partOf<HTMLCanvasElement>(chart, '.plot canvas');
const pictureOf = (chart: RunnelChart) => canvasOf(chart).toDataURL();
const isBlank = (canvas: HTMLCanvasElement) =>
  !canvas
    .getContext('2d')
    ?.getImageData(0, 0, canvas.width, canvas.height)
    .data.some((value) => value > 0);

/** The dry summer of the mixed garden with the beds closed from July on: short, and seen to be. */
function shortGarden() {
  const plan = mixedGarden();
  const closed = Object.fromEntries(
    Array.from({ length: 8 }, (_, week) => {
      const day = new Date(Date.UTC(2027, 6, 5 + 7 * week)).toISOString().slice(0, 10);
      return [day, { closed: true }];
    }),
  );
  return { ...plan, choices: { beds: closed } };
}

async function shown(plan: Plan = shortGarden()): Promise<{ chart: RunnelChart; plan: RunnelPlan }> {
  const place = onPage(html`<runnel-plan locale="en-GB" .plan=${plan}><runnel-chart></runnel-chart></runnel-plan>`);
  const chart = await settled(place, 'runnel-chart');
  const around = await settled(place, 'runnel-plan');
  await until(() => canvasOf(chart).width > 300 && !isBlank(canvasOf(chart)), 'the chart is drawn');
  return { chart, plan: around };
}

const closeZones = (plan: RunnelPlan) =>
  plan.edit({ type: 'set-season', season: { firstDay: '2027-04-05', weeks: 10 } });

describe('runnel-chart', () => {
  before(async function load() {
    this.timeout(60_000);
    await import('../../../src/elements/chart/season-drawing.ts');
    await setViewport({ width: 1000, height: 700 });
  });
  afterEach(clearPage);

  it('says its finding in words: how much is missing, and when', async () => {
    const { chart } = await shown();
    expect(titleOf(chart)).to.match(/^Short by [\d,]+ gal (from|between) \d+ July/);
  });

  it('says that demand is met where it is, and follows an edit that takes it away', async () => {
    const { chart, plan } = await shown(mixedGarden({ choices: {}, log: {} }));
    expect(titleOf(chart)).to.match(/^Enough/);
    const before = pictureOf(chart);
    const edits = Array.from({ length: 6 }, (_, week) => ({
      type: 'close-week' as const,
      zone: 'beds',
      week: new Date(Date.UTC(2027, 6, 5 + 7 * week)).toISOString().slice(0, 10),
      closed: true,
    }));
    plan.edit({ type: 'together', edits });
    await quiet(chart);
    expect(titleOf(chart)).to.match(/^Short by/);
    await until(() => pictureOf(chart) !== before, 'the chart is drawn again');
  });

  it('shows the selected zone once that is asked for, and the whole garden otherwise', async () => {
    const { chart, plan } = await shown();
    const whole = titleOf(chart);
    plan.select({ zone: 'containers' });
    await quiet(chart);
    expect(titleOf(chart)).to.equal(whole);
    partOf<HTMLInputElement>(chart, '.choices label:last-child input').click();
    await quiet(chart);
    expect(chart.scope).to.equal('zone');
    expect(titleOf(chart)).to.match(/^Containers: /);
    plan.select({ zone: 'beds' });
    await quiet(chart);
    expect(titleOf(chart)).to.match(/^Beds: Short by/);
    plan.select({});
    await quiet(chart);
    expect(titleOf(chart)).to.equal(whole);
  });

  it('reads the week that is pointed at, and selects the one that is clicked', async () => {
    const { chart, plan } = await shown();
    const moment = () => plain(partOf(chart, '.moment').textContent);
    expect(moment()).to.equal('By the season’s end, 31 October');
    const { left, top, width, height } = canvasOf(chart).getBoundingClientRect();
    const middle: [number, number] = [Math.round(left + width / 2), Math.round(top + height / 2)];
    await sendMouse({ type: 'move', position: middle });
    await quiet(chart);
    expect(moment()).to.match(/^By the end of \d+/);
    expect(plan.store.view.selection.week).to.equal(undefined);
    await sendMouse({ type: 'click', position: middle });
    await quiet(chart);
    // The axis of volumes on the left takes its share of the width.
    expect(plan.store.view.selection.week).to.be.within(11, 15);
  });

  it('reads the week that is pointed at in another view', async () => {
    const { chart, plan } = await shown();
    const other = document.createElement('p');
    plan.append(other);
    other.dispatchEvent(new RunnelHoverEvent(4));
    await quiet(chart);
    expect(plain(partOf(chart, '.moment').textContent)).to.equal('By the end of 3–9 May');
    other.dispatchEvent(new RunnelHoverEvent(undefined));
    await quiet(chart);
    expect(plain(partOf(chart, '.moment').textContent)).to.equal('By the season’s end, 31 October');
  });

  it('is read and moved along by the keyboard, week by week', async () => {
    const { chart, plan } = await shown();
    plan.select({ zone: 'beds', week: 3 });
    await quiet(chart);
    partOf(chart, '.plot').focus();
    await sendKeys({ press: 'ArrowRight' });
    await quiet(chart);
    expect(plan.store.view.selection).to.include({ zone: 'beds', week: 4 });
    expect(partOf(chart, '.plot').getAttribute('aria-valuenow')).to.equal('5');
    expect(plain(partOf(chart, '.plot').getAttribute('aria-valuetext'))).to.match(
      /^By the end of 3–9 May: What the plants need [\d,]+ gal, Short [\d,.]+ gal, From the soil/,
    );
    await sendKeys({ press: 'End' });
    expect(plan.store.view.selection.week).to.equal(29);
  });

  it('says what the meter shows of the irrigation that it counts at the roots', async () => {
    const { chart, plan } = await shown();
    const words = () => plain(partOf(chart, '.reading .quiet').textContent);
    const gallons = (field: 'litres' | 'irrigationStayedLitres', until: number) => {
      const byWeek = fieldByWeek((plan.season as Season).totals.figures, SUPPLY_FIELDS[field]);
      return byWeek.subarray(0, until + 1).reduce((sum, week) => sum + week, 0) / 3.785411784;
    };
    const said = () =>
      [...words().matchAll(/([\d,.]+) gal/g)].map(([, figure = '']) => Number(figure.replaceAll(',', '')));
    const expectFigures = (until: number) => {
      const [metered, kept] = [gallons('litres', until), gallons('irrigationStayedLitres', until)];
      const figures = said();
      expect(figures).to.have.length(3);
      for (const [at, exact] of [metered, kept, metered - kept].entries())
        expect(figures[at]).to.be.closeTo(exact, 0.5);
    };
    expectFigures(29);
    plan.select({ week: 10 });
    await quiet(chart);
    expectFigures(10);
    expect(gallons('litres', 10)).to.be.greaterThan(gallons('irrigationStayedLitres', 10) + 1);
  });

  it('gives the same figures as a table, whose last row is what the key says', async () => {
    const { chart } = await shown();
    const rows = [...(chart.shadowRoot?.querySelectorAll('tbody tr') ?? [])];
    expect(rows).to.have.length(30);
    const last = [...(rows.at(-1)?.querySelectorAll('td') ?? [])].map((cell) => `${plain(cell.textContent)} gal`);
    const key = [...(chart.shadowRoot?.querySelectorAll('.key dd') ?? [])].map((figure) => plain(figure.textContent));
    expect(last).to.deep.equal(key);
    // Needed, short, from the soil, kept, not kept, rain; then what the week used, and its allowance.
    expect(last).to.have.length(8);
    expect(last[4]).to.equal(/; ([\d,]+ gal) spread/.exec(plain(partOf(chart, '.reading .quiet').textContent))?.[1]);
    expect(last.at(-1)).to.equal('600 gal');
  });

  it('selects a week from the table', async () => {
    const { chart, plan } = await shown();
    partOf<HTMLDetailsElement>(chart, 'details').open = true;
    partOf<HTMLButtonElement>(chart, 'tbody tr:nth-child(8) button').click();
    expect(plan.store.view.selection.week).to.equal(7);
  });

  it('draws nothing anew where only another zone is selected', async () => {
    const { chart, plan } = await shown();
    const before = pictureOf(chart);
    plan.select({ zone: 'containers' });
    await quiet(chart);
    expect(pictureOf(chart) === before, 'the same picture').to.equal(true);
  });

  it('has a fixed size on paper, and its own again afterwards', async () => {
    const { chart } = await shown();
    const before = canvasOf(chart).clientWidth;
    globalThis.dispatchEvent(new Event('beforeprint'));
    expect(canvasOf(chart).style.width).to.equal('660px');
    globalThis.dispatchEvent(new Event('afterprint'));
    expect(canvasOf(chart).clientWidth).to.equal(before);
  });

  it('fits a phone: nothing sticks out at 390 pixels', async () => {
    await setViewport({ width: 390, height: 800 });
    const { chart } = await shown();
    await until(() => canvasOf(chart).clientWidth < 390, 'the drawing follows');
    expect(document.documentElement.scrollWidth).to.be.at.most(390);
    await setViewport({ width: 1000, height: 700 });
    await until(() => canvasOf(chart).clientWidth > 700, 'the drawing follows back');
  });

  it('leaves no drawing behind when it is taken out, and draws again when it is put back', async () => {
    const { chart, plan } = await shown();
    const { Chart } = await import('chart.js');
    const alive = () => Object.keys(Chart.instances).length;
    expect(alive()).to.equal(1);
    chart.remove();
    expect(alive()).to.equal(0);
    plan.append(chart);
    await quiet(chart);
    await until(() => alive() === 1 && !isBlank(canvasOf(chart)), 'the chart is drawn again');
  });

  it('follows a season that gets shorter', async () => {
    const { chart, plan } = await shown();
    closeZones(plan);
    await quiet(chart);
    expect(chart.shadowRoot?.querySelectorAll('tbody tr')).to.have.length(10);
    expect(partOf(chart, '.plot').getAttribute('aria-valuemax')).to.equal('10');
  });
});
