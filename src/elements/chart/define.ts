import { define } from '../shared/define.ts';
import { RunnelChart } from './runnel-chart.ts';

define('runnel-chart', RunnelChart);
