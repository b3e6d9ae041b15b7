/** What became of a request or a file, in sentences. */

import type { WeatherFileRefusal } from '../../exchange/weather-file/weather-file.ts';
import type { ServiceFailure } from '../../exchange/weather-service/request-weather.ts';
import { describeExpected } from '../../language/describe-fault.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { SessionFailure, SessionState } from './weather-session.ts';

/** What is announced; empty where there is nothing to say. */
export function sessionStatus(state: SessionState, reader: Reader): string {
  const { service, file } = weatherWords(reader.language);
  const format = formatFor(reader);
  switch (state.step) {
    case 'busy':
      return state.what === 'asking' ? service.asking : file.reading;
    case 'took-climate': {
      const { firstYear, lastYear, years } = state.taken;
      return service.gotClimate(format, firstYear, lastYear, years);
    }
    case 'took-season': {
      const { filled, refreshed, kept, estimated, missing, hasForecast } = state.taken;
      const sentences = [
        ...(filled > 0 ? [service.filled(format, filled)] : []),
        ...(refreshed > 0 ? [service.refreshed(format, refreshed)] : []),
        ...(kept > 0 ? [service.kept(format, kept)] : []),
        ...(estimated > 0 ? [service.estimated(format, estimated)] : []),
        ...(missing > 0 ? [service.missing(format, missing)] : []),
        ...(hasForecast ? [service.gotForecast] : []),
      ];
      return sentences.join(' ');
    }
    default:
      return '';
  }
}

export function failureWords(failure: SessionFailure, reader: Reader): string {
  const { service, file } = weatherWords(reader.language);
  switch (failure.from) {
    case 'service':
      return serviceFailureWords(failure.why, reader);
    case 'answer':
      return answerWords(failure.why, reader);
    case 'plan':
      return gardenWords(reader.language).refused.expected(
        formatFor(reader),
        failure.faults.map((fault) => describeExpected(fault, reader)),
      );
    case 'file':
      return file.notRead;
    case 'part':
      return planElementWords(reader.language).partFailed;
    case 'too-little':
      return file.noClimate;
    case 'nothing-new':
      return service.nothingNew;
    case 'not-started':
      return service.notStarted;
  }
}

/** Of an answer that nobody chose as a file. */
function answerWords(why: WeatherFileRefusal, reader: Reader): string {
  const { failed } = weatherWords(reader.language).service;
  switch (why.code) {
    case 'layout':
      return failed.layout(why.what);
    case 'no-days':
      return failed.noDays;
    case 'hourly':
      return failed.hourly;
    default:
      return refusalWords(why, reader);
  }
}

function serviceFailureWords(why: ServiceFailure, reader: Reader): string {
  const { failed } = weatherWords(reader.language).service;
  const format = formatFor(reader);
  switch (why.code) {
    case 'timeout':
      return failed.timeout(format, why.seconds);
    case 'too-many':
      return why.seconds === undefined ? failed.tooMany : failed.tooManyUntil(format, why.seconds);
    case 'refused':
      return failed.refused(why.status, why.reason);
    case 'too-long':
      return failed.tooLong;
    case 'unreachable':
    case 'cancelled':
      return failed.unreachable;
  }
}

export function refusalWords(why: WeatherFileRefusal, reader: Reader): string {
  const { refused, readings } = weatherWords(reader.language).file;
  switch (why.code) {
    case 'service':
      return refused.service(why.reason);
    case 'layout':
      return refused.layout(why.what);
    case 'wrong-units':
      return refused['wrong-units'](readings[why.reading], why.value);
    default:
      return refused[why.code];
  }
}
