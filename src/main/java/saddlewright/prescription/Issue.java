package saddlewright.prescription;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;

/**
 * The issue of a prescription on a day: what still stands against it, and what comes of it.
 *
 * @param now the case as it stands
 * @param patient whose case it is, when that is known here
 * @param on the day
 */
public record Issue(Assessment now, Optional<PatientIdentity> patient, LocalDate on) {
  /** Longest part of a file name that a reference makes; disks take 255 bytes of a name. */
  private static final int LONGEST_NAME = 60;

  /** Whether it has gone out as it is, so that issuing writes the same document once more. */
  public boolean isRepeated() {
    return Revision.of(now.subject()).issued();
  }

  /** The day that the document bears: of the first issue, where it is issued once more. */
  public LocalDate day() {
    List<IssuedRevision> out = now.subject().prescription().issued();
    return isRepeated() ? out.get(out.size() - 1).on() : on;
  }

  /** What must be filled in and is not; the day of issue fills itself in. */
  public List<Completeness.Gap> gaps() {
    FormField day = FormField.of(Item.DATE_ISSUED);
    return Completeness.of(now, patient).gaps(Level.MUST).stream()
        .filter(g -> !g.field().equals(day))
        .toList();
  }

  /** Who has signed, or that it waits for a hand; empty where the document bears no signature. */
  public Optional<String> signing() {
    PrescriptionDetails p = now.subject().prescription();
    if (FormField.of("signature").level(p) == Level.NOT_ASKED) {
      return Optional.empty();
    }
    SignedDesign signed = SignedDesign.of(now.subject());
    return Optional.of(
        signed
            .signature()
            .filter(s -> signed.holds())
            .map(s -> "Signed by " + s.name() + " on " + Dates.words(s.on()) + ".")
            .orElse("To be signed by hand on the first page before it is sent."));
  }

  /** The case in which this issue is recorded: the next revision, its day and its fingerprint. */
  public Assessment recorded() {
    Case c = now.subject();
    Revision next = Revision.of(c);
    if (next.issued()) {
      return now;
    }
    Case dated = c.with(c.prescription().with(Item.DATE_ISSUED, on.toString()));
    List<IssuedRevision> issued = new ArrayList<>(c.prescription().issued());
    issued.add(new IssuedRevision(next.number(), on, Fingerprint.of(dated)));
    return now.next(dated.with(dated.prescription().withIssued(issued)));
  }

  /** A name for the document of a case: its reference and revision, a draft being called so. */
  public static String fileName(Case c) {
    Revision r = Revision.of(c);
    String safe = c.reference().strip().replaceAll("[^\\p{L}\\p{N}._-]+", "-");
    String name = safe.isEmpty() || safe.startsWith(".") ? "prescription" : safe;
    int end = Math.min(name.length(), LONGEST_NAME);
    return name.substring(0, end)
        + "-revision-"
        + r.number()
        + (r.issued() ? "" : "-draft")
        + ".pdf";
  }

  /**
   * The state of a case in words, such as "Revision 2 (draft), replaces revision 1 of 3 November
   * 2026 · 9f2c 10ab 77d0 41c3".
   */
  public static String stateOf(Case c) {
    Revision r = Revision.of(c);
    List<IssuedRevision> out = c.prescription().issued();
    return "Revision "
        + r.number()
        + (r.issued() ? ", issued " + Dates.words(out.get(out.size() - 1).on()) : " (draft)")
        + r.replaces()
            .map(p -> ", replaces revision " + p.number() + " of " + Dates.words(p.on()))
            .orElse("")
        + " · "
        + r.hash().replaceAll("(.{4})(?=.)", "$1 ");
  }
}
