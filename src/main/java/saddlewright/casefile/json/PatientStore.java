package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Optional;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.order.PatientIdentity;

/**
 * Identities of patients on disk, each in a file of its own: {@code NAME.patient.json} beside
 * {@code NAME.json}. A case that is handed on takes no identity with it.
 */
public final class PatientStore {
  public static final String FORMAT = "saddlewright-patient";

  private static final FileHeader HEADER =
      new FileHeader("patient identity", FORMAT, Migrations.NONE, Kind.NOT_A_PATIENT);

  private PatientStore() {}

  /** Where the identity that belongs to a case file lies. */
  public static Path beside(Path caseFile) {
    String name = AtomicFile.nameOf(caseFile).replaceFirst("(?i)\\.(saddle|json|pdf)$", "");
    return caseFile.resolveSibling(name + ".patient.json");
  }

  /** The identity beside a case file; none when there is no such file. */
  public static Optional<PatientIdentity> findBeside(Path caseFile) throws CaseFileException {
    Path file = beside(caseFile);
    return Files.exists(file) ? Optional.of(load(file)) : Optional.empty();
  }

  /**
   * The identity in a file.
   *
   * @throws CaseFileException when the file cannot be read or holds none
   */
  public static PatientIdentity load(Path file) throws CaseFileException {
    byte[] bytes = FileBytes.of(file, "patient identity");
    try {
      return MembersIn.read(
          HEADER.check(JsonText.parse(bytes)), Place.TOP, new HashMap<>(), PatientStore::read);
    } catch (Refusal e) {
      throw e.in(AtomicFile.nameOf(file));
    }
  }

  /**
   * Writes an identity, in place of what was there.
   *
   * @throws CaseFileException when it cannot be written
   */
  public static void save(PatientIdentity patient, Path file) throws CaseFileException {
    ObjectNode node =
        MembersOut.write(
            Place.TOP, new KeptMembers(java.util.Map.of()), top -> write(patient, top));
    AtomicFile.write(file, JsonText.pretty(node).getBytes(StandardCharsets.UTF_8));
  }

  private static PatientIdentity read(MembersIn m) {
    m.requiredText("format");
    m.whole("formatVersion");
    return new PatientIdentity(
        m.requiredText("reference"),
        m.textOrEmpty("name"),
        m.date("born"),
        m.textOrEmpty("record"));
  }

  private static void write(PatientIdentity p, MembersOut m) {
    m.text("format", FORMAT);
    m.whole("formatVersion", Migrations.NONE.current());
    m.text("reference", p.reference());
    m.textUnlessEmpty("name", p.name());
    m.date("born", p.born());
    m.textUnlessEmpty("record", p.record());
  }
}
