import type { PlaceId } from './place.ts';

const WHAT_WILL_BE_THERE: Readonly<Record<Exclude<PlaceId, 'frame' | 'check-sheet'>, readonly [string, string]>> = {
  'try-outs': [
    'Try-outs',
    'what would work instead: how thick a log, how many posts, which brace angle, and what each costs in logs and weight',
  ],
  woodlot: [
    'Woodlot',
    'your standing trees and felled logs, which of them gives which piece, and how heavy each is to move',
  ],
  'cut-sheets': [
    'Cut sheets',
    'post heights, levelling along the beam, brace lengths and angles, full-size templates, concrete, and what to look after later',
  ],
};

/** A place that is not built yet says so: nothing is computed there, nothing is promised. */
export function ComingPlace({ place }: { readonly place: keyof typeof WHAT_WILL_BE_THERE }) {
  const [name, what] = WHAT_WILL_BE_THERE[place];
  return (
    <section className="coming" aria-labelledby="coming-title">
      <h2 id="coming-title">{name}</h2>
      <p>Here will be {what}. It is not built yet, and nothing is computed here.</p>
    </section>
  );
}
