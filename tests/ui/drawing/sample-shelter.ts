import type {
  BeamGeometry,
  BraceGeometry,
  LineGeometry,
  PlaneGeometry,
  PostGeometry,
  PurlinGeometry,
  RafterGeometry,
  RoundStick,
  Shelter,
  Stick,
  TieGeometry,
} from '../../../src/engine/geometry/shelter.ts';

/** An invented shelter for the drawings: laid out by hand-made rules, top of the beams level, no check behind it. */
export interface SampleChoice {
  readonly postXIn: readonly number[];
  readonly overhangIn: number;
  readonly lineYIn: readonly number[];
  readonly risePer12: number;
  readonly bearingZIn: number;
  readonly buttIn: number;
  readonly tipIn: number;
  readonly postIn: number;
  readonly braceIn: { readonly run: number; readonly drop: number } | null;
  readonly gradeFallIn: number;
  readonly rafterSpacingIn: number;
  readonly embedded: boolean;
  readonly pad: boolean;
  readonly ties: boolean;
  readonly onWall: boolean;
}

const SAMPLE: SampleChoice = {
  postXIn: [0, 150],
  overhangIn: 33,
  lineYIn: [0, 104],
  risePer12: 3,
  bearingZIn: 116,
  buttIn: 11.75,
  tipIn: 9.5,
  postIn: 9,
  braceIn: { run: 32, drop: 32 },
  gradeFallIn: 4,
  rafterSpacingIn: 23,
  embedded: false,
  pad: true,
  ties: true,
  onWall: false,
};

const STRIP_IN = 1.5;
const ROOF_PAST_IN = 18;
const round = (logId: string, atStart: number, atEnd: number, lengthIn: number): RoundStick => ({
  kind: 'round',
  logId,
  woodId: 'larch',
  buttAt: atStart >= atEnd ? 'start' : 'end',
  flatIn: 0,
  profile: [
    { atIn: 0, diameterIn: atStart },
    { atIn: lengthIn, diameterIn: atEnd },
  ],
});
const sawn = (breadthIn: number, depthIn: number): Stick => ({
  kind: 'sawn',
  breadthIn,
  depthIn,
  lay: breadthIn > depthIn ? 'flat' : 'edge',
  plies: 1,
  species: 'western larch',
  grade: null,
  use: 'wet',
});

export function sampleShelter(change: Partial<SampleChoice> = {}): Shelter {
  const c = { ...SAMPLE, ...change };
  const fromX = c.postXIn[0]! - c.overhangIn;
  const toX = c.postXIn[c.postXIn.length - 1]! + c.overhangIn;
  const firstY = c.lineYIn[0]!;
  const slope = c.risePer12 / 12;
  const slopeDeg = (Math.atan(slope) * 180) / Math.PI;
  const lastY = c.lineYIn[c.lineYIn.length - 1]!;

  const lines = c.lineYIn.map((yIn, i): LineGeometry => {
    const label = String.fromCharCode(65 + i);
    const onWall = c.onWall && i === 0;
    return {
      id: `line-${label}`,
      kind: onWall ? 'ledger' : 'frame',
      label,
      yIn,
      bearingZIn: c.bearingZIn - slope * (yIn - firstY),
      stripThicknessIn: onWall ? 0 : STRIP_IN,
      fromXIn: fromX,
      toXIn: toX,
      beamIds: onWall ? [] : [`beam-${label}`],
      postIds: onWall ? [] : c.postXIn.map((_, k) => `post-${label}${k + 1}`),
    };
  });
  const frames = lines.filter((l) => l.kind === 'frame');
  const diameterAt = (x: number): number => c.buttIn + ((c.tipIn - c.buttIn) * (x - fromX)) / (toX - fromX);
  const topZ = (line: LineGeometry): number => line.bearingZIn - STRIP_IN;

  const beams = frames.map((line): BeamGeometry => ({
    id: `beam-${line.label}`,
    line: line.id,
    label: `beam ${line.label}`,
    fromXIn: fromX,
    toXIn: toX,
    stick: round(`log-${line.label}`, c.buttIn, c.tipIn, toX - fromX),
    stations: [fromX, ...c.postXIn, toX].map((xIn) => ({
      xIn,
      diameterIn: diameterAt(xIn),
      axisZIn: topZ(line) - diameterAt(xIn) / 2,
      topZIn: topZ(line),
      undersideZIn: topZ(line) - diameterAt(xIn),
      shimIn: 0,
    })),
    cuts: [],
  }));
  const posts = frames.flatMap((line, i) =>
    c.postXIn.map((xIn, k): PostGeometry => {
      const gradeZIn = -c.gradeFallIn * k - c.gradeFallIn * i * 0.5;
      const seatZIn = topZ(line) - diameterAt(xIn) + 0.75;
      const pierTopZIn = gradeZIn + 6;
      const woodFromZIn = c.embedded ? gradeZIn - 48 : pierTopZIn + 1;
      const fixity = { along: 'pinned', across: 'pinned' } as const;
      return {
        id: `post-${line.label}${k + 1}`,
        label: `${line.label}${k + 1}`,
        line: line.id,
        xIn,
        yIn: line.yIn,
        gradeZIn,
        foot: c.embedded
          ? {
              kind: 'embedded',
              depthIn: 48,
              holeIn: 20,
              backfill: 'gravel',
              treatment: 'treated',
              fixedBelowGradeIn: 16,
              fixity,
            }
          : {
              kind: 'pier',
              standOffIn: 1,
              hardware: null,
              shaft: { shape: 'round', acrossIn: 14, lengthIn: 30 },
              pad: c.pad ? { acrossIn: 24, thickIn: 8, tied: true } : null,
              concretePcf: 145,
              fixity,
            },
        footZIn: c.embedded ? gradeZIn - 16 : woodFromZIn,
        woodFromZIn,
        pierTopZIn: c.embedded ? null : pierTopZIn,
        seatZIn,
        axisZIn: topZ(line) - diameterAt(xIn) / 2,
        lengthIn: seatZIn - woodFromZIn,
        stick: round('size-post', c.postIn + 0.5, c.postIn - 0.5, seatZIn - woodFromZIn),
        seats: [],
      };
    }),
  );
  const ties = c.ties && frames.length > 1 ? tiesBetween(posts, frames) : [];
  return {
    lines,
    planes: [planeOf(c, lines, slopeDeg, fromX, toX)],
    posts,
    beams,
    braces: [...alongBraces(c, posts, fromX, toX, diameterAt), ...acrossBraces(posts, ties)],
    ties,
    rafters: raftersOf(c, lines, slopeDeg, fromX, toX),
    purlins: purlinsOf(c, slopeDeg, fromX, toX, lastY - firstY + 2 * ROOF_PAST_IN),
    lowestGradeZIn: Math.min(...posts.map((p) => p.gradeZIn)),
    meanRoofHeightIn: c.bearingZIn,
    planAlongIn: toX - fromX,
    planAcrossIn: lastY - firstY + 2 * ROOF_PAST_IN,
  };
}

