// The week's list in Spanish, as a club could write it: every other text is said in English. No part of the kit.
import { registerLanguage } from '../../dist/page/runnel.js';

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
    `En ${count(cycles, { one: 'ciclo', other: 'ciclos' })} de ${minutes(each)}. Deje que el agua penetre entre uno y otro.`,
  amounts: {
    computed: ({ quantity }, litres) => quantity(litres, 'volume'),
    'hand-set': ({ quantity }, litres) => `${quantity(litres, 'volume')}, fijado a mano`,
    run: ({ quantity }, litres) => `${quantity(litres, 'volume')}, como se regó`,
  },
  nothing: 'Sin riego: bastan la lluvia y la reserva del suelo.',
  unknown: 'No se sabe: falta el clima de esta semana.',
  closed: 'Cerrada esta semana: no regar.',
  off: 'No hay nada plantado.',
  shut: 'cerrada toda la semana',
  openAll: 'abierta todos los días de riego',
  openOn: ({ weekdays }, weekStart, mask) => `abierta solo los días ${weekdays(weekStart, mask)}`,
  rain: ({ quantity }, depth, litres) =>
    `Lluvia contada: ${quantity(depth, 'depth')}, que ahorra ${quantity(litres, 'volume')}`,
  noRain: 'Sin lluvia contada',
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
