import { define } from '../shared/define.ts';
import { RunnelMix } from './runnel-mix.ts';

export { RunnelMix };

define('runnel-mix', RunnelMix);
