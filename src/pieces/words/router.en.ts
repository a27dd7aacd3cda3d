/** What the nested boards of a head say, in English. */

export const routerWords = {
  title: {
    both: 'Boards of the head, nested',
    top: 'Boards of the top head, nested',
    bottom: 'Boards of the bottom, nested',
  },
  sheetOf: (title: string, number: number, count: number) =>
    count === 1 ? title : `${title}, sheet ${number} of ${count}`,
  notes: {
    sheet: (width: string, height: string, thickness: string) =>
      `The thin rectangle is the board or sheet to cut from: ${width} × ${height}, ${thickness} thick. Its lower left corner is the origin. The grain runs along it, and no board is turned.`,
    broken:
      'Broken view: the boards are at full size; the rest of the sheet, where nothing lies, is left out. The file for the router has all of it.',
    gap: (gap: string) =>
      `Boards lie ${gap} apart and from the edge, for the cutter and for holding them down; leave tabs, or the last cut frees the board.`,
    outline:
      'Only “outline” is cut through. “bore” lies at mid-thickness and is drilled from the joint; “bevel” is where a bevel ends, on the outside face or the far one.',
    seen: 'The outside face is up. Each number is that of the board in the head, from the lowest upwards.',
    joints:
      'The straight edges are joints: where a cut is not true, leave them a little wide, joint by hand, and mind that the rim moves with them.',
    twice: 'One head is drawn; the vessel has two alike: cut it twice.',
    tooLarge: (boards: string, width: string, height: string) =>
      `Not drawn, too large for this sheet: ${boards}. A sheet of ${width} × ${height} would hold each of them.`,
    board: (number: number, chord: string, width: string) =>
      `board ${number} (${chord} × ${width})`,
  },
  table: {
    title: 'Where each board lies',
    headings: (unit: string) => [
      'board',
      `chord ${unit}`,
      `width ${unit}`,
      `left end from the left ${unit}`,
      `lower edge from below ${unit}`,
    ],
  },
};
