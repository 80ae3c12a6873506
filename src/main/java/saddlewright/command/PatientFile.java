package saddlewright.command;

import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;

/** The file that says whose case it is, taken only when it belongs to the case. */
final class PatientFile {
  private PatientFile() {}

  /**
   * The identity in the file.
   *
   * @throws ParameterException when it is that of another case
   */
  static PatientIdentity load(Path file, Case c, CommandLine line) throws CaseFileException {
    PatientIdentity identity = PatientStore.load(file);
    if (!identity.reference().equals(c.reference())) {
      throw new ParameterException(
          line,
          "--patient "
              + file
              + " belongs to case "
              + identity.reference()
              + ", not to "
              + c.reference()
              + "; name the file of this patient");
    }
    return identity;
  }
}
