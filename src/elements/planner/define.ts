import '../chart/define.ts';
import '../files/define.ts';
import '../garden/define.ts';
import '../grid/define.ts';
import '../mix/define.ts';
import '../notices/define.ts';
import '../plan/define.ts';
import '../start/define.ts';
import '../trace/define.ts';
import '../week/define.ts';
import { define } from '../shared/define.ts';
import { RunnelPlanner } from './runnel-planner.ts';

export { RunnelPlanner };

define('runnel-planner', RunnelPlanner);
