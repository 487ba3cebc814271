/** A place on the drawing: x to the right, y down, in the paper's own unit (px on screen, pt in print). */
export interface Point {
  readonly x: number;
  readonly y: number;
}
export type Segment = readonly [Point, Point];
/** Upright box by its upper corner of lower x. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a view is drawn on. The view takes the whole width and as much height as it needs, up to the greatest. */
export interface Paper {
  readonly unit: 'px' | 'pt';
  readonly width: number;
  readonly maxHeight: number;
  readonly textSize: number;
}

/** A phone gets the least text that can still be read there, so that the drawing keeps its room. */
export const onScreen = (width: number, maxHeight: number): Paper => ({
  unit: 'px',
  width,
  maxHeight,
  textSize: width < 480 ? 12 : 13,
});
export const onSheet = (width: number, maxHeight: number): Paper => ({ unit: 'pt', width, maxHeight, textSize: 7.5 });

/** What must be seen, in inches of the shelter: `right` over the paper and `up` the paper (plan: y is turned). */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The step from inches of the shelter to places on the paper; one scale both ways. */
export interface View {
  readonly paper: Paper;
  readonly width: number;
  readonly height: number;
  /** paper units per inch */
  readonly scale: number;
  readonly at: (rightIn: number, upIn: number) => Point;
}

export function extentOf(places: readonly { readonly right: number; readonly up: number }[]): Extent {
  const rights = places.map((p) => p.right);
  const ups = places.map((p) => p.up);
  return { left: Math.min(...rights), right: Math.max(...rights), low: Math.min(...ups), high: Math.max(...ups) };
}

export function fitView(extent: Extent, paper: Paper, margins: Margins): View {
  const wide = Math.max(extent.right - extent.left, 1);
  const tall = Math.max(extent.high - extent.low, 1);
  const roomX = Math.max(paper.width - margins.left - margins.right, 1);
  const roomY = Math.max(paper.maxHeight - margins.top - margins.bottom, 1);
  const scale = Math.min(roomX / wide, roomY / tall);
  const startX = margins.left + (roomX - wide * scale) / 2;
  return {
    paper,
    width: paper.width,
    height: margins.top + tall * scale + margins.bottom,
    scale,
    at: (rightIn, upIn) => ({
      x: startX + (rightIn - extent.left) * scale,
      y: margins.top + (extent.high - upIn) * scale,
    }),
  };
}
