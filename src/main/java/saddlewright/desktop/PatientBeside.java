package saddlewright.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;

/**
 * Who the patient of a case is, in a file of its own beside that of the case. A file that names
 * another case is neither taken up nor written over: it tells of another patient.
 */
final class PatientBeside {
  /** What was found beside a case, with a sentence where it could not be taken up. */
  record Found(Optional<PatientIdentity> patient, Optional<String> trouble) {}

  private PatientBeside() {}

  static Found load(Path caseFile, Case c) {
    try {
      Optional<PatientIdentity> there = PatientStore.findBeside(caseFile);
      if (there.filter(p -> !p.reference().equals(c.reference())).isPresent()) {
        return new Found(
            Optional.empty(),
            Optional.of(Words.of("patient.of-another", name(caseFile), there.get().reference())));
      }
      return new Found(there, Optional.empty());
    } catch (CaseFileException e) {
      return new Found(Optional.empty(), Optional.of(e.sentences()));
    }
  }

  /**
   * Writes who the patient is, or takes the file away once the identity has been taken away.
   *
   * @param before what was known when the case was laid on the desk or saved last
   * @throws CaseFileException when it cannot be written
   */
  static Optional<String> save(
      Path caseFile, Case c, Optional<PatientIdentity> now, Optional<PatientIdentity> before)
      throws CaseFileException {
    if (now.isEmpty() && before.isEmpty()) {
      return Optional.empty();
    }
    Path file = PatientStore.beside(caseFile);
    Optional<PatientIdentity> there = PatientStore.findBeside(caseFile);
    boolean ours =
        there
            .map(PatientIdentity::reference)
            .filter(r -> !r.equals(c.reference()))
            .filter(r -> before.filter(b -> b.reference().equals(r)).isEmpty())
            .isEmpty();
    if (!ours) {
      return now.map(
          p ->
              Words.of(
                  "patient.not-over-another", name(caseFile), there.orElseThrow().reference()));
    }
    if (now.isPresent()) {
      PatientIdentity p = now.get();
      PatientStore.save(new PatientIdentity(c.reference(), p.name(), p.born(), p.record()), file);
      return Optional.empty();
    }
    try {
      Files.deleteIfExists(file);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(Words.of("patient.not-deleted", name(caseFile)));
    }
  }

  private static Path name(Path caseFile) {
    return PatientStore.beside(caseFile).getFileName();
  }
}
