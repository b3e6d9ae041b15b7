import { expect } from 'chai';
import '../../../src/elements/notices/define.ts';
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/week/define.ts';
import type { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import type { RunnelWeek } from '../../../src/elements/week/runnel-week.ts';
import { SUPPLY_FIELDS, type ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { refusalFault } from '../../../src/store/refusals.ts';
import { mixedGarden } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet, settled, until } from '../shared/on-page.ts';

const plain = (text: string | null | undefined) =>
  (text ?? '')
    .replaceAll('\u2060', '')
    .replaceAll(/[\s\u00a0\u202f]+/g, ' ')
    .trim();

async function shown(today: string, garden = mixedGarden()): Promise<{ list: RunnelWeek; plan: RunnelPlan }> {
  const place = onPage(
    html`<runnel-plan locale="en-GB" .plan=${garden}><runnel-week today=${today}></runnel-week></runnel-plan>`,
  );
  return { list: await settled(place, 'runnel-week'), plan: await settled(place, 'runnel-plan') };
}

const textOf = (list: RunnelWeek, selector: string) => plain(list.shadowRoot?.querySelector(selector)?.textContent);

function part<Element extends HTMLElement>(list: RunnelWeek, selector: string): Element {
  const found = list.shadowRoot?.querySelector<Element>(selector);
  if (!found) throw new Error(`there is no ${selector}`);
  return found;
}

async function pressed(list: RunnelWeek, name: string): Promise<void> {
  part(list, `button[name="${name}"]`).click();
  await quiet(list);
}

const zoneOf = (plan: RunnelPlan, id: string) => plan.season?.zones.find(({ zone }) => zone.id === id) as ZoneSeason;
const recordOf = (plan: RunnelPlan, id: string) => {
  const run = plan.plan?.log?.runs?.[id]?.['2027-06-28'];
  return typeof run === 'object' ? run : undefined;
};
const minutesIn = (plan: RunnelPlan, id: string) =>
  Object.fromEntries(Object.entries(recordOf(plan, id)?.days ?? {}).map(([day, { minutes }]) => [day, minutes]));
const fieldOf = (list: RunnelWeek, name: string) =>
  list.shadowRoot?.querySelector(`input[name="${name}"]`) as HTMLInputElement;

async function entered(list: RunnelWeek, name: string, text: string): Promise<void> {
  const field = fieldOf(list, name);
  field.value = text;
  field.dispatchEvent(new Event('change'));
  await quiet(list);
}

// The garden starts on Monday 5 April 2027: Wednesday 30 June lies in its thirteenth week.
describe('runnel-week', () => {
  afterEach(clearPage);

  it('shows the week of today whatever is selected elsewhere, and what runs today with start, minutes and shut-offs', async () => {
    const { list, plan } = await shown('2027-06-30');
    plan.select({ week: 3, zone: 'beds' });
    await quiet(list);
    expect(textOf(list, 'h2')).to.equal('Wednesday 30 June');
    const cell = zoneWeek(zoneOf(plan, 'beds'), 12);
    expect(cell.minutes).to.be.greaterThan(0);
    expect(textOf(list, '.runs .zone')).to.equal('Beds');
    expect(Number.parseFloat(textOf(list, '.runs .minutes'))).to.be.closeTo(cell.minutesPerDay, 0.51);
    expect(textOf(list, '.runs .start')).to.equal('5:00');
    expect(textOf(list, '.runs .what')).to.match(/also Fri and Sun/);
    expect(textOf(list, '.runs .what')).to.match(/Shrubs (open|shut) (today|all week|every time)/);
  });

  it('says of another week that it is not that of today, and leads back', async () => {
    const { list } = await shown('2027-06-30');
    await pressed(list, 'next');
    expect(textOf(list, 'h2')).to.equal('5–11 July');
    expect(textOf(list, 'header')).to.contain('This is not the week of today.');
    expect(list.shadowRoot?.querySelector('.today')).to.equal(null);
    await pressed(list, 'this-week');
    expect(textOf(list, 'h2')).to.equal('Wednesday 30 June');
  });

  it('shows the first week before the season and the last after it', async () => {
    const { list } = await shown('2026-01-01');
    expect(textOf(list, 'h2')).to.equal('5–11 April');
    expect(textOf(list, 'header')).to.contain('The season starts on 5 April.');
    expect(part<HTMLButtonElement>(list, '[name=previous]').disabled).to.equal(true);
    list.today = '2028-01-01';
    await quiet(list);
    expect(textOf(list, 'header')).to.contain('The season ended on 31 October.');
    expect(part<HTMLButtonElement>(list, '[name=next]').disabled).to.equal(true);
  });

  it('ticks what ran today: it stays as it was run, and the days to come stay computed', async () => {
    const { list, plan } = await shown('2027-06-30');
    const before = plan.season?.totals.figures.block.slice();
    const { minutesPerDay } = zoneWeek(zoneOf(plan, 'beds'), 12);
    await pressed(list, 'tick-beds');
    expect(minutesIn(plan, 'beds')).to.deep.equal({ '2027-06-30': minutesPerDay });
    expect(recordOf(plan, 'beds')?.rest).to.equal('computed');
    expect(plan.season?.totals.figures.block).to.deep.equal(before);
    expect(part(list, '[name=tick-beds]').getAttribute('aria-checked')).to.equal('true');
    // Rain of the day after changes Friday, and no longer what ran on Wednesday.
    plan.edit({ type: 'change-day-weather', day: '2027-06-29', change: { rain: 1 } });
    await quiet(list);
    expect(zoneWeek(zoneOf(plan, 'beds'), 12).minutesDay2).to.equal(minutesPerDay);
    expect(zoneWeek(zoneOf(plan, 'beds'), 12).minutesDay4).to.be.lessThan(minutesPerDay);
    await pressed(list, 'tick-beds');
    expect(recordOf(plan, 'beds')).to.equal(undefined);
  });

  it('ticks all of today by one press, as one step', async () => {
    const { list, plan } = await shown('2027-06-30');
    await pressed(list, 'all-done');
    expect(['beds', 'containers'].map((zone) => Object.keys(minutesIn(plan, zone)))).to.deep.equal([
      ['2027-06-30'],
      ['2027-06-30'],
    ]);
    expect(list.shadowRoot?.querySelectorAll('.runs [aria-checked=true]').length).to.equal(2);
    plan.undo();
    await quiet(list);
    expect(recordOf(plan, 'beds')).to.equal(undefined);
  });

  it('says what is held at the timer where a run is not needed', async () => {
    const rained = mixedGarden({ log: { days: { '2027-07-01': { rain: 1.5 } } } });
    // Three minutes are less than half of such a step.
    const coarse = applyEdit(rained, { type: 'change-zone', zone: 'beds', change: { timerStepMinutes: 10 } });
    const { list } = await shown('2027-07-02', coarse);
    expect(textOf(list, '.held')).to.match(/^Hold at the timer today: .*Beds/);
    const box = part(list, '.row:not(.heads) .day:nth-child(6) .box');
    expect(box.classList.contains('skipped')).to.equal(true);
  });

  it('takes the rain of any of the last seven days, of the week before too', async () => {
    const { list, plan } = await shown('2027-06-30');
    const button = part(list, 'button[name=enter-rain]');
    const lifted = new Event('touchend', { cancelable: true });
    button.dispatchEvent(lifted);
    await quiet(list);
    expect(lifted.defaultPrevented, 'no mouse after the finger takes the keyboard from the tube').to.equal(true);
    expect(list.shadowRoot?.activeElement?.getAttribute('name')).to.equal('rain-2027-06-30');
    await entered(list, 'rain-2027-06-30', '.35');
    await entered(list, 'rain-2027-06-24', '0,2');
    expect(textOf(list, '#rain-2027-06-24-why')).not.to.equal('');
    await entered(list, 'rain-2027-06-24', '0.2');
    await pressed(list, 'rain-2027-06-28-more');
    expect(plan.plan?.log?.days).to.deep.include({
      '2027-06-24': { rain: 0.2 },
      '2027-06-28': { rain: 0.05 },
      '2027-06-30': { rain: 0.35 },
    });
    expect(textOf(list, '.rain')).to.equal('0.40 in');
    await entered(list, 'rain-2027-06-30', '35');
    expect(plan.plan?.log?.days?.['2027-06-30']).to.deep.equal({ rain: 0.35 });
  });

  it('takes one total with the day through which it was read', async () => {
    const { list, plan } = await shown('2027-06-30');
    const week = () => plan.plan?.log?.weeks?.['2027-06-28'];
    await pressed(list, 'enter-rain');
    await pressed(list, 'rain-form');
    await entered(list, 'rain-2027-06-28-total', '0.4');
    expect(week()).to.deep.equal({ rain: 0.4, rainThrough: '2027-06-30' });
    const select = part<HTMLSelectElement>(list, '.total select');
    select.value = '2027-07-01';
    select.dispatchEvent(new Event('change'));
    await quiet(list);
    expect(week()).to.deep.equal({ rain: 0.4, rainThrough: '2027-07-01' });
  });

  it('takes a total below what a service filled in, says what gave way, and undo brings it back', async () => {
    const garden = mixedGarden();
    const filled = {
      '2027-06-28': { rain: 0.4, source: 'service' },
      '2027-06-29': { rain: 0.3, source: 'service' },
    } as const;
    const { list, plan } = await shown('2027-06-30', { ...garden, log: { ...garden.log, days: filled } });
    await pressed(list, 'enter-rain');
    await pressed(list, 'rain-form');
    await entered(list, 'rain-2027-06-28-total', '0.2');
    expect(plan.plan?.log?.days).to.equal(undefined);
    expect(textOf(list, '.total .remark')).to.match(/^Your total counts: .* 2 days was taken out/);
    plan.undo();
    await quiet(list);
    expect(plan.plan?.log?.days).to.deep.equal(filled);
    expect(textOf(list, '.total .remark')).to.equal('');
  });

  it('takes a forecast of days to come, of today’s issue, says it, and lets go of it', async () => {
    const { list, plan } = await shown('2027-06-30');
    expect(list.shadowRoot?.querySelectorAll('.forecast tbody tr').length).to.equal(5);
    await entered(list, 'forecast-2027-07-02-rain', '0.5');
    await entered(list, 'forecast-2027-07-01-eto', '0.1');
    expect(plan.plan?.log?.forecasts).to.deep.equal([
      { issued: '2027-06-30', days: { '2027-07-01': { eto: 0.1 }, '2027-07-02': { rain: 0.5 } } },
    ]);
    expect(textOf(list, '.weather')).to.match(/Forecast: 0\.50? in on Friday\./);
    await entered(list, 'forecast-2027-07-02-rain', '');
    await entered(list, 'forecast-2027-07-01-eto', '');
    expect(plan.plan?.log?.forecasts).to.equal(undefined);
  });

  it('closes the week: what is open is logged as planned, and undo brings it back', async () => {
    const { list, plan } = await shown('2027-07-04');
    const before = plan.season?.totals.figures.block.slice();
    await pressed(list, 'close-week');
    expect(textOf(list, 'h2')).to.equal('Close the week');
    expect(textOf(list, '.foot')).to.contain('Next week stays as planned.');
    await pressed(list, 'close');
    expect(plan.season?.zones.map((zone) => zoneWeek(zone, 12).origin)).to.deep.equal(['run', 'run']);
    expect(plan.season?.totals.figures.block).to.deep.equal(before);
    expect(textOf(list, '.week')).to.contain('This week is closed.');
    await pressed(list, 'undo');
    expect(recordOf(plan, 'beds')).to.equal(undefined);
  });

  it('takes other minutes and shut-offs of a day, keeps the rest as planned, and says what next week does', async () => {
    const { list, plan } = await shown('2027-07-04', mixedGarden({ choices: {} }));
    await pressed(list, 'close-week');
    await pressed(list, 'as-planned');
    const planned = minutesIn(plan, 'beds')['2027-07-02'] as number;
    expect(textOf(list, '.closing')).to.contain('as planned');
    await pressed(list, 'box-beds-6');
    await entered(list, 'run-beds-2027-07-04', '1');
    expect(minutesIn(plan, 'beds')).to.deep.equal({ '2027-06-30': planned, '2027-07-02': planned, '2027-07-04': 1 });
    expect(part(list, '[name=box-beds-6] .box').classList.contains('changed')).to.equal(true);
    expect(textOf(list, '[name=box-beds-6] .box')).to.equal('1');
    expect(textOf(list, '.foot')).to.match(/Next week Beds runs [\d.]+ min, not [\d.]+ min; nothing else changes\./);
    const isOpen = recordOf(plan, 'beds')?.days['2027-07-04']?.open?.includes('shrubs') === true;
    await pressed(list, isOpen ? 'shut-shrubs' : 'open-shrubs');
    expect(recordOf(plan, 'beds')?.days['2027-07-04']?.open).to.deep.equal(isOpen ? [] : ['shrubs']);
    await pressed(list, 'planned');
    expect(minutesIn(plan, 'beds')['2027-07-04']).to.equal(undefined);
  });

  it('keeps what is no number in its field, and says why', async () => {
    const { list, plan } = await shown('2027-07-04');
    await pressed(list, 'close-week');
    await pressed(list, 'zone-beds');
    const name = 'run-beds-2027-06-30';
    const { plan: before } = plan;
    await entered(list, name, 'seven');
    expect(fieldOf(list, name).value).to.equal('seven');
    expect(textOf(list, `#${name}-why`)).to.contain('is not a number');
    await entered(list, name, '2000');
    expect(textOf(list, `#${name}-why`)).to.contain('1,440');
    expect(plan.plan).to.equal(before);
    await entered(list, name, '7');
    expect(fieldOf(list, name).getAttribute('aria-invalid')).to.equal(null);
  });

  it('sets the meter beside what was expected, and says what a difference may mean', async () => {
    const { list, plan } = await shown('2027-07-04', mixedGarden({ log: { meter: { '2027-06-27': 1000 } } }));
    await pressed(list, 'close-week');
    const says = () => textOf(list, '.meter [role=status]');
    await entered(list, 'meter-2027-07-04', '900');
    expect(says()).to.contain('less than the reading before');
    const gallons = (plan.season?.totals.figures.at(SUPPLY_FIELDS.litres, 12) as number) / 3.785411784;
    await entered(list, 'meter-2027-07-04', String(Math.round(1000 + gallons)));
    expect(says()).to.contain('That agrees.');
    await entered(list, 'meter-2027-07-04', String(Math.round(1000 + 2 * gallons)));
    expect(says()).to.match(/That is \d+% more/);
    expect(says()).to.contain('Check for a leak');
    await entered(list, 'meter-2027-07-04', '1001');
    expect(says()).to.contain('clogged filter');
    expect(plan.plan?.log?.meter).to.deep.equal({ '2027-06-27': 1000, '2027-07-04': 1001 });
  });

  it('takes a note of the week', async () => {
    const { list, plan } = await shown('2027-07-04');
    await pressed(list, 'close-week');
    const note = part<HTMLTextAreaElement>(list, '[name=note]');
    note.value = 'Supply off on Sunday.';
    note.dispatchEvent(new Event('change'));
    await quiet(list);
    expect(plan.plan?.log?.weeks?.['2027-06-28']).to.deep.equal({ note: 'Supply off on Sunday.' });
  });

  it('says why where a zone cannot be ticked, and leaves its box as it was', async () => {
    const { list, plan } = await shown('2027-06-30');
    const faults = [refusalFault('not-computed')];
    plan.addEventListener(
      'runnel-edit',
      (event) => {
        event.stopImmediatePropagation();
        event.result = { ok: false, faults };
      },
      { capture: true, once: true },
    );
    await pressed(list, 'tick-beds');
    expect(textOf(list, '[role=alert]')).to.contain('The plan');
    expect(part(list, '[name=tick-beds]').getAttribute('aria-checked')).to.equal('false');
    await pressed(list, 'tick-beds');
    expect(textOf(list, '[role=alert]')).to.equal('');
    expect(part(list, '[name=tick-beds]').getAttribute('aria-checked')).to.equal('true');
  });

  it('offers no boxes where the plan can only be looked at', async () => {
    const { list, plan } = await shown('2027-06-30');
    plan.readOnly = true;
    await quiet(plan);
    expect(list.shadowRoot?.querySelectorAll('input, [role=checkbox], button.cell, [name=close-week]').length).to.equal(
      0,
    );
  });

  it('carries each caution once on a page of two plans, and keeps it where the first goes', async () => {
    const one = html`<runnel-plan locale="en-GB" .plan=${mixedGarden()}><runnel-week today="2027-06-30"></runnel-week></runnel-plan>`;
    const place = onPage(html`<div>${one}${one}</div>`);
    await settled(place, 'runnel-week');
    const lists = [...place.querySelectorAll('runnel-week')];
    for (const list of lists) await quiet(list);
    const shownIn = () => lists.map((list) => list.shadowRoot?.querySelectorAll('.cautions').length);
    expect(shownIn()).to.deep.equal([1, 0]);
    place.querySelector('runnel-plan')?.remove();
    await quiet(lists[1] as RunnelWeek);
    expect(shownIn()[1]).to.equal(1);
  });

  it('draws no box on a day without a run where forced colours draw what is transparent', async () => {
    const { list } = await shown('2027-06-30');
    const visibilities = (selector: string) =>
      new Set([...(list.shadowRoot?.querySelectorAll(selector) ?? [])].map((box) => getComputedStyle(box).visibility));
    expect([...visibilities('.table .box.none')]).to.deep.equal(['hidden']);
    expect([...visibilities('.table .box.to-run')]).to.deep.equal(['visible']);
  });

  it('carries each caution once beside an attention list, in what is seen of both', async () => {
    const place = onPage(
      html`<runnel-plan locale="en-GB" .plan=${mixedGarden()}><runnel-notices></runnel-notices><runnel-week today="2027-06-30"></runnel-week></runnel-plan>`,
    );
    const list = await settled(place, 'runnel-week');
    const notices = await settled(place, 'runnel-notices');
    const isIn = (each: HTMLElement) => each.shadowRoot?.querySelector('.cautions') !== null;
    await until(() => isIn(notices) !== isIn(list), 'they stand once');
    const [first, other] = isIn(notices) ? [notices, list] : [list, notices];
    first.style.display = 'none';
    await until(() => isIn(other), 'they stand in what is seen');
    first.style.display = '';
    await until(() => isIn(first) && !isIn(other), 'they stand once again');
  });

  it('carries the cautions', async () => {
    const { list } = await shown('2027-06-30');
    expect(textOf(list, '.cautions')).to.contain('backflow').and.to.contain('Local codes');
  });
});
