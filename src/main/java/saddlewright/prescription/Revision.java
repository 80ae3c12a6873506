package saddlewright.prescription;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.IssuedRevision;

/**
 * Which state of the prescription this is.
 *
 * @param number from 1
 * @param hash fingerprint of all that it says
 * @param issued whether it has gone out as it is
 * @param replaces the state that it takes the place of
 */
public record Revision(int number, String hash, boolean issued, Optional<IssuedRevision> replaces) {

  /**
   * The revision that the case is at: the last that was issued while nothing has changed since,
   * otherwise the next one.
   */
  public static Revision of(Case c) {
    List<IssuedRevision> out = c.prescription().issued();
    String hash = Fingerprint.of(c);
    if (out.isEmpty()) {
      return new Revision(1, hash, false, Optional.empty());
    }
    IssuedRevision last = out.get(out.size() - 1);
    if (last.hash().equals(hash)) {
      return new Revision(
          last.number(),
          hash,
          true,
          out.size() > 1 ? Optional.of(out.get(out.size() - 2)) : Optional.empty());
    }
    return new Revision(last.number() + 1, hash, false, Optional.of(last));
  }
}
