import { define } from '../shared/define.ts';
import { RunnelGrid } from './runnel-grid.ts';

define('runnel-grid', RunnelGrid);
