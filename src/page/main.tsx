/** Shows the page. */
import { render } from 'preact';
import { App } from './app.js';
import { firstLanguage, speak } from './words/index.js';

export async function showPage(): Promise<void> {
  await speak(firstLanguage());
  render(<App />, document.getElementById('page')!);
  // for whoever measures how long it takes
  performance.mark('ready');
}
