import '../weather/define.ts';
import { define } from '../shared/define.ts';
import { RunnelStart } from './runnel-start.ts';

export { RunnelStart };

define('runnel-start', RunnelStart);
