/** What a dip rod says, in English. */

export const dipWords = {
  title: {
    lying: 'Dip rod, for the vessel lying',
    standing: 'Dip rod, for the vessel standing',
  },
  front: 'front',
  back: 'back',
  scales: { litre: 'litres', usGallon: 'US gal', imperialGallon: 'imp. gal' },
  full: (litres: string, usGallons: string, imperialGallons: string) =>
    `full: ${litres}\u00a0l, ${usGallons}\u00a0US\u00a0gal, ${imperialGallons}\u00a0imp.\u00a0gal`,
  outside: 'outside of the bung stave',
  rim: 'rim',
  topHead: 'inside face of the top head',
  foot: (place: string) => `foot: stands on ${place}`,
  feet: { lying: 'the stave opposite the bung', standing: 'the bottom’s inside face' },
  notes: {
    lying:
      'For the cask lying level, its bung straight up. Let the rod down through the bung until its foot stands on the stave opposite; hold it upright, draw it out and read where it is wet.',
    standing:
      'For the vessel standing level on its bottom. Set the rod’s foot on the inside face of the bottom, at its middle; hold it upright, draw it out and read where it is wet.',
    check:
      'When the foot stands right, the line above “full” is level with the outside of the bung stave, at the edge of the hole.',
    faces:
      'The two strips are front and back of one flat rod: cut them out and glue them on, feet level, or scribe the marks across.',
    passes: (width: string, thickness: string) =>
      `A rod ${width} wide passes the bung hole if it is no thicker than ${thickness}.`,
    gallons: 'US gal: 231 cubic inches, 3.785 l. Imp. gal: 4.54609 l.',
    use: 'By the drawn inside of the vessel; staves wear and swell. For making and for the cellar, not for sale by measure. Clean, hard wood without finish; local rules say what may touch food.',
    gas: 'Carbon dioxide lies in and above a vessel in which something ferments: air the place, and never lean in.',
  },
};
