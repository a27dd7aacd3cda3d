/** What a dip rod says, in French. */
import type { dipWords } from './dip.en.js';

export const dipWordsFrench: typeof dipWords = {
  title: {
    lying: 'Pige pour le récipient couché',
    standing: 'Pige pour le récipient debout',
  },
  front: 'recto',
  back: 'verso',
  scales: { litre: 'litres', usGallon: 'gal US', imperialGallon: 'gal imp.' },
  full: (litres, usGallons, imperialGallons) =>
    `plein : ${litres}\u00a0l, ${usGallons}\u00a0gal\u00a0US, ${imperialGallons}\u00a0gal\u00a0imp.`,
  outside: 'extérieur de la douelle de bonde',
  rim: 'bord',
  topHead: 'face intérieure du fond du haut',
  foot: (place) => `pied : posé sur ${place}`,
  feet: {
    lying: 'la douelle opposée à la bonde',
    standing: 'la face intérieure du fond',
  },
  notes: {
    lying:
      'Pour le fût couché de niveau, la bonde bien en haut. Descendre la pige par la bonde jusqu’à ce que son pied pose sur la douelle opposée ; la tenir droite, la retirer et lire jusqu’où elle est mouillée.',
    standing:
      'Pour le récipient debout, de niveau sur son fond. Poser le pied de la pige au milieu de la face intérieure du fond ; la tenir droite, la retirer et lire jusqu’où elle est mouillée.',
    check:
      'Quand le pied pose bien, la ligne au-dessus de « plein » est au niveau de l’extérieur de la douelle de bonde, au bord du trou.',
    faces:
      'Les deux bandes sont le recto et le verso d’une pige plate : les découper et les coller, pieds au même niveau, ou tracer les repères.',
    passes: (width, thickness) =>
      `Une pige large de ${width} passe par la bonde si elle n’est pas plus épaisse que ${thickness}.`,
    gallons: 'gal US : 231 pouces cubes, 3.785 l. gal imp. : 4.54609 l.',
    use: 'D’après l’intérieur dessiné ; les douelles s’usent et gonflent. Pour l’atelier et le chai, non pour la vente à la mesure. Bois dur et propre, sans vernis ; les règles locales disent ce qui peut toucher les aliments.',
    gas: 'Du gaz carbonique stagne dans et sur un récipient où quelque chose fermente : aérer, et ne jamais s’y pencher.',
  },
};
