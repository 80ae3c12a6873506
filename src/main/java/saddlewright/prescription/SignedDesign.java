package saddlewright.prescription;

import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.Signature;

/**
 * Whether a prescriber stands by the design.
 *
 * @param signature what was signed, if anything was
 * @param unchanged whether charts and designs are still what was signed
 */
public record SignedDesign(Optional<Signature> signature, boolean unchanged) {

  /** A case without a signature costs nothing to ask; otherwise the design is written out once. */
  public static SignedDesign of(Case c) {
    Optional<Signature> signature = c.prescription().signature();
    return new SignedDesign(
        signature,
        signature.filter(s -> s.designHash().equals(Fingerprint.ofDesign(c))).isPresent());
  }

  /** Whether it is signed as it now is. */
  public boolean holds() {
    return signature.isPresent() && unchanged;
  }

  /**
   * Whether it was signed as something else than it now is. A signature that does not say what was
   * signed tells nothing either way.
   */
  public boolean isVoid() {
    return saysWhat() && !unchanged;
  }

  /** Whether the signature says for which design it stands. */
  public boolean saysWhat() {
    return signature.filter(s -> !s.designHash().isEmpty()).isPresent();
  }

  /** What is wanting, in a sentence; only where it does not hold. */
  String gap() {
    return signature
        .map(
            s ->
                "The chart or the design has changed since "
                    + s.name()
                    + " signed it on "
                    + Dates.words(s.on())
                    + ".")
        .orElse("The design is not signed.");
  }

  /** What to do about it. */
  String remedy() {
    return signature.isPresent() ? "Have it looked at and signed again." : "Have it signed.";
  }
}
