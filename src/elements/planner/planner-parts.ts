/** What stands inside a planner, fetched when the first one is on the page. */
import { define } from '../shared/define.ts';
import { PlannerBar } from './planner-bar.ts';
import { PlannerLink } from './planner-link.ts';
import { PlannerNav } from './planner-nav.ts';
import { PlannerPanel } from './planner-panel.ts';
import { PlannerSheet } from './planner-sheet.ts';

export { plannerSheetStyles } from './planner-sheet.styles.ts';

/** Registers the elements that a planner is made of. */
export function definePlannerParts(): void {
  define('runnel-planner-bar', PlannerBar);
  define('runnel-planner-link', PlannerLink);
  define('runnel-planner-nav', PlannerNav);
  define('runnel-planner-panel', PlannerPanel);
  define('runnel-planner-sheet', PlannerSheet);
}
