import { frenchText } from '../language.js';
import { ORDINARY_WIDTH } from './stock.js';
import type { StockWords } from './stock-words.js';

/** The headings of the list stay English in every language; in a sentence they are called by what they hold. */
const called = (heading: string): string =>
  heading === 'length' ? 'longueur' : heading === 'thickness' ? 'épaisseur' : 'largeur';

const readAs = (heading: string): string => `${called(heading)} (${heading})`;

/** "de longueur", "d’épaisseur". */
const of = (heading: string): string =>
  heading === 'thickness' ? `d’${readAs(heading)}` : `de ${readAs(heading)}`;

export const french: StockWords = {
  severity: { error: 'erreur', warning: 'avertissement' },
  sentences: {
    empty: () =>
      frenchText(
        'La liste est vide : il lui faut un en-tête avec mark et width, puis une ligne par douelle.',
      ),
    'quote-open': () => 'Des guillemets s’ouvrent ici et ne se ferment jamais.',
    'quote-followed': () =>
      frenchText(
        'Du texte suit des guillemets fermants : mettre tout le champ entre guillemets et doubler ceux qu’il contient.',
      ),
    'heading-missing': (_found, heading) =>
      `La première ligne ne nomme aucune colonne "${heading}".`,
    'heading-doubled': (_found, heading) =>
      frenchText(`La colonne "${heading}" y est deux fois : n’en garder qu’une.`),
    'heading-unknown': (found) =>
      frenchText(
        `La colonne "${found}" n’est pas lue. Colonnes connues : mark, width, length, thickness, bung, note.`,
      ),
    'fields-extra': (found, _heading, detail) =>
      `"${found}" se trouve au-delà de la dernière colonne.` +
      (detail === ','
        ? ' Une virgule décimale demande des guillemets, ou des points-virgules entre les colonnes.'
        : ''),
    'mark-missing': () => 'Cette douelle n’a pas de repère (mark).',
    'mark-unprintable': () =>
      'Le repère (mark) contient un saut de ligne ou un autre caractère qui ne s’imprime pas.',
    'mark-doubled': (found, _heading, detail) =>
      frenchText(
        `Le repère "${found}" est déjà à la ligne ${detail} : chaque douelle doit avoir le sien.`,
      ),
    'width-missing': () => 'Cette douelle n’a pas de largeur (width).',
    'length-unreadable': (found, heading, detail) =>
      `"${found}" n’est pas une valeur ${of(heading)}. Écrire ${detail === 'in' ? '2.8 ou 2 13/16' : '71,5 ou 71.5'}` +
      (heading === 'width' ? ', ou deux lectures avec une barre entre elles' : '') +
      (detail === 'mm'
        ? frenchText(` ; pour des pouces, intituler la colonne "${heading} (in)".`)
        : '.'),
    'width-absurd': (found) =>
      frenchText(
        `Une largeur de ${found} n’est pas celle d’une douelle : on prend entre ${ORDINARY_WIDTH.least} et ${ORDINARY_WIDTH.most} mm.`,
      ),
    'length-absurd': (found, heading) =>
      frenchText(`Une valeur ${of(heading)} de ${found} n’est pas celle d’une douelle.`),
    'unit-mistaken': (found, _heading, detail) => {
      const [read, meant] = detail.endsWith('(mm)')
        ? ['pouces', 'millimètres']
        : ['millimètres', 'pouces'];
      return frenchText(
        `"${found}" et presque toute cette colonne ont été lus en ${read} et ne sont pas d’une douelle ; en ${meant} ils le seraient : ` +
          `intituler la colonne "${detail}", de même que les autres en ${meant}.`,
      );
    },
    'readings-apart': (found, _heading, detail) =>
      frenchText(
        `Les deux lectures ${found} diffèrent de ${detail} mm : mesurer cette douelle de nouveau ? Leur moyenne compte.`,
      ),
    'bung-unreadable': (found) => `"${found}" n’est ni yes ni no.`,
  },
};
