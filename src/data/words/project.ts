/** What is said of a project file or of a field that a person typed: what, got, allowed, what to do next. */
export const PROJECT_MESSAGES = {
  // The file as a whole
  notJson:
    'This file is not a shelter project: it cannot be read as JSON ({detail}). Choose a file that ends in .shelter.json.',
  fileEmpty: 'This file is empty. Choose a file that ends in .shelter.json.',
  fileCutOff:
    'This file is cut off: it ends after {length} characters, in the middle of the project. Copy it again from where it was saved.',
  fileTooLarge:
    'This file is {got} long; a shelter project is at most {limit}. Choose a file that ends in .shelter.json.',
  notAnObject:
    'A shelter project is one object in braces, but this is {got}. Choose a file that ends in .shelter.json.',
  cannotBeRead: 'This project cannot be read ({detail}). Open the last saved file instead.',
  tooDeep:
    'The values here are nested deeper than {limit} levels, deeper than any shelter project. Choose a file that was saved by this workbench.',
  tooManyValues:
    'This holds more than {limit} values, more than any shelter project. Choose a file that was saved by this workbench.',
  forbiddenKey: 'The name “{key}” may not stand in a project file. Remove it.',
  notPlainData: 'Here stands a {got}, which no file can hold. Write a number, a text, a list or an object.',
  notFiniteNumber: 'Here stands {got}, which is not a number that can be reckoned with. Write a plain number.',
  versionMissing:
    'This does not look like a shelter: the file does not say its formatVersion. Add "formatVersion": {newest} if it was written by hand.',
  versionUnknown: 'The formatVersion is {got}; there is no such version. This workbench reads 1 to {newest}.',
  versionNewer:
    'The file has formatVersion {got}, but this workbench reads only up to {newest}. Open it with a newer workbench.',
  migrated: 'The file was written in format version {from} and was carried over to version {to}. Save it to keep that.',
  filledIn: 'The file leaves out {fields}. They were taken as empty.',
  moreFaults: 'There are {count} more faults. Mend those listed first, then open the file again.',

  // One field, by its shape
  missingField: 'The field “{field}” is missing. Add it ({allowed}), or null where it is not given yet and may be so.',
  unknownKey: 'The field “{key}” is not known here. Check its spelling or remove it; notes of your own go into extras.',
  wrongType: 'Here stands {got}, but it must be {allowed}. Write {allowed}.',
  notWhole: 'Here stands {got}, but it must be a whole number. Round it.',
  notAllowed: 'Here stands {got}; allowed are {allowed}. Choose one of these.',
  tooBig: 'Here stands {got}; the most that is allowed is {most}. Check the unit that the name of the field ends in.',
  tooSmall:
    'Here stands {got}; the least that is allowed is {least}. Check the unit that the name of the field ends in.',
  notAbove: 'Here stands {got}; it must be above {least}. Write a larger number.',
  textTooLong: 'This text has {got} characters; at most {most} fit on the check sheet. Shorten it.',
  textTooShort: 'This text has {got} characters; it needs at least {least}. Write it out.',
  listTooLong: 'This list has {got} entries; at most {most} are allowed. Remove some.',
  listTooShort: 'This list has {got} entries; it needs at least {least}. Add what is missing.',
  badId:
    'The id {got} cannot be used. Begin with a letter or digit, then letters, digits, points, hyphens, underscores.',
  badDate: 'Here stands {got}, which is not a day of the calendar. Write year, month, day like 2026-05-11.',
  badJointKey: 'The joint {got} cannot be read. Write its kind and its members, like braceTop/brace-1.',

  // Ids and references
  idTwice: 'The id “{id}” is used twice in this file, first at {other}. Give one of them another id.',
  idReserved: 'The id “{id}” has a meaning of its own in the file. Give it another id.',
  jointTwice: 'The joint “{id}” is listed twice, first at {other}. Remove one of them.',
  unknownReference: 'Here stands “{id}”, which is not {of} of this file. Name {of} that exists, or add it.',
  groupOfOtherRole:
    'The group “{group}” is for members of role {got}, but this member is a {role}. Name a group of role {role}.',

  // Hardware
  moreRowsThanFasteners: 'There are {rows} rows but only {count} fasteners. Write fewer rows.',
  washerUnderShank: 'The washer is {washerIn} in across, no wider than the shank of {diameterIn} in. Take a wider one.',

  // Roof
  lineUnderNoRoof: 'No roof plane lies on line {line}. Let a plane rest on it or remove the line.',
  roofWithoutHeight:
    'None of the lines {lines} carries a height. Give one of them a height; the others follow from the slope.',
  roofWithTwoHeights:
    'Line {line} carries a height, but so does {others}, and the slope ties them together. Keep one and set the others to null.',
  roofDoesNotClose:
    'The slopes of the roof planes disagree by {offIn} in on the height of line {line}. Change the rise of one plane or move a line.',
  linesNotInOrder:
    'The lines of plane {plane} must follow one another down the slope, in one direction, but they stand at y = {ys} in. List them from high to low.',
  planeOnOneLine:
    'Roof plane {plane} rests on line {line} alone. Rafters that lean on one another push the eaves outward, and that thrust is not in this method. Name a ridge line with posts of its own, or a ledger, as its high line.',
  planePastRidge:
    'Two roof planes meet over line {line}, so neither can reach {highOverhangIn} in past it. Set the overhang at the high edge to 0.',
  endsBeforeStart: 'The end at {toXIn} in must lie beyond the start at {fromXIn} in. Move one of them.',
  planeWithoutRafters: 'Roof plane {plane} has no rafters, so nothing carries its load. Add rafters.',
  planeWithoutPurlins:
    'The covering of plane {plane} is said to lie on purlins, but there are none. Add purlins or lay the covering on the rafters.',
  rafterPastCovering:
    '{rafter} stands at {xIn} in, past the covering, which runs from {fromXIn} to {toXIn} in. Move the rafter or the edge.',
  rafterPastLine:
    '{rafter} at {xIn} in passes the end of what carries it on line {line}, which runs from {fromXIn} to {toXIn} in. Move the rafter or make the beam longer.',
  purlinPastCovering:
    '{purlin} lies {upSlopeIn} in up the slope, past the high edge of the covering at {mostIn} in. Move it down.',
  atSamePlace: '{member} lies in the same place as {other}. Move or remove one of them.',

  // Logs
  stationsNotAscending:
    'This station at {got} in from the butt must lie beyond the one before it at {beforeIn} in. Put the stations in order from butt to tip.',
  trimmedAway: 'The ends trimmed off {log} leave nothing of it. Trim less.',
  barkTooThick:
    'Bark of {barkIn} in on both sides leaves nothing of a log of {thinnestIn} in. Check the thickness of the bark.',
  stretchPastLog:
    '{member} takes {log} from {startIn} to {endIn} in from the butt, but it can be used only from {fromIn} to {toIn} in. Start nearer the butt, shorten the member, add a station or choose a longer log.',
  logUsedTwice:
    '{member} and {other} take the same stretch of {log}, which is one stem. It is free from {freeFromIn} in from the butt on: start there or choose another log.',

  // Frame lines
  lineWithoutBeam: 'Frame line {line} has no beam. Add a beam or remove the line.',
  lineWithoutPost: 'Frame line {line} has no post. Add a post or remove the line.',
  beamsOverlap:
    'Beam {beam} starts at {fromXIn} in, before {other} ends at {endIn} in. Two beams of a line may only meet, over a post.',
  beamsApart:
    'Between the end of {other} at {endIn} in and the start of {beam} at {fromXIn} in there is no beam. Let them meet over a post.',
  beamsMeetOffPost:
    'Beams {other} and {beam} meet at {fromXIn} in, where no post stands. Let them meet on the axis of a post.',
  postsTooClose:
    'Posts {other} and {post} stand {apartIn} in apart. Their axes must be farther apart than their diameters ({leastIn} in). Move one of them.',
  bracePastBeam:
    '{brace} would end at {endIn} in, past what it braces, which runs from {fromIn} to {toIn} in. Make the run shorter or turn the brace to the other side.',
  braceOffPost:
    '{brace} is to run to {to}, which does not pass post {post}: it lies {offIn} in beside it or ends short of it; at most {mostIn} in are allowed. Move it to the post or brace to another log.',
  tieAlongLine:
    '{tie} runs between {from} and {to}, which stand on the same line. A tie joins posts of different lines.',
  tieNotSquare:
    '{tie} runs between {from} and {to}, which stand {offIn} in out of square; at most {mostIn} in are allowed. Move one of the posts.',

  // Surroundings, sway, own loads, typed values
  ledgerWithoutBuilding:
    'Line {line} is a ledger, but no neighbouring building is said to carry it. Describe the building under surroundings and name this ledger there.',
  sideClosedTwice: 'The side {side} is closed twice, first in entry {first}. Keep one of them.',
  noneBesideOthers:
    'Nothing is said to hold the shelter {way}, and beside it something else is named. Remove the entry “none” or the others.',
  heldTwice: '{id} is held {way} twice. Keep one of the two systems.',
  loadOffMember:
    'The load {load} at {atIn} in does not lie on {on}, which runs from {fromIn} to {toIn} in. Move the load.',
  loadOnRole:
    'The load {load} hangs on a {role}, which cannot be reckoned here. Hang it on a beam, a post, a rafter or a purlin.',
  cutOffMember:
    'The cut {cut} at {centreIn} in does not lie on {member}, which runs from {fromIn} to {toIn} in. Move the cut.',
  insteadTwice: 'The value {what} is typed twice for the same thing, first in entry {first}. Keep one of them.',
  heavyBelowLight:
    'The heavy weight {heavy} is below the light weight {light}. Gravity takes the heavy one: swap them.',
} as const;
