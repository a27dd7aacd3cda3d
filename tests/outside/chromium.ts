/** Debian's Chromium, with nothing that it would fetch or update. */
import { chromium, type Browser } from 'playwright-core';

/** `graphics`: how it draws in space; not at all unless told. */
export function startChromium(graphics: readonly string[] = ['--disable-gpu']): Promise<Browser> {
  const quiet = [
    '--no-sandbox',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
  const args = [...quiet, ...graphics];
  return chromium.launch({ executablePath: '/usr/bin/chromium', args });
}
