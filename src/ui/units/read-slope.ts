import { NUMBER, plainMarks, readNumberText, refused, type Reading } from './reading.ts';

const PAIR = new RegExp(String.raw`^(\d+\.?\d*)\s*(?::|/|in|to|on)\s*(\d+\.?\d*)$`);
const WITH_MARK = new RegExp(String.raw`^(${NUMBER})\s*(°|deg|degrees|%|percent|)$`);

/**
 * Roof pitch as rise per 12: `3:12`, `3 in 12`, `3/12`, `3`, `14°`, `25 %`.
 * A fraction is a pair here: `3/12` is three in twelve, not a quarter.
 */
export function readRise(text: string): Reading {
  const got = text.trim();
  const example = '3 in 12';
  const pair = readPair(text, got, example);
  if (!pair.ok) return pair;
  if ('over' in pair) return { ok: true, value: (12 * pair.over) / pair.under };
  if (pair.mark === '') return { ok: true, value: pair.alone };
  if (pair.mark.startsWith('d') || pair.mark === '°') {
    return pair.alone < 90
      ? { ok: true, value: 12 * Math.tan((pair.alone * Math.PI) / 180) }
      : refused('fieldNotRead', { got, example });
  }
  return { ok: true, value: (12 * pair.alone) / 100 };
}

/** Slope of grain as the run to one across: `1 in 14`, `1:14`, `14`. */
export function readGrainSlope(text: string): Reading {
  const got = text.trim();
  const example = '1 in 14';
  const pair = readPair(text, got, example);
  if (!pair.ok) return pair;
  if ('over' in pair) {
    return pair.over > 0 ? { ok: true, value: pair.under / pair.over } : refused('fieldNotRead', { got, example });
  }
  return pair.mark === '' ? { ok: true, value: pair.alone } : refused('fieldNotRead', { got, example });
}

/** A share: `60 %`, `0.6`; a bare number above one is a percentage. */
export function readShare(text: string): Reading {
  const got = text.trim();
  const example = '60 %';
  const plain = plainMarks(text);
  if (plain === '') return refused('fieldEmpty', { example });
  const match = WITH_MARK.exec(plain);
  if (!match || match[2] === '°' || match[2]?.startsWith('d')) return refused('fieldNotRead', { got, example });
  const number = readNumberText(match[1] ?? '', got, example);
  if (!number.ok) return number;
  return { ok: true, value: match[2] === '' && number.value <= 1 ? number.value : number.value / 100 };
}

type Pair =
  | { readonly ok: true; readonly over: number; readonly under: number }
  | { readonly ok: true; readonly alone: number; readonly mark: string }
  | ReturnType<typeof refused>;

function readPair(text: string, got: string, example: string): Pair {
  const plain = plainMarks(text);
  if (plain === '') return refused('fieldEmpty', { example });
  const pair = PAIR.exec(plain);
  if (pair) {
    const [over, under] = [Number(pair[1]), Number(pair[2])];
    return under > 0 ? { ok: true, over, under } : refused('fieldNotRead', { got, example });
  }
  const single = WITH_MARK.exec(plain);
  if (!single) return refused('fieldNotRead', { got, example });
  const number = readNumberText(single[1] ?? '', got, example);
  return number.ok ? { ok: true, alone: number.value, mark: single[2] ?? '' } : number;
}
