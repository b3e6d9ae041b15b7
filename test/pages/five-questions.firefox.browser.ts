/** What a gardener asks, each answered in at most three actions at a desk and on a phone, by real pointers. */
import { sendKeys, sendMouse, setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import { clearPage, until } from '../elements/shared/on-page.ts';
import { openDemoPlanner } from './demo-planner.ts';

const MOST_ACTIONS = 3;
const LONG = 90_000;

async function opened(width: number, height: number) {
  const planner = await openDemoPlanner({ width, height }, '2027-06-16');
  let actions = 0;
  return {
    find: (selector: string) => inside(planner, selector),
    /** Presses the first thing of that selector and words, where a reader would see it. */
    press: async (selector: string, words = /./) => {
      const target = await untilShown(() => inside(planner, selector).find((each) => words.test(nameOf(each))));
      await atRest(target);
      const { left, top, width: wide, height: high } = target.getBoundingClientRect();
      await sendMouse({ type: 'click', position: [Math.round(left + wide / 2), Math.round(top + high / 2)] });
      actions++;
    },
    /** Chooses from a list by typing what is wanted. */
    choose: async (selector: string, words: string) => {
      const list = await untilShown(() => inside(planner, selector)[0]);
      list.focus();
      await sendKeys({ type: words });
      await until(() => (list as HTMLSelectElement).selectedOptions[0]?.label === words, `${words} is chosen`);
      actions++;
    },
    shows: async (selector: string, words: RegExp) => {
      await untilShown(() => inside(planner, selector).find((each) => words.test(each.textContent ?? '')));
      expect(actions, 'actions').to.be.at.most(MOST_ACTIONS);
    },
  };
}

/** In the middle of the window, and no longer moving: nobody presses what is just being laid out. */
async function atRest(target: HTMLElement): Promise<void> {
  let before = Number.NaN;
  for (let tries = 0; tries < 40; tries++) {
    target.scrollIntoView({ block: 'center' });
    await new Promise((resolve) => setTimeout(resolve, 100));
    const { top } = target.getBoundingClientRect();
    if (top === before) return;
    before = top;
  }
}

const nameOf = (element: Element) => element.getAttribute('aria-label') ?? element.textContent ?? '';

/** Elements of a planner that can be seen, in its elements' shadows too. */
function inside(root: Element | ShadowRoot, selector: string): readonly HTMLElement[] {
  const shadows = [...root.querySelectorAll('*')].flatMap(({ shadowRoot }) =>
    shadowRoot === null ? [] : [shadowRoot],
  );
  return [
    ...root.querySelectorAll<HTMLElement>(selector),
    ...shadows.flatMap((shadow) => inside(shadow, selector)),
  ].filter((each) => each.checkVisibility({ visibilityProperty: true }) && each.getBoundingClientRect().height > 0);
}

async function untilShown(find: () => HTMLElement | undefined): Promise<HTMLElement> {
  await until(() => find() !== undefined, 'it is shown');
  return find() as HTMLElement;
}

const VIEW = '[data-view]';

describe('five questions', function () {
  this.timeout(LONG);
  before(() => import('../../src/sheet/grid/sheet-grid.ts'));
  after(() => setViewport({ width: 1440, height: 900 }));
  afterEach(clearPage);

  for (const [where, width, height] of [
    ['at a desk', 1440, 900],
    ['on a phone', 390, 844],
  ] as const) {
    const isPhone = width < 700;

    it(`what do I run tonight, ${where}`, async () => {
      const { press, shows } = await opened(width, height);
      if (!isPhone) await press(VIEW, /This week/);
      await shows('.today .runs .minutes', /\d+\smin/);
    });

    it(`why so much, ${where}`, async () => {
      const { press, shows } = await opened(width, height);
      if (!isPhone) await press(VIEW, /This week/);
      await press('.runs .why');
      await shows('.answer .need', /the plants need/);
    });

    it(`what is wrong, ${where}`, async () => {
      const { press, shows, find } = await opened(width, height);
      if (isPhone) await press(VIEW, /Season/);
      await press('[role=tab]', /Attention/);
      await shows('runnel-notices, [part=title], h2, h3', /./);
      await shows('.notice, li', /gal|min|day/);
      // Those that are folded are not seen.
      const open = find('.notice').filter((each) => each.closest('details:not([open])') === null);
      expect(open.length).to.be.within(1, 5);
    });

    it(`what if I put a shut-off there, ${where}`, async () => {
      const { press, choose, shows } = await opened(width, height);
      await press(VIEW, /Mixed zones/);
      await choose('runnel-mix select, select', 'Berry rows');
      await press('.try', /Try it: .*[Ss]hut-off/);
      await shows('.tried', /Only tried: [\s\S]*The plan as it is[\s\S]*With what you try/);
    });

    it(`print me the week, ${where}`, async () => {
      const { press, shows, find } = await opened(width, height);
      if (!isPhone) await press(VIEW, /This week/);
      await press('button[name=print]');
      await until(() => find('dialog[open]').length > 0, 'the paper is previewed');
      await shows('dialog[open] button', /Print/);
    });
  }
});
