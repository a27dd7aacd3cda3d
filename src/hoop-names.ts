/** What the hoops are called that a spec names in the trade's English words; others keep the name that it gives them. */

const german: Readonly<Record<string, string>> = {
  chime: 'Kopfreif',
  quarter: 'Halsreif',
  bilge: 'Bauchreif',
};

const french: Readonly<Record<string, string>> = {
  chime: 'cercle de tête',
  quarter: 'cercle de collet',
  bilge: 'cercle de bouge',
};

export const germanHoop = (name: string): string => german[name] ?? `Reif ${name}`;
export const frenchHoop = (name: string): string => french[name] ?? `cercle ${name}`;
