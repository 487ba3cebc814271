import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { namesOf } from '../../../src/ui/cord/places.ts';
import { marksAlong, pieceName } from '../../../src/ui/log/piece-words.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { tiedShed } from '../../support/tied-shed.ts';

const demo = soundProject(exampleText('firewood-shed'));
const { shelter } = placeShelter(demo);
const names = namesOf({ shelter, logs: [] });
const first = (role: string) => demo.members.find((member) => member.role === role)!;

describe('a piece on the log page', () => {
  it('says what it is, once', () => {
    expect(['beam', 'post', 'brace', 'rafter', 'purlin'].map((role) => pieceName(names, first(role)))).toEqual([
      'beam A',
      'post A1',
      'brace A1+',
      'rafter 1',
      'purlin 1',
    ]);
  });

  // file: posts of line A at 0 and 156, the beam from -30; a brace lands on its post where its working point is
  it('is marked where other pieces meet it', () => {
    const beam = shelter.beams.find(({ id }) => id === first('beam').id)!;
    expect(marksAlong(shelter, beam.id)).toEqual([
      { label: 'A1', atIn: 30 },
      { label: 'A2', atIn: 186 },
    ]);
    const post = shelter.posts.find(({ id }) => id === first('post').id)!;
    const [mark] = marksAlong(shelter, post.id);
    const brace = shelter.braces.find(({ postId }) => postId === post.id)!;
    expect(mark?.label).toBe('A1+');
    expect(mark?.atIn).toBeCloseTo(brace.postPoint.zIn - post.woodFromZIn, 1);
    const rafter = shelter.rafters[0]!;
    const cos = Math.cos((rafter.slopeDeg * Math.PI) / 180);
    expect(marksAlong(shelter, rafter.id).map(({ atIn }) => atIn * cos)).toEqual(
      rafter.supports.map(({ atIn }) => expect.closeTo(atIn, 6)),
    );
  });

  it('is marked with both its posts where it is a tie log', () => {
    const tied = placeShelter(tiedShed()).shelter;
    const tie = tied.ties[0]!;
    const marks = marksAlong(tied, tie.id);
    expect(marks.map(({ label }) => label)).toEqual(['A1', 'B1']);
    expect(marks.map(({ atIn }) => atIn)).toEqual([0, tie.toYIn - tie.fromYIn]);
  });
});
