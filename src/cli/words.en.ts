/** What the commands answer, in English. */
import { asWritten } from '../index.js';
import { figureWordsEnglish } from './figure-words.en.js';
import type { CliWords } from './words.js';

export const english: CliWords = {
  typeset: asWritten,
  warning: 'warning',
  check: {
    good: 'can be built',
    warned: (warnings) =>
      `can be built, with ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`,
  },
  draw: {
    wrote: (files) => `wrote ${files} files`,
    look: (page) => `to look at them, open ${page} in a browser`,
    none: (file) => `${file}: this vessel has none of these pieces`,
  },
  give: {
    wrote: (file) => `wrote ${file}; next: staveloft figures ${file}`,
    cannotBeBuilt: 'this cannot be built:',
    tryAgain: 'Change these keys of the spec you started from, then try again.',
  },
  changes: {
    nothing: 'nothing changes',
    changed: 'changed',
    titleStays: (title) => `the title stays: ${title}`,
    laid: (key) => `${key}, laid side by side`,
    capacity: (from, to) => `capacity ${from} -> ${to}`,
  },
  ends: { top: 'top', bottom: 'bottom' },
  vessels: { cask: 'cask', tub: 'tub' },
  hoopName: (name) => name,
  format: {
    note: { mm: 'lengths in mm', in: 'lengths in inches, with the nearest 1/32 in brackets' },
    per100: (slope) => `${slope} mm per 100 mm`,
    litres: (litres) => `${litres} litres`,
    gallons: (gallons, litres) => `${gallons} US gallons (${litres} litres)`,
  },
  size: {
    round: (step) => `round dimensions near these, whole ${step} where they may change`,
    headings: (unit, diameters) => [
      `height ${unit}`,
      ...diameters.map((name) => `${name} ${unit}`),
      'litres',
      'off',
    ],
    diameters: { cask: ['bilge', 'ends'], tub: ['top', 'bottom'] },
    unreachable: (keeping, litres, reach) =>
      `keeping ${keeping}, ${litres} litres cannot be reached: ${reach}`,
    keeps: { proportions: 'proportions', heads: 'heads', height: 'height' },
    withLength: (kept) => `${kept} and this stave length`,
    no: 'no vessel can be made so',
    noNearer: (litres) => `it comes no nearer than about ${litres} litres`,
  },
  recut: {
    head: 'head',
    outside: 'outside of the spec, off the wood',
    inside: 'inside',
    atMost: (gap) => `${gap} at most`,
    groove: {
      gone: (end) => `old groove, ${end}: is cut off`,
      same: (end) => `old groove, ${end}: stays in use`,
      beside: (end, fromEnd) =>
        `old groove, ${end}: stays in the chime, its middle ${fromEnd} from the new end: fill it, or plane it into the howel`,
      meets: (end, fromEnd) =>
        `old groove, ${end}: lies ${fromEnd} from the new end and runs into the new one: cut more off, or change heads.croze.inset`,
    },
  },
  dip: {
    postures: {
      lying: 'lying, bung up; depth at the bilge, on a rod through the bung',
      standing: 'standing; depth above the inside face of the bottom',
    },
    headings: (unit) => [`dip ${unit}`, 'litres'],
    gallons: 'US gallons',
    oldRule: ['old rule, l', 'its error, l'],
  },
  figures: figureWordsEnglish,
  prove: {
    isFile: 'it is a file: give the folder that draw wrote to',
    tooMany: (files) => `it holds more than ${files} files`,
    noFolder: 'there is no such folder',
    noSpec: (folder) => `${folder}: there is no spec.yaml in it: draw the vessel again`,
    noStaves: (picture) => `${picture}: the folder was drawn without staves, which make the joints`,
    noRing: (picture) => `${picture} was not drawn: these files make no ring of staves`,
  },
  files: {
    cannotRead: (why) => `cannot be read: ${why}`,
    isFolder: 'it is a folder, not a file',
    tooLarge: (kilobytes) => `is too large: a spec has at most ${kilobytes} kB`,
    utf16: 'is written in UTF-16: save it as UTF-8',
    notText: 'is not a text file: a spec is YAML text',
    notUtf8: 'is not a text file in UTF-8: a spec is YAML text, saved as UTF-8',
    stdinOnce: 'standard input (-) can be only one of the specs',
    nothingWritten: (why) => `nothing was written: ${why}`,
    folderInTheWay: (path) => `${path} is a folder`,
    there: (named, more, several) =>
      `${named}${more > 0 ? ` and ${more} more` : ''} ${several ? 'are' : 'is'} there already; --replace writes over`,
    reasons: {
      ENOENT: 'there is no such file',
      ENOTDIR: 'a part of its path is a file, not a folder',
      EISDIR: 'it is a folder, not a file',
      EACCES: 'permission is denied',
      EPERM: 'permission is denied',
      EROFS: 'the disk is read-only',
      ENOSPC: 'the disk is full',
      EDQUOT: 'the quota of the disk is used up',
      ENAMETOOLONG: 'the name is too long',
      ELOOP: 'its links lead in a circle',
      EEXIST: 'a file of that name is in the way',
      ENOTEMPTY: 'something of that name has been put there meanwhile',
      EADDRINUSE: 'another program is using it',
      EBUSY: 'another program is using it',
    },
  },
};
