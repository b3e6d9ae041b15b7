import { define } from '../shared/define.ts';
import { RunnelWeek } from './runnel-week.ts';

export { RunnelWeek };

define('runnel-week', RunnelWeek);
