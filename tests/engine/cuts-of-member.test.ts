import { describe, expect, it } from 'vitest';
import { cutsOfMember, shapedEnds } from '../../src/engine/cuts-of-member.ts';
import { placeShelter } from '../../src/engine/geometry/place-shelter.ts';
import type { Cut, Project } from '../../src/engine/project/model.ts';
import { sectionOfMember } from '../../src/engine/section-of-member.ts';
import { bracedShedText, soundProject } from '../support/files.ts';
import { tiedShed } from '../support/tied-shed.ts';

const demo = soundProject(bracedShedText());
const handCut = (member: string, centreIn: number): Cut => ({
  id: 'cut-1',
  member,
  kind: 'notch',
  centreIn,
  lengthIn: 4,
  depthIn: 1,
  angleDeg: 90,
  by: 'hand',
});
const cutsIn = (project: Project, memberId: string) => cutsOfMember(project, placeShelter(project).shelter, memberId);
const { shelter } = placeShelter(demo);
const first = (role: string): string => demo.members.find((member) => member.role === role)!.id;

describe('every cut of a member, from its start', () => {
  // a plumb depth h on a slope: h cos deep, run out h / sin along the slope (right triangle)
  it('has a seat cut over each line of a rafter, plumb at the heel and level from there', () => {
    const rafter = shelter.rafters[0]!;
    const theta = (rafter.slopeDeg * Math.PI) / 180;
    const cuts = cutsIn(demo, rafter.id);
    expect(cuts).toHaveLength(rafter.supports.length);
    cuts.forEach((cut, i) => {
      expect(cut.depthIn).toBeCloseTo(rafter.seatCutIn * Math.cos(theta), 9);
      expect(cut.lengthIn).toBeCloseTo(rafter.seatCutIn / Math.sin(theta), 9);
      // the level part runs from the deepest place to the upper end; its middle lies over the line
      const upper = cut.atIn + cut.lengthIn / 2;
      expect((cut.deepestAtIn! + upper) / 2).toBeCloseTo(rafter.supports[i]!.atIn / Math.cos(theta), 9);
      expect(upper - cut.deepestAtIn!).toBeCloseTo((rafter.seatCutIn / Math.tan(theta)) * Math.cos(theta), 9);
    });
  });

  // file: a place on a post is above its foot, on a purlin x, on a rafter y
  it('puts a cut by hand where the file says on a post, a purlin and a rafter', () => {
    const placed = (member: string, centreIn: number): number => {
      const cuts = cutsIn({ ...demo, cuts: [handCut(member, centreIn)] }, member);
      return cuts.find(({ madeBy }) => madeBy === 'hand')!.atIn;
    };
    expect(placed(first('post'), 30)).toBeCloseTo(30, 9);
    const purlin = shelter.purlins[0]!;
    expect(placed(purlin.id, 40)).toBeCloseTo(40 - purlin.fromXIn, 9);
    const rafter = shelter.rafters[0]!;
    const cos = Math.cos((rafter.slopeDeg * Math.PI) / 180);
    const [support] = rafter.supports;
    expect(placed(rafter.id, support!.yIn)).toBeCloseTo(support!.atIn / cos, 9);
  });

  // tied shed: braces run 24 in. out from the posts of tie-0, let in 1 in.; a place on a tie is y in the file
  it('has the housings of braces across in a tie log, and what is cut into it by hand', () => {
    const tied = tiedShed({ braceTop: 'housed' });
    const tie = placeShelter(tied).shelter.ties.find(({ id }) => id === 'tie-0')!;
    const cuts = cutsIn({ ...tied, cuts: [handCut('tie-0', tie.fromYIn + 40)] }, 'tie-0');
    const lengthIn = tie.toYIn - tie.fromYIn;
    expect(cuts.map(({ madeBy, atIn }) => [madeBy, Math.round(atIn * 1000) / 1000])).toEqual([
      ['brace', 24],
      ['brace', lengthIn - 24],
      ['hand', 40],
    ]);
  });

  it('takes it from the section there, and from no other', () => {
    const post = first('post');
    const project = { ...demo, cuts: [handCut(post, 30)] };
    const at = (atIn: number) => sectionOfMember(project, shelter, post, atIn)!;
    const { diameterIn, section } = at(30);
    // circle less a segment 1 in. deep (plane geometry)
    const R = diameterIn / 2;
    const gone = R * R * Math.acos((R - 1) / R) - (R - 1) * Math.sqrt(2 * R - 1);
    expect(section.areaIn2).toBeCloseTo(Math.PI * R * R - gone, 6);
    expect(at(33).cuts).toEqual([]);
  });
});

describe('the ends of a brace', () => {
  const brace = shelter.braces[0]!;
  const phi = (brace.phiDeg * Math.PI) / 180;

  // the axis meets the floor of a housing t deep where it is R - t from the post's axis: (R - t) / sin phi along it
  it('lie where its axis meets what it is cut to lie on', () => {
    const [lower, upper] = shapedEnds(shelter, brace.id);
    expect(lower!.atIn).toBeCloseTo((brace.postDiameterIn / 2 - brace.ends.post.depthIn) / Math.sin(phi), 9);
    expect(brace.lengthIn - upper!.atIn).toBeCloseTo(brace.topDiameterIn / 2 / Math.cos(phi), 9);
    // saddled above, let in below
    expect([lower!.roundIn, upper!.roundIn]).toEqual([null, brace.topDiameterIn]);
  });

  // a plumb face and a level one, seen along the brace: both edges of the brace reach them at R - t from the axes
  it('run at the slope of the post below and of the beam above', () => {
    const [lower, upper] = shapedEnds(shelter, brace.id);
    const up = 2;
    const along = lower!.atIn + up * lower!.lean;
    expect(along * Math.sin(phi) - up * Math.cos(phi)).toBeCloseTo(lower!.atIn * Math.sin(phi), 9);
    const above = upper!.atIn + up * upper!.lean;
    expect(above * Math.cos(phi) + up * Math.sin(phi)).toBeCloseTo(upper!.atIn * Math.cos(phi), 9);
  });

  it('are not told of posts and beams, which end square', () => {
    expect(shapedEnds(shelter, first('post'))).toEqual([]);
    expect(shapedEnds(shelter, first('beam'))).toEqual([]);
  });
});
