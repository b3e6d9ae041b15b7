// This week in Spanish, as a club could write it: every other text is said in English. No part of the kit.
import { registerLanguage } from '../../dist/page/runnel.js';

const ZONES = { one: 'zona', other: 'zonas' };
const DAYS = { one: 'día', other: 'días' };

const week = {
  place: ({ number }, garden, week, weeks) => `${garden}, semana ${number(week)} de ${number(weeks)}`,
  another: 'No es la semana de hoy.',
  before: ({ day }, first) => `La temporada empieza el ${day(first)}.`,
  after: ({ day }, last) => `La temporada terminó el ${day(last)}.`,
  steps: 'Elegir una semana',
  previous: 'Semana anterior',
  next: 'Semana siguiente',
  thisWeek: 'Volver a esta semana',
  today: {
    title: 'Regar hoy',
    ends: ({ time, quantity }, end, litres) => `termina a las ${time(end)}, ${quantity(litres, 'volume')}`,
    nothing: 'Hoy no se riega.',
    nextRun: ({ weekday, count }, day, zones) => `El próximo: ${weekday(day)}, ${count(zones, ZONES)}.`,
    everyDay: 'cada día',
    also: ({ weekdays }, start, mask) => `también ${weekdays(start, mask)}`,
    pause: ({ duration }, pause) => `Pausa de ${duration(pause)}.`,
    ran: ({ minutes }, ran, planned) => `se regó ${minutes(ran)}, previsto ${minutes(planned)}`,
    done: (zone) => `Hecho: ${zone}`,
    allDone: 'Todo hecho como estaba previsto',
    late: ({ duration }, over) => `El riego termina ${duration(over)} después de su horario.`,
    usualStart: ({ time }, minute) =>
      `Las horas cuentan desde las ${time(minute)}. Ponga en el jardín desde cuándo se puede regar.`,
    setByHand: 'fijado a mano',
  },
  shutOff: {
    openAll: 'abierta siempre',
    shutAll: 'cerrada toda la semana',
    openToday: ({ weekdays }, start, mask) => `abierta hoy, cerrada ${weekdays(start, mask)}`,
    openTodayOnly: 'abierta hoy',
    shutToday: ({ weekdays }, start, mask) => `cerrada hoy, abierta ${weekdays(start, mask)}`,
    openOn: ({ weekdays }, start, mask) => `abierta ${weekdays(start, mask)}`,
    tonight: 'Girar esta noche, para mañana',
    open: ({ list }, names) => `Abra ${list(names)}.`,
    shut: ({ list }, names) => `Cierre ${list(names)}.`,
  },
  held: {
    title: 'Hoy detenga en el programador',
    why: 'El suelo aún tiene bastante: no hace falta regar.',
    runAnyway: 'Regar de todos modos',
    runAnywayOf: (zone) => `Regar de todos modos: ${zone}`,
  },
  rain: {
    title: 'Lluvia de esta semana',
    none: 'aún no leída',
    enter: 'Anotar la lluvia',
    done: 'Listo',
    lastDays: 'Lluvia de los últimos siete días',
    onlyTotal: 'Solo un total',
    byDay: 'Día a día',
    total: 'Lluvia en el pluviómetro esta semana',
    through: 'leída hasta el',
    of: (day) => `Lluvia del ${day}`,
    more: (day) => `Más lluvia el ${day}`,
    less: (day) => `Menos lluvia el ${day}`,
  },
  forecast: {
    title: 'Anotar una previsión',
    says: ({ list }, days) => `Previsión: ${list(days)}.`,
    onDay: ({ weekday, quantity }, day, mm) => `${quantity(mm, 'depth')} el ${weekday(day)}`,
    counts: 'Las próximas mañanas cuentan con ella. La lluvia leída ocupa su lugar.',
    about: ({ day }, today) =>
      `Se cuenta con ella desde la mañana del ${day(today)}. Lo que se lea después ocupa su lugar.`,
    day: 'Día',
    rainHead: 'Lluvia',
    etoHead: 'ET de referencia',
    rain: (weekday) => `Lluvia prevista para el ${weekday}`,
    eto: (weekday) => `ET de referencia prevista para el ${weekday}`,
  },
  table: {
    title: 'Toda la semana',
    zone: 'Zona',
    box: {
      none: (day) => `${day}: sin riego`,
      'to-run': (day, amount) => `${day}: por regar, ${amount}`,
      done: (day, amount) => `${day}: hecho, ${amount}`,
      changed: (day, amount) => `${day}: se regó ${amount}, no como estaba previsto`,
      skipped: (day) => `${day}: sin riego, no hace falta`,
    },
    key: { 'to-run': 'por regar', done: 'hecho', changed: 'minutos regados', skipped: 'no hace falta' },
    off: 'No hay nada plantado.',
    closed: 'Cerrada: no regar.',
    nothing: 'Sin riego: bastan la lluvia y el suelo.',
    unknown: 'No se sabe: falta el clima de esta semana.',
    closedWeek: 'Esta semana está cerrada.',
    assumed: 'Sin cerrar: se supone como estaba prevista.',
    states: { dry: 'El suelo acaba seco la semana', short: 'Falta agua' },
  },
  refill: {
    filled: 'llenada esta semana',
    'partly-filled': 'llenada solo en parte, sigue pendiente',
    due: 'pendiente de llenar, sin llenar esta semana',
  },
  close: 'Cerrar la semana',
  closeFrom: ({ weekday }, day) => `desde el ${weekday(day)}`,
  closeLast: ({ days }, start) => `Cerrar la semana pasada, ${days(start, start + 6)}`,
  print: 'Imprimir para el cobertizo',
  printSays: 'elegir y ver antes',
};

const runsOtherwise = ({ minutes, count }, { zone, minutes: min, days }) => {
  if (days.after === 0) return `${zone} no se riega`;
  if (min.before !== min.after) return `${zone} se riega ${minutes(min.after)}, no ${minutes(min.before)}`;
  return `${zone} se riega ${count(days.after, DAYS)}, no ${count(days.before, DAYS)}`;
};

const weekClose = {
  title: 'Cerrar la semana',
  back: 'Volver',
  where: ({ days, number }, start, week, weeks) =>
    `${days(start, start + 6)}, semana ${number(week)} de ${number(weeks)}`,
  run: 'Lo que se regó',
  asPlanned: 'como estaba previsto',
  allAsPlanned: 'Todo como estaba previsto',
  next: {
    same: 'La próxima semana sigue como estaba prevista.',
    last: 'Es la última semana de la temporada.',
    one: (format, change) => `La próxima semana ${runsOtherwise(format, change)}; lo demás no cambia.`,
  },
  closeNow: 'Cerrar la semana',
  done: 'La semana está cerrada.',
  undo: 'Deshacer',
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

registerLanguage('es', () => ({ week, cautions }), { week: () => ({ weekClose }) });
