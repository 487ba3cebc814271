/** The page for the building department. Until it is laid out it says so: nothing here can be printed and handed in. */
export function SheetPlace() {
  return (
    <section className="coming" aria-labelledby="sheet-title">
      <h2 id="sheet-title">Check sheet</h2>
      <p>Here will be the one page for the building department. It is not laid out yet; there is nothing to print.</p>
    </section>
  );
}
