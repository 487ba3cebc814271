import type { OwnLoad } from '../project/model.ts';
import { emptyLineCase, type DeadPiece, type LineArrival, type LineCase } from './cases.ts';
import type { LineSetting } from './line-setting.ts';
import { message } from '../message.ts';
import { ownCase, ownOfKind, ownSets, type OwnSet } from './own-loads.ts';
import { ownPatches, patchLoads } from './own-on-rafters.ts';
import { plumbReactions } from './rafter-reactions.ts';

interface Unit {
  readonly down: number;
  readonly along: number;
}
const UNITS: Readonly<Record<OwnLoad['direction'], Unit>> = {
  down: { down: 1, along: 0 },
  up: { down: -1, along: 0 },
  xPlus: { down: 0, along: 1 },
  xMinus: { down: 0, along: -1 },
  yPlus: { down: 0, along: 0 },
  yMinus: { down: 0, along: 0 },
};

/** Own loads as they arrive on the line: at places of its beams, on its posts and through its rafters. */
function ownOnLine(c: LineSetting, caseId: string, loads: readonly OwnLoad[]): LineCase {
  return {
    ...emptyLineCase(caseId),
    points: [...loads.flatMap((own) => onBeams(c, own)), ...throughRafters(c, loads)],
    atPosts: loads.flatMap((own) => onPosts(c, own)),
  };
}

function onBeams(c: LineSetting, own: OwnLoad): LineCase['points'] {
  const { where } = own;
  const { down, along } = UNITS[own.direction];
  const at = (xIn: number, lb: number) => ({ xIn, downLb: lb * down, alongLb: lb * along });
  if (where.on === 'line' && where.line === c.line.id) return [at(where.xIn, where.lb)];
  if (where.on === 'stretch' && where.line === c.line.id)
    return spread(where.fromXIn, where.toXIn, where.plf).map((p) => at(p.xIn, p.lb));
  const isOnBeam = where.on === 'member' && c.shelter.beams.some((b) => b.id === where.member && b.line === c.line.id);
  return isOnBeam ? [at(where.atIn, where.lb)] : [];
}

/** A stretch of load as points no farther apart than a foot: what hangs on rafters and hooks anyway. */
function spread(
  fromXIn: number,
  toXIn: number,
  plfLoad: number,
): readonly { readonly xIn: number; readonly lb: number }[] {
  const n = Math.max(1, Math.ceil((toXIn - fromXIn) / 12));
  const lb = (plfLoad * (toXIn - fromXIn)) / 12 / n;
  return Array.from({ length: n }, (_, i) => ({ xIn: fromXIn + ((toXIn - fromXIn) * (i + 0.5)) / n, lb }));
}

/** A load on a post acts on its axis, at most at the axis of the beam. */
function onPosts(c: LineSetting, own: OwnLoad): LineCase['atPosts'] {
  const { where } = own;
  const post = where.on === 'member' ? c.posts.find((p) => p.id === where.member) : undefined;
  if (where.on !== 'member' || !post) return [];
  const { down, along } = UNITS[own.direction];
  const zIn = Math.min(post.footZIn + where.atIn, post.axisZIn);
  return [{ postId: post.id, zIn, downLb: where.lb * down, alongLb: where.lb * along }];
}

function throughRafters(c: LineSetting, loads: readonly OwnLoad[]): LineCase['points'] {
  return c.rafters.flatMap((rafter) => {
    const patches = ownPatches(c.shelter, rafter, loads);
    if (patches.length === 0) return [];
    const run = c.runOf(rafter);
    const reactions = plumbReactions(run, patchLoads(run, patches));
    const downLb = reactions.reduce((sum, r) => (r.line === c.line.id ? sum + r.downLb : sum), 0);
    return [{ xIn: rafter.xIn, downLb, alongLb: 0 }];
  });
}

const isEmpty = ({ points, atPosts }: LineCase): boolean => points.length + atPosts.length === 0;

const alongOf = ({ points, atPosts }: LineCase): number =>
  [...points, ...atPosts].reduce((sum, p) => sum + p.alongLb, 0);

/** Downward sum of a case of own loads [lb]. */
const downOf = ({ points, atPosts }: LineCase): number => [...points, ...atPosts].reduce((sum, p) => sum + p.downLb, 0);

