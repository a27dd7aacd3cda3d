/** What the nested boards of a head say, in German. */
import type { routerWords } from './router.en.js';

export const routerWordsGerman: typeof routerWords = {
  title: {
    both: 'Bodenstücke auf der Platte verteilt',
    top: 'Stücke des oberen Bodens auf der Platte verteilt',
    bottom: 'Stücke des unteren Bodens auf der Platte verteilt',
  },
  sheetOf: (title, number, count) =>
    count === 1 ? title : `${title}, Platte ${number} von ${count}`,
  notes: {
    sheet: (width, height, thickness) =>
      `Das schmale Rechteck ist das Brett oder die Platte, aus der geschnitten wird: ${width} × ${height}, ${thickness} dick. Seine linke untere Ecke ist der Nullpunkt. Die Faser läuft längs, und kein Stück ist gedreht.`,
    broken:
      'Unterbrochene Ansicht: die Stücke in wahrer Größe; der Rest der Platte, auf dem nichts liegt, ist weggelassen. Die Datei für die Fräse enthält ihn.',
    gap: (gap) =>
      `Die Stücke liegen ${gap} auseinander und vom Rand, für den Fräser und zum Festhalten; Stege stehen lassen, sonst löst der letzte Schnitt das Stück.`,
    outline:
      'Nur „outline“ wird durchgeschnitten. „bore“ liegt in halber Dicke und wird von der Fuge aus gebohrt; „bevel“ ist, wo eine Fase endet, auf der Außenseite oder auf der Rückseite.',
    seen: 'Die Außenseite ist oben. Jede Nummer ist die des Stückes im Boden, von unten nach oben.',
    joints:
      'Die geraden Kanten sind Fugen: wo ein Schnitt nicht genau ist, etwas breiter lassen, von Hand fügen und bedenken, dass der Rand mitwandert.',
    twice: 'Ein Boden ist gezeichnet; das Gefäß hat zwei gleiche: zweimal schneiden.',
    tooLarge: (boards, width, height) =>
      `Nicht gezeichnet, weil zu groß für diese Platte: ${boards}. Eine Platte von ${width} × ${height} würde jedes davon fassen.`,
    board: (number, chord, width) => `Stück ${number} (${chord} × ${width})`,
  },
  table: {
    title: 'Wo jedes Stück liegt',
    headings: (unit) => [
      'Stück',
      `Sehne ${unit}`,
      `Breite ${unit}`,
      `linkes Ende von links ${unit}`,
      `untere Kante von unten ${unit}`,
    ],
  },
};
