/** Where the keyboard goes on when the button that it pressed is gone with what it took away. */

export const chooseButton = 'choose-sets';

/** From sets that are put away: to the choosing of others. */
export const goToChoosing = (): void => document.getElementById(chooseButton)?.focus();

/** From a row that is taken away: to the same button of the row below, or above. */
export function goToNextRow(button: HTMLButtonElement): void {
  const row = button.closest('li')!;
  const other = row.nextElementSibling ?? row.previousElementSibling;
  const next = other?.querySelector<HTMLElement>('button:last-child');
  (next ?? document.getElementById('rack-width'))?.focus();
}
