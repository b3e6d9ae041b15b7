/** Whatever throws as a view is drawn: it says so, keeps nothing of the plan before, and draws the next plan as ever. */
import { ContextProvider } from '@lit/context';
import { expect } from 'chai';
import { planContext } from '../../../src/elements/shared/plan-context.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { planElementWords } from '../../../src/language/en/plan-element.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import { ELEMENT_LOADERS } from '../../../src/page/element-loaders.ts';
import { PlanStore } from '../../../src/store/plan-store.ts';
import type { PlanView } from '../../../src/store/plan-view.ts';
import '../../../src/elements/plan/define.ts';
import { RunnelPlan } from '../../../src/elements/plan/runnel-plan.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { clearPage, html, onPage, quiet } from './on-page.ts';

const { viewFailed } = planElementWords(US_ENGLISH);

/** All that the kit has, by the list that pages are served from; what `runnel-start` shows first is of no plan. */
const VIEWS = [...ELEMENT_LOADERS.keys()].filter((tag) => !['runnel-plan', 'runnel-start'].includes(tag));

function viewOf(plan: object): PlanView {
  const store = new PlanStore();
  store.openPlan(plan);
  return store.view;
}

/** A season of which nothing can be read. */
const broken = new Proxy({} as Season, {
  get() {
    throw new Error('the season is broken');
  },
});

/** What stands in an element and in all elements in it, shadow roots too. */
function partsOf(root: ParentNode): readonly Element[] {
  return [...root.querySelectorAll('*')].flatMap((part) => [
    part,
    ...(part.shadowRoot === null ? [] : partsOf(part.shadowRoot)),
  ]);
}

const textOf = (element: HTMLElement): string =>
  [element, ...partsOf(element), ...(element.shadowRoot ? partsOf(element.shadowRoot) : [])]
    .map((part) => (part.shadowRoot ?? part).textContent ?? '')
    .join(' ');

describe('where something throws as it is drawn', () => {
  const own = globalThis.reportError;
  let reported: unknown[] = [];

  beforeEach(() => {
    reported = [];
    globalThis.reportError = (error) => reported.push(error);
  });

  afterEach(() => {
    globalThis.reportError = own;
    clearPage();
  });

  for (const tag of VIEWS) {
    it(`${tag} says so, keeps nothing of the plan before, and draws the next`, async () => {
      await ELEMENT_LOADERS.get(tag)?.();
      const place = onPage(html`<runnel-plan><div></div></runnel-plan>`);
      const around = place.querySelector('div') ?? expect.fail('nothing is there');
      const first = viewOf(mixedGarden());
      const plan = new ContextProvider(around, { context: planContext, initialValue: first });
      const view = document.createElement(tag);
      view.setAttribute('license-key', 'non-commercial-and-evaluation');
      around.append(view);
      await quiet(view);
      expect(textOf(view)).not.to.contain(viewFailed);
      const before = partsOf(view.shadowRoot ?? view).filter((part) => part.localName === 'button');

      plan.setValue({ ...first, documentId: -1, season: broken });
      await quiet(view);
      expect(textOf(view)).to.contain(viewFailed);
      expect(textOf(view)).not.to.match(/Mixed garden|Containers|Shrubs/);
      expect(reported.map(String)).to.include('Error: the season is broken');
      expect(before.filter((button) => button.isConnected)).to.deep.equal([]);

      plan.setValue(viewOf(oneBed()));
      await quiet(view);
      expect(textOf(view)).not.to.contain(viewFailed);
      expect(textOf(view).length).to.be.greaterThan(40);
    });
  }

  it('runnel-plan goes on with what is inside it', async () => {
    class BrokenPlan extends RunnelPlan {
      protected override render(): never {
        throw new Error('the strip is broken');
      }
    }
    customElements.define('test-broken-plan', BrokenPlan);
    const plan = document.createElement('test-broken-plan') as RunnelPlan;
    plan.plan = oneBed();
    plan.append(document.createElement('runnel-week'));
    const place = onPage(html`${plan}`);
    await quiet(place);
    await quiet(plan);
    expect(plan.shadowRoot?.textContent).to.contain(viewFailed);
    expect(plan.querySelector('runnel-week')?.shadowRoot?.textContent).to.contain('Beds');
  });
});