function alongBraces(
  c: SampleChoice,
  posts: readonly PostGeometry[],
  fromX: number,
  toX: number,
  diameterAt: (x: number) => number,
): readonly BraceGeometry[] {
  const { braceIn } = c;
  if (!braceIn) return [];
  return posts.flatMap((post) =>
    ([1, -1] as const).flatMap((side): BraceGeometry[] => {
      const topX = post.xIn + side * braceIn.run;
      const outward = side > 0 ? post.xIn === Math.max(...c.postXIn) : post.xIn === Math.min(...c.postXIn);
      if (outward || topX < fromX || topX > toX) return [];
      const topZ = post.axisZIn;
      const lengthIn = Math.hypot(braceIn.run, braceIn.drop);
      return [
        {
          id: `brace-${post.label}${side > 0 ? 'plus' : 'minus'}`,
          label: `brace ${post.label}`,
          postId: post.id,
          plane: 'along',
          toId: `beam-${post.label[0]}`,
          side: side > 0 ? 'plus' : 'minus',
          runIn: braceIn.run,
          dropIn: braceIn.drop,
          phiDeg: (Math.atan2(braceIn.run, braceIn.drop) * 180) / Math.PI,
          lengthIn,
          visibleLengthIn: lengthIn - 10,
          postPoint: { xIn: post.xIn, yIn: post.yIn, zIn: topZ - braceIn.drop },
          topPoint: { xIn: topX, yIn: post.yIn, zIn: topZ },
          postDiameterIn: c.postIn,
          topDiameterIn: diameterAt(topX),
          stick: round('size-brace', 5.5, 5, lengthIn),
          ends: { post: { kind: 'housed', depthIn: 0.75 }, top: { kind: 'housed', depthIn: 0.75 } },
        },
      ];
    }),
  );
}

function tiesBetween(posts: readonly PostGeometry[], frames: readonly LineGeometry[]): readonly TieGeometry[] {
  const [high, low] = [frames[0]!, frames[frames.length - 1]!];
  return posts
    .filter((p) => p.line === high.id)
    .map((p): TieGeometry => {
      const other = posts.find((o) => o.line === low.id && o.xIn === p.xIn)!;
      return {
        id: `tie-${p.label}`,
        label: `tie ${p.label} ${other.label}`,
        ends: 'between',
        fromPostId: p.id,
        toPostId: other.id,
        xIn: p.xIn,
        fromYIn: p.yIn,
        toYIn: other.yIn,
        axisZIn: Math.min(p.axisZIn, other.axisZIn) - 14,
        stick: round('size-tie', 8, 7, other.yIn - p.yIn),
      };
    });
}

