/** The planner with the demo garden, on a page of its own in a window of some size. */
import { setViewport } from '@web/test-runner-commands';
import '../../src/elements/planner/define.ts';
import type { RunnelPlanner } from '../../src/elements/planner/runnel-planner.ts';
import { readPlan } from '../../src/plan/reading/read-plan.ts';
import { LICENSE_KEY } from '../elements/grid/grid-page.ts';
import { html, onPage, quiet, settled, until } from '../elements/shared/on-page.ts';

export async function openDemoPlanner(
  size: { readonly width: number; readonly height: number },
  today: string,
): Promise<RunnelPlanner> {
  await setViewport(size);
  await until(() => innerWidth === size.width, 'the window is as wide as that');
  const address = new URL(location.href);
  address.searchParams.delete('view');
  history.replaceState(null, '', address);
  const read = readPlan(await (await fetch('/demo/plans/lantern-lane.runnel.json')).text());
  if (!read.ok) throw new Error('the demo plan cannot be read');
  const place = onPage(
    html`<runnel-planner license-key=${LICENSE_KEY} locale="en-US" today=${today} full-page .plan=${read.plan}></runnel-planner>`,
  );
  const planner: RunnelPlanner = await settled(place, 'runnel-planner');
  await quiet(planner);
  return planner;
}
