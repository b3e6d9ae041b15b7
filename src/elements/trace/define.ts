import { define } from '../shared/define.ts';
import { RunnelTrace } from './runnel-trace.ts';

define('runnel-trace', RunnelTrace);
