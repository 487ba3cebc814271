import { clause, remembered, type ClauseRef } from './sources.ts';

/** Links of the load path, from roof to ground, then sideways: the order in which everything is read. */
export const LINKS = [
  'site',
  'sheet',
  'purlin',
  'rafter',
  'ledger',
  'strip',
  'beam',
  'brace',
  'post',
  'pier',
  'swayAlong',
  'swayAcross',
] as const;
export type Link = (typeof LINKS)[number];

export interface Rule {
  readonly link: Link;
  /** what is checked, as it reads on screen and sheet */
  readonly words: string;
  readonly clause: ClauseRef;
}

const rule = (link: Link, words: string, where: ClauseRef): Rule => ({ link, words, clause: where });

/** Every rule that can make a row. The id names formula, fixture, test title and sheet row. */
export const RULES = {
  'site.value': rule('site', 'Value of the site', clause('OWN', 'a guess is not a given value')),
  'site.edition': rule('site', 'Edition of the load standard', clause('OWN', 'only ASCE 7-16 is offered')),
  'site.driftAndSliding': rule('site', 'Drift and sliding snow from the higher roof', clause('ASCE7', '7.7, 7.9')),
  'site.overhangIce': rule('site', 'Ice on the overhangs of a warm roof', clause('ASCE7', '7.4.5')),
  'site.roofForm': rule('site', 'Wind on this form of roof', clause('ASCE7', '27.3.2')),
  'site.ponding': rule('site', 'Standing water on the roof', remembered('ASCE7', '8.4')),
  'site.walledSides': rule('site', 'Wind on a wall that the frame holds', clause('ASCE7', '27.3.1')),
  'site.ownLoad': rule('site', 'Own load', clause('OWN', 'hoists, swings and animals need a licensed designer')),
  'site.seismic': rule('site', 'Earthquake', remembered('ASCE7', '11.6, 12.8')),
  'log.knots': rule('site', 'Knots measured on the log', clause('OWN', 'not looked at: stated lowest strength ratio')),
  'log.limits': rule('site', 'Log within the method', clause('OWN', 'spiral, knots, shakes')),
  'sheet.span': rule('sheet', 'Sheet span between purlins', clause('OWN', 'rated span from its maker')),
  'sheet.uplift': rule('sheet', 'Sheet screws, pull on each foot of row', clause('ASCE7', '30.8')),
  'purlin.bending': rule('purlin', 'Bending', clause('NDS', '3.3')),
  'purlin.shear': rule('purlin', 'Shear', clause('NDS', '3.4')),
  'purlin.sag': rule('purlin', 'Sag', clause('IBC', 'Table 1604.3')),
  'purlin.tie': rule('purlin', 'Purlin to rafter, pull', clause('ASCE7', '30.8')),
  'rafter.bending': rule('rafter', 'Bending', clause('NDS', '3.3')),
  'rafter.shear': rule('rafter', 'Shear', clause('NDS', '3.4')),
  'rafter.sag': rule('rafter', 'Sag', clause('IBC', 'Table 1604.3')),
  'rafter.sagLongTerm': rule('rafter', 'Sag after years', clause('NDS', '3.5.2')),
  'rafter.seat': rule('rafter', 'Bearing on the line', clause('NDS', '3.10.2')),
  'rafter.tie': rule('rafter', 'Rafter tie, pull', clause('ASCE7', '30.8')),
  'rafter.tieAcross': rule('rafter', 'Rafter tie, push down or up the slope', clause('ASCE7', '30.8')),
  'rafter.tieTogether': rule(
    'rafter',
    'Rafter tie, pull and level force together',
    clause('OWN', 'one straight sum of shares'),
  ),
  'ledger.building': rule('ledger', 'The building takes the ledger', clause('OWN', 'name and date of who says so')),
  'ledger.fixing': rule('ledger', 'Ledger to wall, all directions', clause('OWN', 'capacity must be typed')),
  'strip.tie': rule('strip', 'Strip to beam, pull', clause('ASCE7', '2.4.1')),
  'strip.across': rule('strip', 'Strip to beam, across the line', clause('ASCE7', '2.4.1')),
  'strip.together': rule(
    'strip',
    'Strip to beam, pull and level force together',
    clause('OWN', 'one straight sum of shares'),
  ),
  'beam.bending': rule('beam', 'Bending', clause('NDS', '3.3')),
  'beam.shear': rule('beam', 'Shear', clause('NDS', '3.4.2')),
  'beam.endNotch': rule('beam', 'Shear at the seat cut', remembered('NDS', '3.4.3.2')),
  'beam.cuts': rule('beam', 'Depth and side of cuts', remembered('NDS', '3.2.3, 4.4.3')),
  'beam.seat': rule('beam', 'Seat, across the grain', clause('NDS', '3.10.2')),
  'beam.sag': rule('beam', 'Sag', clause('IBC', 'Table 1604.3')),
  'beam.sagLongTerm': rule('beam', 'Sag after years', clause('NDS', '3.5.2')),
  'beam.tie': rule('beam', 'Beam to post, pull', clause('ASCE7', '2.4.1')),
  'beam.tieAlong': rule('beam', 'Beam to post, along the line', clause('OWN', 'hinge force of the frame')),
  'beam.tieTogether': rule('beam', 'Beam to post, pull and push together', clause('OWN', 'one straight sum of shares')),
  'beam.tieAcross': rule('beam', 'Beam to post, across the line', clause('ASCE7', '27.3.2, 29.4')),
  'beam.splice': rule('beam', 'Beam splice', clause('OWN', 'tie across the splice')),
  'brace.push': rule('brace', 'Push with buckling', clause('NDS', '3.7')),
  'brace.crushing': rule('brace', 'Crushing at the smallest section', clause('NDS', '3.7.2')),
  'brace.pull': rule('brace', 'Pull', clause('NDS', '3.8')),
  'brace.slender': rule('brace', 'Slenderness', clause('NDS', '3.7.1.4')),
  'brace.bearing': rule('brace', 'End bearing square to the log', clause('NDS', '3.10.3')),
  'brace.shoulder': rule('brace', 'Shoulder along the log', clause('NDS', '3.10.3')),
  'brace.shoulderShear': rule('brace', 'Shear of the log beyond the shoulder', remembered('NDS', 'App. E.3')),
  'brace.tie': rule('brace', 'Brace joint, pull', clause('OWN', 'pull must be given')),
  'brace.fit': rule('brace', 'Brace fits', clause('OWN', 'working points')),
  'post.slender': rule('post', 'Slenderness', clause('NDS', '3.7.1.4')),
  'post.push': rule('post', 'Push with buckling', clause('NDS', '3.7')),
  'post.crushing': rule('post', 'Crushing at the thinnest place', clause('NDS', '3.7.2')),
  'post.endGrain': rule('post', 'End grain under the beam', clause('NDS', '3.10.1')),
  'post.bending': rule('post', 'Push and bending together', clause('NDS', '3.9.2')),
  'post.tension': rule('post', 'Pull and bending together', clause('NDS', '3.9.1')),
  'post.housing': rule('post', 'Housing for a brace', clause('OWN', 'at most one sixth of the post')),
  'post.foot': rule('post', 'Post to pier, pull', clause('ASCE7', '2.4.1')),
  'post.footAlong': rule('post', 'Post to pier, sideways', clause('OWN', 'foot force of the frame')),
  'post.footTogether': rule(
    'post',
    'Post to pier, pull and push together',
    clause('OWN', 'one straight sum of shares'),
  ),
  'post.footTurning': rule('post', 'Post to pier, turning', clause('OWN', 'foot moment of the frame')),
  'pier.top': rule('pier', 'Top of the pier', clause('OWN', 'measured with a level')),
  'pier.bearing': rule('pier', 'Bearing on soil', clause('IBC', '1806')),
  'pier.sideways': rule('pier', 'Held sideways by the soil', clause('IBC', '1807.3.2.1')),
  'pier.uplift': rule('pier', 'Weight against uplift', clause('ASCE7', '2.4.1')),
  'pier.pad': rule('pier', 'Pad without steel', clause('OWN', 'no farther out than thick')),
  'pier.frost': rule('pier', 'Depth in the ground, below frost', remembered('IBC', '1809.4, 1809.5')),
  'pier.embedded': rule('pier', 'Embedded post', clause('IBC', '1807.3')),
  'sway.along': rule('swayAlong', 'Held along the line', clause('OWN', 'lateral system named')),
  'sway.alongRated': rule('swayAlong', 'Rated system along', clause('OWN', 'rating typed in')),
  'sway.across': rule('swayAcross', 'Held across', clause('OWN', 'lateral system named')),
  'sway.acrossRated': rule('swayAcross', 'Rated system across', clause('OWN', 'rating typed in')),
  'frame.stands': rule('swayAlong', 'The line stands', clause('OWN', 'no mechanism')),
  'frame.balance': rule('swayAlong', 'Loads equal reactions', clause('MECHANICS', 'equilibrium')),
} as const satisfies Record<string, Rule>;

export type RuleId = keyof typeof RULES;
