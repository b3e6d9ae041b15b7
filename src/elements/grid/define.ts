import { define } from '../shared/define.ts';
import { RunnelGrid } from './runnel-grid.ts';

export { RunnelGrid };

define('runnel-grid', RunnelGrid);
