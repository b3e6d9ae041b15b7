import { define } from '../shared/define.ts';
import { RunnelTrace } from './runnel-trace.ts';

export { RunnelTrace };

define('runnel-trace', RunnelTrace);
