/** Feet, inches and quarters, for the drawings' tests only. */
export function showFeet(inches: number): string {
  const quarters = Math.round(inches * 4);
  const feet = Math.floor(quarters / 48);
  const whole = Math.floor((quarters - feet * 48) / 4);
  const rest = ['', '-1/4', '-1/2', '-3/4'][quarters % 4] ?? '';
  return feet > 0 ? `${feet}' ${whole}${rest}"` : `${whole}${rest}"`;
}
