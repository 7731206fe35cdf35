/** What is typed in a field and not taken yet. */

/** Whether something is typed in a field of a place that has not been taken: markup drawn there anew would lose it. */
export function isTypedIn(place: HTMLElement): boolean {
  const field = document.activeElement;
  return field instanceof HTMLInputElement && place.contains(field) && field.value !== field.defaultValue;
}
