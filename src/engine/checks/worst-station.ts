/** The station where a measure is greatest, each asked once. */
export function worstStation<Station extends object>(
  stations: readonly Station[],
  measure: (s: Station) => number,
): Station {
  let found = stations[0]!;
  let most = -Infinity;
  for (const s of stations) {
    const m = measure(s);
    if (m > most) {
      most = m;
      found = s;
    }
  }
  return found;
}
