/** What the help of a command says below its options, set to the width of the terminal as the options are. */
import type { AddHelpTextContext, Help } from 'commander';

/** Prose; or, under a heading, names with what they mean, or lines that stay as they are, such as examples. */
export type HelpPart =
  | string
  | {
      readonly heading: string;
      readonly names: readonly (readonly [name: string, about: string])[];
    }
  | { readonly heading: string; readonly lines: readonly string[] };

/** Where nothing tells how wide the terminal is. */
const usualWidth = 80;

export const examples = (...lines: string[]): HelpPart => ({ heading: 'Examples:', lines });

/** The parts in order, an empty line before each: hand it to `addHelpText`. */
export function helpText(...parts: readonly HelpPart[]): (context: AddHelpTextContext) => string {
  return ({ command }) => {
    const helpWidth = command.configureOutput().getOutHelpWidth?.() ?? usualWidth;
    const help = command.createHelp();
    help.prepareContext({ helpWidth });
    return parts.map((part) => `\n${partText(part, help, helpWidth)}`).join('\n');
  };
}

function partText(part: HelpPart, help: Help, width: number): string {
  if (typeof part === 'string') return help.boxWrap(part, width);
  if ('lines' in part) return [part.heading, ...part.lines.map((line) => `  ${line}`)].join('\n');
  const widest = Math.max(...part.names.map(([name]) => name.length));
  const items = part.names.map(([name, about]) => help.formatItem(name, widest, about, help));
  return [part.heading, ...items].join('\n');
}
