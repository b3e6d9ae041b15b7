/** The steps on a page, with ways to find and to press what they show. */
import '../../../src/elements/plan/define.ts';
import '../../../src/elements/start/define.ts';
import { html, onPage, quiet, settled, until } from '../shared/on-page.ts';

export async function startOnPage() {
  const place = onPage(html`<runnel-plan locale="en"><runnel-start today="2027-03-10"></runnel-start></runnel-plan>`);
  const plan = await settled(place, 'runnel-plan');
  const element = await settled(place, 'runnel-start');
  const root = element.shadowRoot as ShadowRoot;
  const named = (name: string) => root.querySelector<HTMLElement>(`[name="${name}"]`);
  const press = async (name: string) => {
    await until(() => named(name) !== null, `there is ${name}`);
    named(name)?.click();
    await quiet(element);
  };
  return { plan, element, root, named, press };
}
