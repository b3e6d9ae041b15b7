import '../chart/define.ts';
import '../files/define.ts';
import '../garden/define.ts';
import '../grid/define.ts';
import '../mix/define.ts';
import '../notices/define.ts';
import '../plan/define.ts';
import '../trace/define.ts';
import '../week/define.ts';
import { define } from '../shared/define.ts';
import { PlannerBar } from './planner-bar.ts';
import { PlannerLink } from './planner-link.ts';
import { PlannerNav } from './planner-nav.ts';
import { PlannerSheet } from './planner-sheet.ts';
import { RunnelPlanner } from './runnel-planner.ts';

export { RunnelPlanner };

define('runnel-planner-bar', PlannerBar);
define('runnel-planner-link', PlannerLink);
define('runnel-planner-nav', PlannerNav);
define('runnel-planner-sheet', PlannerSheet);
define('runnel-planner', RunnelPlanner);
