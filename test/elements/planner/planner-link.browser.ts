import { setViewport } from '@web/test-runner-commands';
import { expect } from 'chai';
import '../../../src/elements/planner/define.ts';
import { definePlannerParts } from '../../../src/elements/planner/planner-parts.ts';
import { planTextFromLink } from '../../../src/exchange/link/plan-text-from-link.ts';
import { planner } from '../../../src/language/en/planner.ts';
import { checkPlan } from '../../../src/plan/reading/check-plan.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed } from '../../support/small-plans.ts';
import { accessibilityFaults } from '../shared/axe.ts';
import { clearPage, html, onPage, quiet, until } from '../shared/on-page.ts';

definePlannerParts();

const textOf = (root: ParentNode | null | undefined, selector: string) =>
  root?.querySelector(selector)?.textContent?.replaceAll(/\s+/g, ' ').trim() ?? '';

async function shown(plan: Plan, opensLinks = true) {
  const place = onPage(html`<runnel-plan .plan=${plan} ?from-link=${opensLinks}>
    <runnel-planner-bar></runnel-planner-bar>
  </runnel-plan>`);
  const element = place.querySelector('runnel-plan');
  if (element === null) throw new Error('there is no plan');
  await quiet(element);
  const bar = place.querySelector('runnel-planner-bar')?.shadowRoot;
  return { place, link: bar?.querySelector('runnel-planner-link')?.shadowRoot };
}

/** The clipboard, as a browser has it that lets a page write there or does not. */
function clipboard(write: (text: string) => Promise<void>): void {
  Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { writeText: write } });
}

/** A plan whose names do not compress. */
function longPlan(): Plan {
  const [bed] = oneBed().zones;
  if (bed === undefined) throw new Error('there is no bed');
  let seed = 1;
  const letters = () => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed.toString(36);
  };
  const notes = () => Array.from({ length: 25 }, letters).join('');
  return {
    ...oneBed(),
    zones: Array.from({ length: 150 }, (_, index) => ({
      ...bed,
      id: `bed${index}`,
      name: notes().slice(0, 60),
      plantings: bed.plantings.map((planting) => ({ ...planting, id: `${planting.id}${index}` })),
    })),
  };
}

describe('the planner’s link', () => {
  afterEach(() => {
    clearPage();
    Reflect.deleteProperty(navigator, 'clipboard');
  });

  it('is copied with the whole plan behind the # of this page, and says so', async () => {
    let copied = '';
    clipboard(async (text) => {
      copied = text;
    });
    const { place, link } = await shown(oneBed());
    link?.querySelector('button')?.click();
    await until(() => textOf(link, '[role=status]') !== '', 'it says what became of the link');
    expect(textOf(link, '[role=status]')).to.equal(planner.linkCopied);
    expect(copied.split('#')[0]).to.equal(location.href.split('#')[0]);
    const result = readPlan((await planTextFromLink(copied)) ?? '');
    expect(result.ok && result.plan).to.deep.equal(oneBed());
    expect(await accessibilityFaults(place)).to.deep.equal([]);
  });

  it('says so without moving what stands there, inside the window, until one goes on', async () => {
    clipboard(async () => undefined);
    for (const width of [390, 1200]) {
      await setViewport({ width, height: 800 });
      const { place, link } = await shown(oneBed());
      const bar = place.querySelector('runnel-planner-bar');
      const heightOf = () => bar?.getBoundingClientRect().height;
      const before = heightOf();
      const button = link?.querySelector('button');
      button?.focus();
      button?.click();
      await until(() => textOf(link, '[role=status]') !== '', 'it says what became of the link');
      expect(heightOf()).to.equal(before);
      const status = link?.querySelector('.status')?.getBoundingClientRect();
      expect(status?.width).to.be.greaterThan(100);
      expect([(status?.left ?? -1) >= 0, (status?.right ?? 9999) <= width]).to.deep.equal([true, true]);
      button?.blur();
      await until(() => textOf(link, '[role=status]') === '', 'it is over');
      clearPage();
    }
    await setViewport({ width: 1200, height: 800 });
  });

  it('stands in a field, chosen whole, where the browser does not let the page copy', async () => {
    clipboard(() => Promise.reject(new DOMException('Not allowed.', 'NotAllowedError')));
    const { place, link } = await shown(oneBed());
    link?.querySelector('button')?.click();
    await until(() => (link?.querySelector('input')?.selectionEnd ?? 0) > 0, 'the link is chosen');
    const field = link?.querySelector('input');
    expect(field?.value.slice(field.selectionStart ?? 0, field.selectionEnd ?? 0)).to.match(/#runnel=[\w-]+$/);
    expect(textOf(link, '[role=status]')).to.contain(planner.linkToCopy);
    expect(await accessibilityFaults(place)).to.deep.equal([]);
  });

  it('warns of its length where mail and chat may cut it', async () => {
    clipboard(async () => undefined);
    const plan = longPlan();
    expect(checkPlan(plan).ok).to.equal(true);
    const { link } = await shown(plan);
    link?.querySelector('button')?.click();
    await until(() => textOf(link, '[role=status]') !== '', 'it says what became of the link');
    expect(textOf(link, '[role=status]')).to.match(/It has \d+,\d+ characters, and some .+ a file is safer\.$/);
  });

  it('is not offered where the page opens no links', async () => {
    const { link } = await shown(oneBed(), false);
    expect(link).to.equal(undefined);
  });
});
