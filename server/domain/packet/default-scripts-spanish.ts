/**
 * Spanish words for some of the scripts every department starts with, by the key of the script. They are
 * examples: a department takes them over, changes them, or leaves them.
 */
export const SPANISH_EXAMPLES: Readonly<Record<string, string>> = {
  welcome: `
Bienvenidos a {{ venue }}, la casa de los {{ homeNickname }} de {{ homeSchool }}.

Los {{ homeNickname }} reciben a los {{ visitorNickname }} de {{ visitorSchool }}.
[[pause 3]]
Gracias por venir. Busquen la salida más cercana a su asiento y disfruten del partido.`.trim(),
  conduct: `
Estos estudiantes han trabajado mucho para estar aquí. Animen a su equipo, respeten al otro y dejen las decisiones a los árbitros.

Por favor, no usen matracas ni bocinas, y mantengan libres los pasillos.`.trim(),
  floorSafety: `
Por la seguridad de todos, no entren en el área de juego durante el descanso y dejen la comida y las bebidas en las gradas. Mantengan libres los extremos y los lados para los equipos.`.trim(),
  weather: `
Se detiene el juego por el mal tiempo. Por favor, pasen al interior ahora y permanezcan allí. Les avisaremos cuando sea seguro salir.`.trim(),
  evacuation: `
Por favor, salgan del edificio ahora por la salida más cercana. Caminen, no corran, y dejen sus pertenencias. Permanezcan afuera hasta que les digan que es seguro volver.`.trim(),
};
