import { define } from '../shared/define.ts';
import { RunnelNotices } from './runnel-notices.ts';

define('runnel-notices', RunnelNotices);
