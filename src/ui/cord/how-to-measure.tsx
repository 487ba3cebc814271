import { Shown } from './shown.tsx';

/** Small pictures beside the words: how each thing that is asked about a log is measured on it. */
export function HowToMeasure() {
  return (
    <details className="how-to-measure">
      <summary>How to measure girth, knots, grain and checks</summary>
      <Shown
        picture={
          <>
            <path d="M2 18 H94 M2 54 H94" />
            <path
              className="measures"
              d="M44 18 C36 28 36 44 44 54 M52 18 C44 28 44 44 52 54 M44 54 L40 66 M52 54 L50 66"
            />
            <path className="measures" d="M39 30 H46 M38 36 H41 M39 42 H46" />
          </>
        }
      >
        Girth: a tape round the log, square to it and clear of knots and swellings, bark off where the bark comes off.
        The diameter is the girth over 3.1416. With a caliper measure twice, the second time square to the first.
      </Shown>
      <Shown
        picture={
          <>
            <path d="M2 14 H94 M2 58 H94" />
            <ellipse cx="48" cy="36" rx="12" ry="9" />
            <ellipse cx="48" cy="36" rx="5" ry="3.5" />
            <path className="measures" d="M48 27 H74 M48 45 H74 M70 27 V45 M68 30 L70 27 L72 30 M68 42 L70 45 L72 42" />
          </>
        }
      >
        Knot: its width across the log, not along it. Look for the foot of length with the most of them and measure
        every one there, then the widest of the whole log.
      </Shown>
      <Shown
        picture={
          <>
            <path d="M26 2 V70 M70 2 V70" />
            <path d="M42 68 L54 4" />
            <path className="measures" d="M42 68 V4" strokeDasharray="3 2" />
            <path className="measures" d="M42 10 H53 M45 8 L42 10 L45 12 M50 8 L53 10 L50 12" />
          </>
        }
      >
        Grain: hold a plumb line or a straight stick along the log where a drying check begins. In which length does the
        check stray one inch to the side? 14 in makes 1 in 14. Take the steepest place, clear of knots.
      </Shown>
      <Shown
        picture={
          <>
            <circle cx="48" cy="36" r="31" />
            <path d="M45 6 L48 32 L51 6" />
            <path className="measures" d="M48 1 V32 M58 5 V32 M56 8 L58 5 L60 8 M56 29 L58 32 L60 29" />
          </>
        }
      >
        Check: push a thin blade into the widest one and read how deep it goes. Every log has checks to its heart; one
        that runs through an end from face to face is another thing: cut it off, or take another log.
      </Shown>
    </details>
  );
}
