import { define } from '../shared/define.ts';
import { RunnelPlan } from './runnel-plan.ts';

define('runnel-plan', RunnelPlan);
