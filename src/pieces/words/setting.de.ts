/** What the plan and checklist of a chosen set say, in German. */
import type { settingWords } from './setting.en.js';

export const settingWordsGerman: typeof settingWords = {
  title: (set) => `Satz ${set}: der Ring von oben, in Setzfolge`,
  vesselTitle: (title, set) => `${title}, Satz ${set}`,
  bung: 'Spund',
  label: (mark, width) => `${mark} · ${width}`,
  diameter: (size) => `⌀ ${size}`,
  staves: (count) => `${count} Dauben`,
  notes: {
    picture: (scale) =>
      `Ein Bild im Maßstab ${scale}, an der weitesten Stelle geschnitten. Maße aus seinen Zahlen nehmen, nie daraus abmessen.`,
    order: (first) =>
      `Die Dauben in der Folge ihrer Nummern setzen, ${first} zuerst, vom oberen Ende gesehen im Uhrzeigersinn.`,
    bungStave: (mark) => `die Spunddaube ${mark}`,
    firstStave: (mark) => `Daube ${mark}`,
    closes: (diameter, off, sure) =>
      `Der Ring schließt sich an der weitesten Stelle bei einem Außendurchmesser von ${diameter}, ${off}, auf ${sure} genau (eine Standardabweichung, aus der Stufe, auf die die Breiten abgelesen sind).`,
    wider: (by) => `${by} über der Vorgabe`,
    narrower: (by) => `${by} unter der Vorgabe`,
    exact: 'wie vorgegeben',
    bench: (laid) =>
      `Die Dauben nach dem Hobeln Kante an Kante flach auf die Bank legen: die laufende Summe muss so herauskommen wie in der Liste, ${laid} im Ganzen. Ein Versehen zeigt sich an der ersten Daube, die abweicht.`,
    asMarked: 'Keine Breite ist nachzuhobeln.',
    plane: (count, most) =>
      `Vor dem Fügen ${count} schmaler hobeln, zusammen um ${most}; die Liste sagt, welche und um wie viel.`,
    planeCount: (count) => (count === 1 ? 'eine Daube' : `${count} Dauben`),
    cureLarge: (takeOut, putIn, by) =>
      `Ersatz bereitlegen: schließt der Ring zu weit, ${takeOut} herausnehmen und ${putIn} einsetzen; der Durchmesser fällt um ${by}.`,
    cureSmall: (takeOut, putIn, by) =>
      `Ersatz bereitlegen: schließt der Ring zu eng, ${takeOut} herausnehmen und ${putIn} einsetzen; der Durchmesser wächst um ${by}.`,
    measure: (measure, joints, balance, pairs, inLine) =>
      `Folge im Ring, im Ganzen ${measure}, weniger ist besser: Fugen weichen um ${joints} von gleichmäßigen ab; die Breiten überwiegen auf einer Seite um ${balance}; ${pairs} Paare der schmalsten nebeneinander; Fugen in einer Linie mit Fugen des Bodens: ${inLine}.`,
    headJoints:
      'Kurze Striche außen am Ring: wo Fugen der Bodenstücke auf die Gargel treffen, wenn die Stücke zur ersten Daube hin laufen.',
    flat: (step) =>
      `Die Seiten bleiben flach: ungleiche Nachbarn lassen an ihrer Fuge eine Stufe, hier höchstens ${step}.`,
    caution:
      'Noch nicht gehaltene Dauben können fallen: mit einem Helfer oder einem zweiten Reif arbeiten, und Finger aus den Fugen, wenn der Reif getrieben wird.',
  },
  checklist: {
    title: 'Liste zum Abhaken, am Stapel und auf der Bank',
    headings: (unit) => [
      'Platz',
      'Zeichen',
      `Breite ${unit}`,
      `abhobeln ${unit}`,
      `bis hierher ${unit}`,
      'geholt',
      'gesetzt',
    ],
  },
};