/** Own dead load, each by itself; what may be taken away holds nothing down. */
export function ownDeadPieces(c: LineSetting): readonly DeadPiece[] {
  return ownOfKind(c.project, c.shelter, 'dead').flatMap((own): DeadPiece[] => {
    const heavy = ownOnLine(c, `dead-heavy-own-${own.id}`, [own]);
    if (isEmpty(heavy)) return [];
    const id = `dead-light-own-${own.id}`;
    const light = own.removable ? emptyLineCase(id) : { ...heavy, caseId: id };
    return [{ piece: `own-${own.id}`, heavy, light }];
  });
}

/** Kinds of own load that come and go, each in every way in which it may act at one time. */
export function ownArrivals(c: LineSetting, ofRoof: readonly LineArrival[]): readonly LineArrival[] {
  return [...liveArrivals(c), ...snowArrivals(c, ofRoof), ...windArrivals(c, ofRoof)];
}

const liveArrivals = (c: LineSetting): readonly LineArrival[] => arrivalsOf(c, 'live').map(withoutSet);

/** Snow that the person adds lies on the balanced snow of the site. */
function snowArrivals(c: LineSetting, ofRoof: readonly LineArrival[]): readonly LineArrival[] {
  const balanced = ofRoof.find((a) => a.loadCase.id === 'snow');
  return arrivalsOf(c, 'snow').map(({ loadCase, lineCase, alongLb }) => ({
    loadCase,
    lineCase: balanced ? together(loadCase.id, balanced.lineCase, lineCase) : lineCase,
    alongLb,
  }));
}

/** Wind that the person adds, strength level: alone, and beside every wind of the site that does not blow against it. */
function windArrivals(c: LineSetting, ofRoof: readonly LineArrival[]): readonly LineArrival[] {
  const own = arrivalsOf(c, 'wind');
  const beside = ofRoof
    .filter((a) => a.loadCase.kind === 'wind')
    .flatMap((site) =>
      own.flatMap((added): readonly LineArrival[] => {
        const siteAlong = Math.sign(site.alongLb);
        if (added.set.along !== 0 && added.set.along !== siteAlong) return [];
        const id = `${site.loadCase.id}-own-${added.set.name}`;
        const words = message('caseWindWithOwn', { way: added.set.words });
        return [
          {
            loadCase: { ...site.loadCase, id, words, swaysAlong: siteAlong !== 0 },
            lineCase: together(id, site.lineCase, added.lineCase),
            alongLb: site.alongLb + added.alongLb,
          },
        ];
      }),
    );
  return [...own.map(withoutSet), ...beside];
}

interface OwnArrival extends LineArrival {
  readonly set: OwnSet;
}

const withoutSet = ({ loadCase, lineCase, alongLb }: OwnArrival): LineArrival => ({ loadCase, lineCase, alongLb });

function arrivalsOf(c: LineSetting, kind: 'live' | 'snow' | 'wind'): readonly OwnArrival[] {
  return ownSets(ownOfKind(c.project, c.shelter, kind)).flatMap((set) => {
    const loadCase = ownCase(kind, set);
    const lineCase = ownOnLine(c, loadCase.id, set.loads);
    return isEmpty(lineCase) ? [] : [{ set, loadCase, lineCase, alongLb: alongOf(lineCase) }];
  });
}

/** Two cases of a line that act at one time. */
const together = (id: string, a: LineCase, b: LineCase): LineCase => ({
  caseId: id,
  points: [...a.points, ...b.points],
  onBeam: a.onBeam.length > 0 ? a.onBeam : b.onBeam,
  onPosts: [...a.onPosts, ...b.onPosts],
  onBraces: [...a.onBraces, ...b.onBraces],
  atPosts: [...a.atPosts, ...b.atPosts],
});

/** What hangs on the line for ever, which an earthquake shakes like dead load [lb]. */
export function hungForEver(c: LineSetting): number {
  const lasting = ownOfKind(c.project, c.shelter, 'live').filter(
    (own) => own.duration === 'permanent' && own.direction === 'down',
  );
  return downOf(ownOnLine(c, 'hung', lasting));
}
