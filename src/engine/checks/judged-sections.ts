import type { RoundStick } from '../geometry/shelter.ts';
import type { DesignValues } from '../material/values.ts';
import type { LineCheckContext } from './line-context.ts';
import type { PurlinLoading } from './roof/purlin-loading.ts';
import type { RafterLoading } from './roof/rafter-loading.ts';
import type { RafterResponse } from './roof/rafter-responses.ts';

/** Round members whose sections were judged, with all that judged them: what `thinnest.ts` asks of thinner logs. */
export type JudgedSections = SectionsOfLine | SectionsOfRow | SectionsOfRafters | SectionsOfPurlins;

/** Beams, posts and braces of a frame line. */
export interface SectionsOfLine {
  readonly of: 'line';
  readonly context: LineCheckContext;
}

/** Tie logs and braces of a row across, turned into a line; its posts are judged with their lines. */
export interface SectionsOfRow {
  readonly of: 'row';
  readonly context: LineCheckContext;
  readonly tieIds: ReadonlySet<string>;
}

/** Rafters that are alike in all that their checks see. */
export interface SectionsOfRafters {
  readonly of: 'rafters';
  readonly memberIds: readonly string[];
  readonly loading: RafterLoading;
  readonly responses: readonly RafterResponse[];
  readonly stick: RoundStick;
  readonly values: DesignValues;
}

/** Purlins that are alike in all that their checks see. */
export interface SectionsOfPurlins {
  readonly of: 'purlins';
  readonly memberIds: readonly string[];
  readonly loading: PurlinLoading;
  readonly stick: RoundStick;
  readonly values: DesignValues;
}
