/** Why a shelter cannot be placed as typed: what, got, what to do next. */
export const GEOMETRY_MESSAGES = {
  lineWithoutHeight:
    'Line {line} has no height: no roof plane ties it to a line that carries one. Give it a height or let a roof plane rest on it.',
  postWithoutBeam: 'No beam lies over post {post}. Move the post under the beam or make the beam longer.',
  postHasNoLength:
    'Post {post} would have no length ({lengthIn} in between its foot and the seat). Lower the top of its pier or raise the line.',
  postLogTooShort:
    'Post {post} needs {needIn} in of log but only {haveIn} in are measured. Measure it farther up, choose a longer log, or lower the line.',
  braceMissesItsLog:
    'The {brace} does not meet its log at a run of {runIn} in. Make the run shorter, or the beam or tie longer.',
  braceBelowFoot: 'The {brace} would land below the foot of its post at a drop of {dropIn} in. Make the drop smaller.',
  braceHasNoLength: 'The {brace} would have no length between the surfaces of post and beam. Make run and drop larger.',
  braceLetInPastAxis:
    'The {brace} is let in {depthIn} in, past the middle of its log ({limitIn} in). Let it in less: a housing may take a sixth of a post.',
} as const;
