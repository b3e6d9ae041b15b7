import { define } from '../shared/define.ts';
import { RunnelChart } from './runnel-chart.ts';

export { RunnelChart };

define('runnel-chart', RunnelChart);
