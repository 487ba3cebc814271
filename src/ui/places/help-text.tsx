/** What the workbench does, what it does not, and the keys. */
export function HelpText() {
  return (
    <>
      <p>
        Loads come down the cord from the roof to the ground, link by link. What is{' '}
        <span className="yours">blue and dotted</span> is yours to change where it stands; every figure follows at each
        key. A ratio is what is asked over what there is, rounded up: 1.00 or less passes. Open any ratio to see its
        formula, the numbers put in and the clause.
      </p>
      <p>
        Each check says one of four things: <strong>passes</strong>, <strong>fails</strong>, <strong>not given</strong>{' '}
        (a value or a capacity that you must supply, or a site value that is still a guess),{' '}
        <strong>outside the method</strong> (past the range that the standard or this workbench covers).
      </p>
      <h3>Lengths</h3>
      <p>
        Write 13&apos; 6-1/2&quot;, 13 ft 6 in, 13.5 ft, 25 1/8 in, 4.1 m, 340 mm. For a log, girth 28 in is turned into
        its diameter. A pitch is 3:12 or 3 in 12. Switching the units changes no stored number.
      </p>
      <h3>Keys</h3>
      <p>
        Enter keeps an entry, Escape takes it back. <kbd>Ctrl</kbd> <kbd>Z</kbd> undoes, <kbd>Ctrl</kbd>{' '}
        <kbd>Shift</kbd> <kbd>Z</kbd> does it again.
      </p>
      <h3>On the drawing</h3>
      <p>
        Blue lengths are fields. Blue rings are handles: drag one, or reach it with <kbd>Tab</kbd> and move it with the
        arrow keys, 1 in (25 mm) at a press, with <kbd>Shift</kbd> 1/8 in (5 mm); Escape takes the move back. Braces
        that share their run and drop move together, and the handle says how many; “only this one” in the brace’s link
        sets one apart.
      </p>
      <h3>Cautions</h3>
      <ul>
        <li>A design aid. It is not the work of a licensed professional and does not take the place of one.</li>
        <li>The local code and the building department decide, also about logs that carry no grade stamp.</li>
        <li>That the checks pass says nothing about what is not checked: the check sheet lists it.</li>
        <li>Setbacks, fire, flood, electrical work and drainage are not looked at.</li>
        <li>Felling, lifting heavy logs and standing a frame before its braces are on have dangers of their own.</li>
        <li>Your projects stay on this device. Save them to a file: a browser may clear its storage.</li>
      </ul>
    </>
  );
}
