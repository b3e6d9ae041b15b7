// The week's list in Spanish, as a club could write it: every other text is said in English. No part of the kit.
import { registerLanguage } from '../../dist/page/runnel.js';

const TOO_LITTLE =
  'hace falta menos de medio paso del programador, y ninguna planta para la que se riega se seca antes del próximo riego.';

const week = {
  heading: ({ number }, week, weeks) => `Agua en el jardín: semana ${number(week)} de ${number(weeks)}`,
  steps: 'Elegir una semana',
  previous: 'Semana anterior',
  next: 'Semana siguiente',
  thisWeek: 'Esta semana',
  total: ({ minutes, quantity }, all, litres) => `Todas las zonas: ${minutes(all)}, ${quantity(litres, 'volume')}`,
  runDaily: ({ minutes }, day) => `${minutes(day)} cada día`,
  runOn: ({ minutes, weekdays }, day, weekStart, mask) => `${minutes(day)} los días ${weekdays(weekStart, mask)}`,
  cycles: ({ count, minutes }, cycles, each) =>
    `En ${count(cycles, { one: 'ciclo', other: 'ciclos' })} de ${minutes(each)}.`,
  soak: 'Deje que el agua penetre entre uno y otro.',
  amounts: {
    computed: ({ quantity }, litres) => quantity(litres, 'volume'),
    'hand-set': ({ quantity }, litres) => `${quantity(litres, 'volume')}, fijado a mano`,
    run: ({ quantity }, litres) => `${quantity(litres, 'volume')}, como se regó`,
  },
  nothing: 'Sin riego: bastan la lluvia y la reserva del suelo.',
  skippedOn: ({ weekdays }, weekStart, mask) => `Sin riego los días ${weekdays(weekStart, mask)}: ${TOO_LITTLE}`,
  skipped: `Sin riego toda la semana: ${TOO_LITTLE}`,
  anew: ({ weekdays }, weekStart, mask) =>
    `Decidido de nuevo los días ${weekdays(weekStart, mask)}, con lo que ya se sabía.`,
  unknown: 'No se sabe: falta el clima de esta semana.',
  closed: 'Cerrada esta semana: no regar.',
  off: 'No hay nada plantado.',
  shut: 'cerrada toda la semana',
  openAll: 'abierta todos los días de riego',
  openOn: ({ weekdays }, weekStart, mask) => `abierta solo los días ${weekdays(weekStart, mask)}`,
  refill: {
    filled: 'llenada esta semana',
    'partly-filled': 'llenada solo en parte, sigue pendiente',
    due: 'pendiente de llenar, sin llenar esta semana',
  },
  rain: ({ quantity }, depth, litres) =>
    `Lluvia contada: ${quantity(depth, 'depth')}, que ahorra ${quantity(litres, 'volume')}`,
  noRain: 'Sin lluvia contada',
  logAll: 'Anotar la semana como estaba prevista',
  assumed: 'Se supone como estaba prevista: no hay nada anotado.',
  log: {
    title: 'Anotar día a día',
    minutes: (zone, weekday) => `Minutos regados el ${weekday}: ${zone}`,
    open: (planting) => `${planting}: abierta`,
    openOn: (planting, weekday) => `${planting}: abierta el ${weekday}`,
  },
  rainEntry: { title: 'Lluvia en el pluviómetro', through: 'leída hasta el' },
  forecast: {
    title: 'Previsión',
    about: ({ day }, today) =>
      `Se cuenta con ella desde la mañana del ${day(today)}. Lo que se lea después ocupa su lugar.`,
    day: 'Día',
    rainHead: 'Lluvia',
    etoHead: 'ET de referencia',
    rain: (weekday) => `Lluvia prevista para el ${weekday}`,
    eto: (weekday) => `ET de referencia prevista para el ${weekday}`,
  },
  done: (zone) => `Hecho: ${zone} se regó como estaba previsto`,
  doneShort: 'Hecho como estaba previsto',
  states: {
    dry: 'El suelo acaba seco la semana',
    short: 'Falta agua',
    over: 'Parte se pierde bajo las raíces',
  },
};

const cautions = {
  title: 'Antes de cavar, conectar o fiarse de esto',
  full: {
    backflow:
      'Donde una línea toque agua potable, ponga el dispositivo contra el reflujo que pida la norma local y hágalo revisar como ella diga. No todos admiten después una llave de paso, una subida o un dosificador de abono: pida uno que convenga al suyo.',
    tank: 'El agua de un depósito o de un tejado no es para beber. Marque sus grifos y separe sus tuberías de las del agua potable.',
    digging: 'Haga localizar los servicios enterrados antes de cavar.',
    codes:
      'Las normas locales, las restricciones de riego y el consejo de un profesional con licencia van antes que todo lo que se muestra aquí.',
    promise: 'Estos números son un plan, no una promesa. Compruébelos en la planta: mire las hojas, toque la tierra.',
  },
};

registerLanguage('es', () => ({ week, cautions }));
