import { define } from '../shared/define.ts';
import { RunnelFiles } from './runnel-files.ts';

export { RunnelFiles };

define('runnel-files', RunnelFiles);
