package saddlewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
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
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.Issue;
import saddlewright.prescription.NamedPatient;
import saddlewright.prescription.pdf.Letterhead;
import saddlewright.prescription.pdf.Paper;
import saddlewright.prescription.pdf.PrescriptionPdf;
import saddlewright.prescription.pdf.PrintOptions;
import saddlewright.prescription.pdf.Unprintable;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Writes the laboratory prescription of a case as PDF. */
@Command(
    name = "prescribe",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Writes the laboratory prescription of a case as PDF, drawn at true scale.")
final class PrescribeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description =
          "Where to write: a name that ends in .pdf, or a folder, in which it is named after case"
              + " and revision.")
  private Path out;

  @Option(
      names = "--findings",
      description = "Mark on the drawing what the rule book finds, with the numbers of the lists.")
  private boolean findings;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = PrescribeCommand.Day.class,
      description = "Date of the document (default: today).")
  private LocalDate date = LocalDate.now();

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "Paper: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private Paper paper = Paper.A4;

  /** Reads a date, and says in plain words when it is none. */
  static final class Day implements CommandLine.ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text);
      } catch (DateTimeParseException e) {
        throw new CommandLine.TypeConversionException(
            ToothList.quoted(text) + " is no date; write year-month-day, such as 2026-03-31");
      }
    }
  }

  @Option(
      names = "--letterhead",
      paramLabel = "PICTURE",
      description = "PNG or JPEG file of the practice's letterhead, for the head of page one.")
  private Optional<Path> letterhead = Optional.empty();

  @Option(
      names = "--patient",
      paramLabel = "FILE",
      description =
          "File with the patient's identity, for a slip of its own (default: NAME.patient.json"
              + " beside the case, when there is one).")
  private Optional<Path> patient = Optional.empty();

  @Option(
      names = "--issue",
      description =
          "Issue it: the case records the revision, with the day and a hash of its content."
              + " Without it, what has changed since the last issue is printed as a draft.")
  private boolean issue;

  @Option(
      names = "--incomplete",
      description = "With --issue: issue it although fields that must be filled in are blank.")
  private boolean incomplete;

  @Override
  public Integer call() throws CaseFileException, IOException {
    Case c = CaseDocument.load(file);
    if (issue && CaseDocument.isPdf(file)) {
      throw new ParameterException(
          spec.commandLine(),
          file
              + " is a document, which records nothing any more; open it in the editor and save the"
              + " case, then issue that");
    }
    if (incomplete && !issue) {
      throw new ParameterException(spec.commandLine(), "--incomplete goes with --issue");
    }
    Path beside = PatientStore.beside(file);
    Optional<Path> named = patient.or(() -> Optional.of(beside).filter(Files::exists));
    Optional<PatientIdentity> who =
        named.isPresent()
            ? Optional.of(PatientFile.load(named.get(), c, spec.commandLine()))
            : Optional.empty();
    Optional<Letterhead> picture =
        letterhead.isPresent() ? Optional.of(Letterhead.of(letterhead.get())) : Optional.empty();
    Issue now = new Issue(Assessment.of(c), who, date);
    List<Completeness.Gap> gaps = issue ? now.gaps() : List.of();
    if (!gaps.isEmpty() && !incomplete) {
      refuse(gaps);
      return CommandLine.ExitCode.SOFTWARE;
    }
    Assessment printed = issue ? now.recorded() : now.now();
    Path target = target(printed.subject());
    OutFile.refuseCase(target, file, spec.commandLine());
    AtomicFile.write(
        target,
        PrescriptionPdf.toBytes(
            printed,
            PrintOptions.on(issue ? now.day() : date)
                .with(paper)
                .withPatient(NamedPatient.on(c.prescription(), now.patient()))
                .withLetterhead(picture)
                .withSigns(findings ? FindingSign.callouts(printed.report()) : List.of())));
    List<Unprintable> squares =
        Unprintable.of(printed.subject(), NamedPatient.on(c.prescription(), who));
    if (!squares.isEmpty()) {
      spec.commandLine().getErr().println(target + ": " + Unprintable.sentence(squares));
    }
    if (issue) {
      record(now, printed, target);
    }
    return CommandLine.ExitCode.OK;
  }

  private void refuse(List<Completeness.Gap> gaps) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(
        file
            + ": not issued, since "
            + (gaps.size() == 1 ? "one thing" : gaps.size() + " things")
            + " that must be filled in "
            + (gaps.size() == 1 ? "is" : "are")
            + " missing:");
    gaps.forEach(g -> err.println("  " + g.sentence()));
    err.println("Fill them in, or issue it all the same with --incomplete.");
  }

  /** The document is on the disk; only now may the case say that it has gone out. */
  private void record(Issue issued, Assessment printed, Path target) throws CaseFileException {
    if (!issued.isRepeated()) {
      try {
        CaseStore.save(printed.subject(), file);
      } catch (CaseFileException e) {
        throw new CaseFileException(
            e.kind(),
            target
                + " has been written, but the case does not record it: "
                + e.sentences()
                + " Then issue it again.",
            e);
      }
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println(
        target
            + ": "
            + Issue.stateOf(printed.subject())
            + (issued.isRepeated() ? " (written once more; nothing has changed since)" : ""));
    issued.signing().ifPresent(out::println);
  }

  /** The file to write; a folder gets one that is named after the case and its revision. */
  private Path target(Case printed) {
    if (Files.isDirectory(out)) {
      return out.resolve(Issue.fileName(printed));
    }
    if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + ": the name must end in .pdf");
    }
    return out;
  }
}