function acrossBraces(posts: readonly PostGeometry[], ties: readonly TieGeometry[]): readonly BraceGeometry[] {
  return ties.flatMap((tie) =>
    [tie.fromPostId, tie.toPostId].map((postId, i): BraceGeometry => {
      const post = posts.find((p) => p.id === postId)!;
      const side = i === 0 ? 1 : -1;
      const leg = 24;
      return {
        id: `brace-across-${post.label}`,
        label: `brace ${post.label} across`,
        postId,
        plane: 'across',
        toId: tie.id,
        side: side > 0 ? 'plus' : 'minus',
        runIn: leg,
        dropIn: leg,
        phiDeg: 45,
        lengthIn: leg * Math.SQRT2,
        visibleLengthIn: leg,
        postPoint: { xIn: post.xIn, yIn: post.yIn, zIn: tie.axisZIn - leg },
        topPoint: { xIn: post.xIn, yIn: post.yIn + side * leg, zIn: tie.axisZIn },
        postDiameterIn: 9,
        topDiameterIn: 7.5,
        stick: round('size-brace', 5.5, 5, leg * Math.SQRT2),
        ends: { post: { kind: 'housed', depthIn: 0.75 }, top: { kind: 'housed', depthIn: 0.75 } },
      };
    }),
  );
}

const RAFTER = { breadth: 2, depth: 8, seatCut: 0.75 } as const;
const PURLIN = { breadth: 3.5, depth: 1.5 } as const;

function planeOf(
  c: SampleChoice,
  lines: readonly LineGeometry[],
  slopeDeg: number,
  fromX: number,
  toX: number,
): PlaneGeometry {
  const cos = Math.cos((slopeDeg * Math.PI) / 180);
  const above = -RAFTER.seatCut + (RAFTER.depth + PURLIN.depth) / cos;
  const highPast = c.onWall ? 0 : ROOF_PAST_IN;
  const high = lines[0]!;
  const low = lines[lines.length - 1]!;
  const slope = c.risePer12 / 12;
  return {
    id: 'plane',
    label: 'roof',
    onLines: lines.map((l) => l.id),
    lineYIn: lines.map((l) => l.yIn),
    risePer12: c.risePer12,
    slopeDeg,
    fromXIn: fromX - 2,
    toXIn: toX + 2,
    highYIn: high.yIn - highPast,
    lowYIn: low.yIn + ROOF_PAST_IN,
    downY: 1,
    highZIn: high.bearingZIn + above + slope * highPast,
    lowZIn: low.bearingZIn + above - slope * ROOF_PAST_IN,
    runIn: low.yIn - high.yIn + highPast + ROOF_PAST_IN,
  };
}

function raftersOf(
  c: SampleChoice,
  lines: readonly LineGeometry[],
  slopeDeg: number,
  fromX: number,
  toX: number,
): readonly RafterGeometry[] {
  const eaveYIn = lines[lines.length - 1]!.yIn + ROOF_PAST_IN - 1.5;
  const runIn = eaveYIn - lines[0]!.yIn + (c.onWall ? 0 : ROOF_PAST_IN);
  const count = Math.max(2, Math.floor((toX - fromX - 4) / c.rafterSpacingIn) + 1);
  return Array.from({ length: count }, (_, i): RafterGeometry => ({
    id: `rafter-${i + 1}`,
    label: `rafter ${i + 1}`,
    plane: 'plane',
    xIn: fromX + 2 + i * c.rafterSpacingIn,
    tributaryWidthIn: c.rafterSpacingIn,
    tributaryFromXIn: 0,
    tributaryToXIn: 0,
    spacingIn: c.rafterSpacingIn,
    runIn,
    supports: lines.toReversed().map((l) => ({ line: l.id, atIn: eaveYIn - l.yIn, yIn: l.yIn, zIn: l.bearingZIn })),
    slopeDeg,
    eaveYIn,
    downY: 1,
    stick: sawn(RAFTER.breadth, RAFTER.depth),
    seatCutIn: RAFTER.seatCut,
    blocked: true,
    continuous: false,
  }));
}

function purlinsOf(
  c: SampleChoice,
  slopeDeg: number,
  fromX: number,
  toX: number,
  runIn: number,
): readonly PurlinGeometry[] {
  const length = (runIn - (c.onWall ? ROOF_PAST_IN : 0)) / Math.cos((slopeDeg * Math.PI) / 180);
  const count = Math.floor((length - 6) / 26) + 1;
  return Array.from({ length: count }, (_, i): PurlinGeometry => ({
    id: `purlin-${i + 1}`,
    label: `purlin ${i + 1}`,
    plane: 'plane',
    upSlopeIn: 3 + i * 26,
    tributaryFromIn: i === 0 ? 0 : 3 + i * 26 - 13,
    tributaryWidthIn: 26,
    slopeDeg,
    fromXIn: fromX - 2,
    toXIn: toX + 2,
    rafterXIn: [],
    rafterIds: [],
    stick: sawn(PURLIN.breadth, PURLIN.depth),
  }));
}
