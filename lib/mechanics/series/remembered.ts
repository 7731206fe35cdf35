/**
 * A function of one number that works each value out once: a grid asks for the same places over and over.
 *
 * @param work what is to be remembered; must depend on its argument only
 */
export function remembered<Value extends object>(work: (place: number) => Value): (place: number) => Value {
  const known = new Map<number, Value>();
  return (place) => {
    const value = known.get(place) ?? work(place);
    known.set(place, value);
    return value;
  };
}
