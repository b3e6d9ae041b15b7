import { define } from '../shared/define.ts';
import { RunnelGarden } from './runnel-garden.ts';

define('runnel-garden', RunnelGarden);
