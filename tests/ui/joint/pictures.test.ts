import { describe, expect, it } from 'vitest';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { Capacity, Project } from '../../../src/engine/project/model.ts';
import type { Box, Point } from '../../../src/ui/drawing/paper.ts';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import type { Picture } from '../../../src/ui/drawing/sketch.ts';
import { jointViews } from '../../../src/ui/joint/joint-views.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { showFeet } from '../drawing/show.ts';
import { eachKind, HARDWARE, ofKind, placed } from './hardware.ts';

const shelters: readonly (readonly [string, Project])[] = [
  ...EXAMPLES.map((name) => [name, soundProject(exampleText(name))] as const),
  ['everything given', soundProject(everythingGivenText())],
  ['ties', tiedShed()],
  ['ties beside', tiedShed({ ends: 'beside' })],
  ['splice', plainShed({ beamEndsIn: [-24, 72, 168], postXsIn: [0, 72, 144], pierTopsIn: [6, 6, 6], bracesAt: [] })],
];
/** A phone's column, a column of the cord, half of a wide one. */
const WIDTHS = [290, 358, 420] as const;

/** Straight pieces of a path of the drawing: moves, lines, closing, and circles of two half arcs. */
function piecesOf(d: string): readonly (readonly [Point, Point])[] {
  const pieces: (readonly [Point, Point])[] = [];
  let [at, start]: Point[] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  for (const [, letter, rest] of d.matchAll(/([MLaZ])([^MLaZ]*)/g)) {
    const n = rest!.trim().split(/[ ,]+/).map(Number);
    if (letter === 'M') at = start = { x: n[0]!, y: n[1]! };
    else if (letter === 'L') {
      const to = { x: n[0]!, y: n[1]! };
      pieces.push([at!, to]);
      at = to;
    } else if (letter === 'Z') pieces.push([at!, start!]);
    else {
      const half = n[5]! / 2;
      const arc = Array.from({ length: 17 }, (_, i) => ({
        x: at!.x + half - half * Math.cos((i * Math.PI) / 16),
        y: at!.y - half * Math.sin((i * Math.PI) / 16),
      }));
      arc.slice(1).forEach((p, i) => pieces.push([arc[i]!, p]));
      at = { x: at!.x + n[5]!, y: at!.y };
    }
  }
  return pieces;
}

/** A straight piece crosses a box: looked at in small steps, independently of the placing of labels. */
function crosses([a, b]: readonly [Point, Point], { x, y, width, height }: Box): boolean {
  const steps = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y)) + 1;
  for (let i = 0; i <= steps; i++) {
    const p = { x: a.x + ((b.x - a.x) * i) / steps, y: a.y + ((b.y - a.y) * i) / steps };
    if (p.x > x && p.x < x + width && p.y > y && p.y < y + height) return true;
  }
  return false;
}

const overlapping = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

function picturesOf(project: Project, capacityOf: (kind: keyof typeof HARDWARE) => Capacity, width: number) {
  const { shelter } = placeShelter(project);
  return eachKind({ shelter, joints: jointsOf(project, shelter) }).map((joint) => ({
    joint,
    pictures: jointViews(joint, capacityOf(joint.kind), {
      shelter,
      paper: onScreen(width, 260),
      showLength: showFeet,
    }),
  }));
}

function faultsOf({ view, texts, strokes }: Picture): readonly string[] {
  const pieces = strokes.flatMap(({ d }) => piecesOf(d));
  const off = pieces.filter((piece) =>
    piece.some(({ x, y }) => x < -1 || y < -1 || x > view.width + 1 || y > view.height + 1),
  );
  return [
    ...texts.filter((t) => pieces.some((piece) => crosses(piece, t.box))).map((t) => `a line crosses "${t.text}"`),
    ...texts.flatMap((t, i) =>
      texts
        .slice(i + 1)
        .filter((u) => overlapping(t.box, u.box))
        .map((u) => `"${t.text}" lies on "${u.text}"`),
    ),
    ...texts
      .filter(({ box }) => box.x < 0 || box.y < 0 || box.x + box.width > view.width || box.y + box.height > view.height)
      .map((t) => `"${t.text}" is not on the paper`),
    ...(off.length > 0 ? ['a line is not on the paper'] : []),
    ...(view.paper.textSize < 11 ? ['text is too small'] : []),
  ];
}

describe.each(shelters)('every kind of joint of %s', (_, project) => {
  it.each(WIDTHS)('is drawn twice at one scale, its words clear of every line, in a column of %i px', (width) => {
    for (const capacityOf of [(kind: keyof typeof HARDWARE) => HARDWARE[kind], () => null]) {
      for (const { joint, pictures } of picturesOf(project, capacityOf, width)) {
        expect(pictures).toHaveLength(2);
        expect(pictures[0]!.view.scale).toBe(pictures[1]!.view.scale);
        for (const picture of pictures) {
          expect(faultsOf(picture), `${joint.id} ${picture.title}`).toEqual([]);
          expect(picture.strokes.some(({ d }) => d.includes('NaN'))).toBe(false);
        }
      }
    }
  });
});

describe('a joint in words', () => {
  const shed = placed(soundProject(exampleText('firewood-shed')));
  const draw = (kind: keyof typeof HARDWARE, capacity: Capacity): readonly Picture[] =>
    jointViews(ofKind(shed, kind), capacity, {
      shelter: shed.shelter,
      paper: onScreen(358, 260),
      showLength: showFeet,
    });
  const textsOf = (pictures: readonly Picture[]): readonly string[] =>
    pictures.flatMap(({ texts }) => texts.map(({ text }) => text));

  it('says that nothing is given, that contact is all, or who rated it', () => {
    expect(textsOf(draw('beamPost', null))).toContain('nothing given');
    expect(textsOf(draw('beamPost', { kind: 'none' }))).toContain('contact only');
    expect(textsOf(draw('beamPost', HARDWARE.ledgerWall))).toContain('rated: an invented rating');
    expect(textsOf(draw('beamPost', HARDWARE.beamPost))).not.toContain('nothing given');
  });

  it('names both pieces, from where it is looked at, and each direction that is seen', () => {
    const [front, end] = draw('beamPost', null);
    expect(front!.title).toBe('beam A on post A1, from the front');
    expect(end!.title).toBe('beam A on post A1, along the line');
    expect(textsOf([front!])).toEqual(expect.arrayContaining(['beam A', 'post A1', 'pull', 'push', 'along']));
    expect(textsOf([front!])).not.toContain('across');
    expect(textsOf([end!])).toEqual(expect.arrayContaining(['pull', 'push', 'across']));
  });

  it('counts and measures each row of fasteners', () => {
    const [{ description }] = draw('bracePost', HARDWARE.bracePost) as [Picture, Picture];
    expect(description).toContain('A shoulder 1-1/4" deep.');
    expect(description).toMatch(/2 lag screws .* by 10", .* into post A1, .* to its edge/);
  });

  it('says what has no size instead of drawing one', () => {
    const bare = ofKind(shed, 'beamPost');
    const pictures = jointViews({ ...bare, lower: { ...bare.lower, stick: null, shape: null } }, null, {
      shelter: shed.shelter,
      paper: onScreen(358, 260),
      showLength: showFeet,
    });
    expect(textsOf(pictures)).toContain('post A1: size not given');
  });

  it('shows the pier, its stand-off and the rated anchor under a post', () => {
    const texts = textsOf(draw('postFoot', HARDWARE.postFoot));
    expect(texts).toEqual(expect.arrayContaining(['pier', 'stand-off 1"', 'anchor, rated']));
  });
});
