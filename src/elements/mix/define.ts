import { define } from '../shared/define.ts';
import { RunnelMix } from './runnel-mix.ts';

define('runnel-mix', RunnelMix);
