import { expect } from 'chai';
import type { LitElement } from 'lit';
import { mixedGarden } from '../../support/small-plans.ts';
import { accessibilityFaults } from './axe.ts';
import { clearPage, html, onPage, quiet } from './on-page.ts';

/** Views, whose definitions come before their plan's: what is on the page already must not mind. */
const define: Readonly<Record<string, () => Promise<unknown>>> = {
  'runnel-chart': () => import('../../../src/elements/chart/define.ts'),
  'runnel-files': () => import('../../../src/elements/files/define.ts'),
  'runnel-garden': () => import('../../../src/elements/garden/define.ts'),
  'runnel-grid': () => import('../../../src/elements/grid/define.ts'),
  'runnel-mix': () => import('../../../src/elements/mix/define.ts'),
  'runnel-notices': () => import('../../../src/elements/notices/define.ts'),
  'runnel-start': () => import('../../../src/elements/start/define.ts'),
  'runnel-trace': () => import('../../../src/elements/trace/define.ts'),
  'runnel-weather': () => import('../../../src/elements/weather/define.ts'),
  'runnel-week': () => import('../../../src/elements/week/define.ts'),
  'runnel-planner': () => import('../../../src/elements/planner/define.ts'),
  'runnel-plan': () => import('../../../src/elements/plan/define.ts'),
};
const tags = Object.keys(define);
const views = tags.filter((tag) => tag !== 'runnel-plan');

/** The spreadsheet component's own, in any setting; no control of ours is behind them. */
const KNOWN = {
  'aria-required-children': '.handsontable, .handsontable *',
  label: '.handsontableInput',
};

const make = (tag: string): HTMLElement => {
  const element = document.createElement(tag);
  if (tag !== 'runnel-plan') element.setAttribute('license-key', 'non-commercial-and-evaluation');
  return element;
};

const textOf = (element: Element): string =>
  [element, ...element.querySelectorAll('*')]
    .map((part) => part.shadowRoot?.textContent ?? '')
    .concat(element.textContent ?? '')
    .join(' ')
    .replaceAll(/\s+/g, ' ');

/** A view in a plan that stands on the page, drawn to its end. */
async function inPlan(tag: string): Promise<{ view: HTMLElement; plan: HTMLElementTagNameMap['runnel-plan'] }> {
  const place = onPage(html`<runnel-plan .plan=${mixedGarden()}></runnel-plan>`);
  const plan = place.querySelector('runnel-plan');
  if (plan === null) throw new Error('there is no plan');
  const view = make(tag);
  plan.append(view);
  await quiet(plan);
  return { view, plan };
}

describe('every element', () => {
  before(async () => {
    // On the page before anything is defined, and then upgraded from the inside to the outside.
    const early = document.createElement('main');
    early.innerHTML = `<runnel-plan>${views.map((tag) => `<${tag}></${tag}>`).join('')}</runnel-plan>`;
    document.body.append(early);
    for (const tag of tags) await define[tag]?.();
  });

  afterEach(clearPage);

  it('is shown the plan around it when it is defined before that plan is', async () => {
    const plan = document.querySelector('runnel-plan');
    if (plan === null) throw new Error('the early page is gone');
    plan.plan = mixedGarden();
    await quiet(plan);
    for (const view of plan.querySelectorAll<HTMLElement>(views.join())) {
      expect(textOf(view), view.localName).not.to.contain('No plan is open');
    }
  });

  for (const tag of views) {
    it(`${tag} shows the plan around it`, async () => {
      const { view } = await inPlan(tag);
      expect(textOf(view).length).to.be.greaterThan(40);
      expect(textOf(view)).not.to.contain('No plan is open');
      expect(view.getBoundingClientRect().height).to.be.greaterThan(20);
    });

    it(`${tag} passes axe, in a plan and without one`, async () => {
      const { view } = await inPlan(tag);
      expect(await accessibilityFaults(view, KNOWN)).to.deep.equal([]);
      clearPage();
      const alone = onPage(html`${make(tag)}`);
      await quiet(alone);
      expect(await accessibilityFaults(alone)).to.deep.equal([]);
    });

    it(`${tag} says the next step where there is no plan`, async () => {
      const alone = onPage(html`${make(tag)}`);
      await quiet(alone);
      expect(textOf(alone)).to.match(tag === 'runnel-planner' ? /open a plan/i : /No plan is around/);
    });

    it(`${tag} survives being taken out and put back, and shows nothing of a plan it has left`, async () => {
      const { view, plan } = await inPlan(tag);
      const before = textOf(view);
      view.remove();
      await quiet(view);
      const elsewhere = onPage(html`${view}`);
      await quiet(elsewhere);
      expect(textOf(view)).to.match(tag === 'runnel-planner' ? /open a plan/i : /No plan is around/);
      plan.append(view);
      await quiet(plan);
      expect(textOf(view)).to.equal(before);
    });
  }

  for (const tag of tags) {
    it(`${tag} has a property for every attribute that it observes`, () => {
      const element = customElements.get(tag) as typeof LitElement;
      for (const attribute of element.observedAttributes) {
        const names = [...element.elementProperties].filter(([name, { attribute: written }]) =>
          typeof written === 'string' ? written === attribute : String(name).toLowerCase() === attribute,
        );
        expect(names.length, attribute).to.equal(1);
        expect(String(names[0]?.[0]) in element.prototype, attribute).to.equal(true);
      }
    });

    it(`${tag} may be defined a second time`, async () => {
      const { define: defineOnce } = await import('../../../src/elements/shared/define.ts');
      const first = customElements.get(tag);
      defineOnce(tag, class extends HTMLElement {});
      expect(customElements.get(tag)).to.equal(first);
    });
  }
});
