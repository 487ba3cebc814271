/** Why a check stopped, departed or carries a caution. */
export const CHECK_MESSAGES = {
  notFinite: 'A number that this check needs could not be computed.',
} as const;
