/** Views that no plan stands around, and what the page has to say so that one does. */
import type { PlanView } from '../../store/plan-view.ts';

const outside = new WeakMap<PlanView, Element>();

/** `view` is what an element sees that no plan has answered. */
export function markOutside(view: PlanView, element: Element): PlanView {
  outside.set(view, element);
  return view;
}

/** The markup to write in place of an element that sees this, in the way its page writes; undefined where a plan stands around it. */
export function markupAround(view: PlanView): string | undefined {
  const element = outside.get(view);
  if (element === undefined || isInsidePlan(element)) return undefined;
  const { localName, parentElement } = element;
  const name = parentElement?.dataset['runnel'];
  // Of a document that nobody sees: nothing in it runs.
  const page = document.implementation.createHTMLDocument();
  const plan = page.createElement(name === undefined ? 'runnel-plan' : 'div');
  const inside = page.createElement(name === undefined ? localName : 'div');
  const src = element.getAttribute('src') ?? 'our-garden.runnel.json';
  if (name === undefined) {
    plan.setAttribute('src', src);
  } else {
    Object.assign(plan.dataset, { runnel: 'plan', src });
    inside.dataset['runnel'] = name;
  }
  plan.append(inside);
  return plan.outerHTML;
}

/** Asked of the tree and not of the context, since the plan around may be defined later than what stands in it. */
export function isInsidePlan(element: Element): boolean {
  const root = element.getRootNode();
  if (element.closest('runnel-plan') !== null) return true;
  return root instanceof ShadowRoot && isInsidePlan(root.host);
}
