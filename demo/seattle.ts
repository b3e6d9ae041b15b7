/** Four years of Seattle's daily weather become monthly normals, and those the season of a small invented garden. */
import '../src/elements/planner/define.ts';
import { seattlePlan } from './seattle-plan.ts';

const weatherFile = new URL('../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);

const note = document.querySelector('.note');
const planner = document.querySelector('runnel-planner');

try {
  const answer = await fetch(weatherFile);
  if (!answer.ok) throw new Error(`the weather file did not come (${answer.status})`);
  const { plan, says } = seattlePlan(await answer.text());
  if (planner) planner.plan = plan;
  if (note) note.textContent = says;
} catch (error) {
  if (note)
    note.textContent = `The season could not be made: ${error instanceof Error ? error.message : error}. Load the page again.`;
}
