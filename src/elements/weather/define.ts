import { define } from '../shared/define.ts';
import { RunnelWeather } from './runnel-weather.ts';

export { RunnelWeather };

define('runnel-weather', RunnelWeather);
