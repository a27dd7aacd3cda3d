/** What a dip rod says, in German. */
import type { dipWords } from './dip.en.js';

export const dipWordsGerman: typeof dipWords = {
  title: {
    lying: 'Peilstab für das liegende Gefäß',
    standing: 'Peilstab für das stehende Gefäß',
  },
  front: 'Vorderseite',
  back: 'Rückseite',
  scales: { litre: 'Liter', usGallon: 'US-gal', imperialGallon: 'Imp. gal' },
  full: (litres, usGallons, imperialGallons) =>
    `voll: ${litres}\u00a0l, ${usGallons}\u00a0US-gal, ${imperialGallons}\u00a0Imp.\u00a0gal`,
  outside: 'Außenseite der Spunddaube',
  rim: 'oberer Rand',
  topHead: 'Innenseite des oberen Bodens',
  foot: (place) => `Fuß: steht auf ${place}`,
  feet: {
    lying: 'der Daube gegenüber dem Spund',
    standing: 'der Innenseite des Bodens',
  },
  notes: {
    lying:
      'Für das waagrecht liegende Fass, Spund genau nach oben. Den Stab durch das Spundloch einführen, bis sein Fuß auf der Daube gegenüber steht; senkrecht halten, herausziehen und ablesen, wie weit er nass ist.',
    standing:
      'Für das Gefäß, das waagrecht auf seinem Boden steht. Den Fuß des Stabes auf die Mitte der Bodeninnenseite stellen; senkrecht halten, herausziehen und ablesen, wie weit er nass ist.',
    check:
      'Steht der Fuß richtig, so liegt die Linie über „voll“ auf Höhe der Außenseite der Spunddaube, am Rand des Loches.',
    faces:
      'Die beiden Streifen sind Vorder- und Rückseite eines flachen Stabes: ausschneiden und mit den Füßen auf gleicher Höhe aufkleben, oder die Marken anreißen.',
    passes: (width, thickness) =>
      `Ein Stab von ${width} Breite geht durch das Spundloch, wenn er höchstens ${thickness} dick ist.`,
    gallons: 'US-gal: 231 Kubikzoll, 3.785 l. Imp. gal: 4.54609 l.',
    use: 'Nach der gezeichneten Innenform; Dauben nutzen sich ab und quellen. Für Werkstatt und Keller, nicht für den Verkauf nach Maß. Sauberes, hartes Holz ohne Anstrich; was Lebensmittel berühren darf, sagen die örtlichen Vorschriften.',
    gas: 'In und über einem Gefäß, in dem etwas gärt, steht Kohlendioxid: den Raum lüften und sich nie hineinbeugen.',
  },
};
