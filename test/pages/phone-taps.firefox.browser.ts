/** A week on a phone, from opening to closing it, by real taps and keys: each of them is counted. */
import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { clearPage, until } from '../elements/shared/on-page.ts';
import { openDemoPlanner } from './demo-planner.ts';

const MOST_TAPS = 6;
const LONG = 60_000;
const PHONE = { width: 390, height: 844 };

async function opened(today: string) {
  const planner = await openDemoPlanner(PHONE, today);
  await until(() => planner.querySelector('runnel-week') !== null, 'this week is the first view');
  const week = planner.querySelector('runnel-week') ?? expect.fail('this week is not the first view');
  const within = () => week.shadowRoot ?? expect.fail('this week is empty');
  let taps = 0;
  return {
    within,
    log: () => planner.querySelector('runnel-plan')?.plan?.log,
    tap: async (selector: string) => {
      await until(() => within().querySelector(selector) !== null, `${selector} is there`);
      const target = within().querySelector<HTMLElement>(selector) ?? expect.fail(selector);
      target.scrollIntoView({ block: 'center' });
      await new Promise((resolve) => setTimeout(resolve, 100));
      const { left, top, width, height } = target.getBoundingClientRect();
      await sendMouse({ type: 'click', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
      taps++;
    },
    keys: async (...keys: string[]) => {
      for (const key of keys) await sendKeys({ press: key });
      taps += keys.length;
    },
    /** Since it was asked last. */
    taps: () => {
      const counted = taps;
      taps = 0;
      return counted;
    },
  };
}

describe('a week on a phone', function () {
  this.timeout(LONG);
  after(() => setViewport({ width: 1440, height: 900 }));
  afterEach(clearPage);

  it('shows within the first screen what to run', async () => {
    const { within } = await opened('2027-06-16');
    await until(() => within().querySelector('.runs .minutes') !== null, 'the runs are there');
    const first = within().querySelector('.runs .minutes')?.getBoundingClientRect();
    const last = [...within().querySelectorAll('.runs .minutes')].at(-1)?.getBoundingClientRect();
    expect(first?.top).to.be.at.least(0);
    expect(last?.bottom).to.be.at.most(PHONE.height);
  });

  for (const day of ['2027-06-16', '2027-06-15', '2027-06-10']) {
    it(`takes the rain of ${day} in six taps`, async () => {
      const { tap, keys, taps, log } = await opened('2027-06-16');
      await tap('[name=enter-rain]');
      await tap(`input[name="rain-${day}"]`);
      await keys('3', '5');
      await tap('[name=enter-rain]');
      await until(() => log()?.days?.[day]?.rain === 0.35, 'the rain is in the plan');
      expect(taps()).to.be.at.most(MOST_TAPS);
    });
  }

  it('takes one total in six taps, and closes the week in six more', async () => {
    const { tap, keys, taps, log } = await opened('2027-06-20');
    await tap('[name=enter-rain]');
    await tap('[name=rain-form]');
    await keys('.', '3', '5');
    await tap('[name=enter-rain]');
    await until(() => log()?.weeks?.['2027-06-14']?.rain === 0.35, 'the total is in the plan');
    expect(taps()).to.be.at.most(MOST_TAPS);
    await tap('[name=close-week]');
    await tap('[name=as-planned]');
    await tap('.foot [name=close]');
    await until(() => Object.keys(log()?.runs?.['tomato-beds'] ?? {}).includes('2027-06-14'), 'the week is closed');
    expect(taps()).to.be.at.most(MOST_TAPS);
  });
});
