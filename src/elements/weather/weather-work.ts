/** What a file or an answer asks for, and nothing before: fetched when it is first needed. */

export { weatherFileSteps } from '../../exchange/weather-file/read-weather-file.ts';
export { requestWeather } from '../../exchange/weather-service/request-weather.ts';
export { climateSteps } from '../../exchange/weather-take/take-climate.ts';
export { takeSeason } from '../../exchange/weather-take/take-season.ts';
