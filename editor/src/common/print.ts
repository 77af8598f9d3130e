/** Opens all that is folded while the page is printed, as nobody can unfold it on paper. */
export function unfoldForPrint(): void {
  let folded: HTMLDetailsElement[] = [];
  addEventListener('beforeprint', () => {
    folded = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
    for (const each of folded) each.open = true;
  });
  addEventListener('afterprint', () => {
    for (const each of folded) each.open = false;
    folded = [];
  });
}
