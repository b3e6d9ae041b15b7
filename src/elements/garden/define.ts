import { define } from '../shared/define.ts';
import '../weather/define.ts';
import { RunnelGarden } from './runnel-garden.ts';

export { RunnelGarden };

define('runnel-garden', RunnelGarden);
