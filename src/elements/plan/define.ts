import { define } from '../shared/define.ts';
import { RunnelPlan } from './runnel-plan.ts';

export { RunnelPlan };

define('runnel-plan', RunnelPlan);
