import { define } from '../shared/define.ts';
import { RunnelNotices } from './runnel-notices.ts';

export { RunnelNotices };

define('runnel-notices', RunnelNotices);
