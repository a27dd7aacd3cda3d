/** Shows the page. */
import { render } from 'preact';
import { App } from './app.js';
import { keepNow } from './state/kept.js';
import { firstLanguage, speak } from './words/index.js';

export async function showPage(): Promise<void> {
  await speak(firstLanguage());
  addEventListener('pagehide', keepNow);
  // a tablet may end a page that is put aside without another word
  addEventListener('visibilitychange', keepNow);
  render(<App />, document.getElementById('page')!);
  // for whoever measures how long it takes
  performance.mark('ready');
}
