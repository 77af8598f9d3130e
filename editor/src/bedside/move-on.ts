import type { KeyboardEvent } from 'react';

const stopMark = '[data-stop]';

/** Where a person who moves on by Enter comes to inside a stop; null where it is folded away. */
function place(stop: Element): HTMLElement | null {
  if (!stop.checkVisibility()) return null;
  return (
    stop.querySelector<HTMLElement>('input[type="radio"]:checked') ??
    stop.querySelector<HTMLElement>('input:not([type="checkbox"]), select, textarea') ??
    stop.querySelector<HTMLElement>('input')
  );
}

/** Goes to the next stop of the form after the one that an element stands in; after the last, to the outcome. */
export function moveOn(from: Element): void {
  const form = from.closest('form');
  const stops = form ? [...form.querySelectorAll(stopMark)] : [];
  const at = stops.findIndex((stop) => stop.contains(from));
  const next = stops.slice(at + 1).find((stop) => place(stop) !== null);
  const target = next ? place(next) : document.getElementById('outcome');
  target?.focus();
  if (target instanceof HTMLInputElement && target.type !== 'radio') target.select();
}

/** Goes to the field of an observation. */
export function goTo(observation: string): void {
  const stop = document.querySelector(`[data-observation="${CSS.escape(observation)}"]`);
  stop?.closest('details')?.setAttribute('open', '');
  const target = stop && place(stop);
  target?.focus();
  target?.scrollIntoView({ block: 'center' });
}

/** Enter moves on, except where it does something of its own; a digit picks the choice at that place. */
export function onFormKey(event: KeyboardEvent<HTMLFormElement>): void {
  const { target, key } = event;
  if (event.ctrlKey || event.metaKey || event.altKey || !(target instanceof HTMLInputElement)) return;
  if (key === 'Enter') {
    event.preventDefault();
    moveOn(target);
  } else if (target.type === 'radio' && /^[1-9]$/.test(key)) {
    const radios = target
      .closest('[role="radiogroup"]')
      ?.querySelectorAll<HTMLInputElement>('input[type="radio"]');
    const radio = radios?.[Number(key) - 1];
    if (!radio) return;
    event.preventDefault();
    radio.click();
    radio.focus();
  }
}
