import { define } from '../shared/define.ts';
import { RunnelWeek } from './runnel-week.ts';

define('runnel-week', RunnelWeek);
