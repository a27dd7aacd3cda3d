/** Asks the system to show an address. Where it cannot, people open it themselves: the address is said anyway. */
import { spawn } from 'node:child_process';
import { platform } from 'node:os';

export function openBrowser(address: string): void {
  const [program, ...parts] = openerOf(platform());
  const child = spawn(program, [...parts, address], { stdio: 'ignore', detached: true });
  child.on('error', () => {});
  child.unref();
}

function openerOf(system: NodeJS.Platform): [string, ...string[]] {
  if (system === 'darwin') return ['open'];
  if (system === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler'];
  return ['xdg-open'];
}
