/** How names are spelled in a project file; apart from the schema, for those who only follow paths through a project. */
export const ID_PATTERN = /^[A-Za-z0-9][A-Za-z0-9._-]*$/;
/** `kind/upper` or `kind/upper/lower`, see `jointKey`. */
export const JOINT_KEY_PATTERN = /^[A-Za-z]+(\/[A-Za-z0-9][A-Za-z0-9._-]*){1,2}$/;
