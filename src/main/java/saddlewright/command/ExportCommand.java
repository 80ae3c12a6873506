package saddlewright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.interchange.FhirBundle;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Writes a case for another system. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Writes a case for another system: as an HL7 FHIR R4 bundle with the PDF in it.")
final class ExportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--fhir",
      required = true,
      description = "As an HL7 FHIR R4 (4.0.1) bundle in JSON; its codes: docs/interchange.md.")
  private boolean fhir;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "Where to write: a name that ends in .json.")
  private Path out;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = PrescribeCommand.Day.class,
      description = "Date of the bundle and of the PDF in it (default: today).")
  private LocalDate date = LocalDate.now();

  @Option(
      names = "--patient",
      paramLabel = "FILE",
      description = "Tell whose case it is, from a patient file; without it only the reference.")
  private Path patient;

  @Override
  public Integer call() throws CaseFileException, IOException {
    if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + ": the name must end in .json");
    }
    OutFile.refuseCase(out, file, spec.commandLine());
    Case c = CaseDocument.load(file);
    AtomicFile.write(out, FhirBundle.toBytes(Assessment.of(c), date, identity(c)));
    return CommandLine.ExitCode.OK;
  }

  private Optional<PatientIdentity> identity(Case c) throws CaseFileException, IOException {
    if (patient == null) {
      return Optional.empty();
    }
    OutFile.refuse(out, patient, "the patient file", spec.commandLine());
    return Optional.of(PatientFile.load(patient, c, spec.commandLine()));
  }
}
