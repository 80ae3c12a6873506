package saddlewright.desktop;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.stage.Window;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseEnding;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseReference;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.desktop.desks.DeskNames;
import saddlewright.desktop.desks.OpenDesks;
import saddlewright.desktop.desks.RecentFiles;
import saddlewright.desktop.panels.SchoolChoice;
import saddlewright.desktop.safekeeping.DeskFile;
import saddlewright.desktop.safekeeping.DeskJournal;
import saddlewright.desktop.safekeeping.FileNotices;
import saddlewright.desktop.safekeeping.FileWatch;
import saddlewright.desktop.safekeeping.FoundWork;
import saddlewright.desktop.safekeeping.Moment;
import saddlewright.desktop.safekeeping.PreviousVersion;
import saddlewright.desktop.safekeeping.RecoveryCopy;
import saddlewright.desktop.templates.Beginning;
import saddlewright.desktop.templates.Template;
import saddlewright.drawing.Background;
import saddlewright.interchange.FhirBundle;
import saddlewright.prescription.growth.GrowthStage;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Opens, saves and exports the case on the desk; what fails is said above the sheet. */
final class CaseFiles {
  private final Worktable table;

  /** How many files are opened at once: each takes a window. */
  private static final int MOST = 12;

  private final RecentFiles recent;
  private final Settings settings;
  private final DeskFile own = new DeskFile();
  private final DeskJournal journal;
  private final FileNotices notices;
  private final FileWatch watch;
  private final EditorWindow desk;
  private final OpenDesks<EditorWindow> desks;

  /** The prescription from which the case on the desk was taken; it is never written to. */
  private Optional<Path> taken = Optional.empty();

  /** What was read out of a file, before it lies on a desk. */
  private record Found(
      Path file, Case subject, boolean pdf, PatientBeside.Found beside, Optional<String> digest) {
    static Found in(Path file) throws CaseFileException {
      boolean pdf = CaseDocument.isPdf(file);
      // Taken before it is read: what is changed in between is noticed at the next look.
      Optional<String> digest = pdf ? Optional.empty() : DeskFile.digestOf(file);
      Case c = CaseDocument.load(file);
      return new Found(file, c, pdf, PatientBeside.load(file, c), digest);
    }
  }

  CaseFiles(Worktable table, Settings settings, EditorWindow desk, OpenDesks<EditorWindow> desks) {
    this.table = table;
    this.settings = settings;
    this.recent = settings.recent();
    this.desk = desk;
    this.desks = desks;
    this.journal = new DeskJournal(table, own, settings.safe());
    this.notices = new FileNotices(table, ways());
    this.watch = new FileWatch(own, settings.safe(), notices::disk);
    table.safetyProperty().addListener(o -> sayWhereNotKept());
  }

  private FileNotices.Ways ways() {
    return new FileNotices.Ways() {
      @Override
      public void loadTheirs() {
        CaseFiles.this.loadTheirs();
      }

      @Override
      public void saveOver() {
        table.fileProperty().get().filter(f -> write(f, true)).ifPresent(notices::savedOver);
      }

      @Override
      public void saveElsewhere() {
        saveAs();
      }

      @Override
      public void saveThere() {
        save();
      }

      @Override
      public void openCopy(Path file, Path of) {
        CaseFiles.this.openCopy(file, of);
      }

      @Override
      public void recover(FoundWork work) {
        CaseFiles.this.recover(work);
      }

      @Override
      public void showFound() {
        desk.showFound();
      }
    };
  }

  /** Looks after the file of the case for as long as the window is shown. */
  void watch(Stage stage) {
    stage
        .showingProperty()
        .addListener(
            (o, was, showing) -> {
              if (showing) {
                watch.start();
              } else {
                watch.stop();
              }
            });
    stage
        .focusedProperty()
        .addListener(
            (o, was, focused) -> {
              if (focused) {
                watch.lookNow();
              }
            });
  }

  /** The desk is left as its user wished: nothing of it is kept. */
  void leave() {
    journal.journal().close();
  }

  private void sayWhereNotKept() {
    Optional<String> trouble = table.safetyProperty().get().trouble();
    if (trouble.isPresent()
        && table.noticeProperty().get().isEmpty()
        && settings.safe().isFirstTrouble()) {
      notices.notKept(trouble.get());
    }
  }

  /** Says, where the welcome page is not seen, that work was found. */
  void tellOfFound() {
    if (table.openProperty().get() && settings.found().waiting() > 0) {
      notices.found(settings.found());
    }
  }

  /** Lays work that was found on a desk, as it stood; it counts as not saved. */
  void recover(FoundWork work) {
    Optional<Path> claimed = settings.safe().claim(work);
    settings.found().taken(work);
    if (claimed.isEmpty() || work.copy().isEmpty()) {
      notices.takenUp();
      return;
    }
    RecoveryCopy copy = work.copy().get();
    Optional<EditorWindow> holder = copy.file().flatMap(desks::holding);
    EditorWindow room =
        holder.filter(d -> !d.table().unsavedProperty().get()).orElseGet(() -> desks.roomFor(desk));
    boolean isOpenElsewhere = holder.filter(d -> d != room).isPresent();
    room.files().recover(work, isOpenElsewhere ? copy.withoutFile() : copy, claimed.get());
    desks.bringUp(room);
  }

  private void recover(FoundWork work, RecoveryCopy copy, Path claimed) {
    FoundWork.Disk disk = copy.disk();
    Optional<Case> asSaved = disk == FoundWork.Disk.SAME ? read(copy.file()) : Optional.empty();
    Optional<PatientIdentity> beside =
        copy.file().flatMap(f -> PatientBeside.load(f, copy.subject()).patient());
    taken = Optional.empty();
    copy.file().ifPresentOrElse(f -> own.opened(f, copy.base()), own::none);
    journal.expect(copy);
    table.recover(copy, asSaved, beside, Words.of("safe.edit-recovered"));
    if (!table.current().equals(copy.subject())) {
      // It could not be laid out, which is said; the copy is offered again at the next start.
      return;
    }
    table.stepProperty().set(Step.REVIEW);
    settings.safe().handOver(claimed, work, journal.journal());
    watch.isTold();
    notices.recovered(copy, disk);
  }

  private static Optional<Case> read(Optional<Path> file) {
    try {
      return file.isEmpty() ? Optional.empty() : Optional.of(CaseStore.load(file.get()));
    } catch (CaseFileException e) {
      // Undo then has nothing to lead back to; the work itself is there.
      return Optional.empty();
    }
  }

  /** Opens what a file held before it was first saved in this sitting. */
  void openPrevious() {
    table
        .fileProperty()
        .get()
        .ifPresent(
            file ->
                PreviousVersion.find(file)
                    .ifPresentOrElse(
                        p -> openCopy(p, file),
                        () -> table.say(Words.of("safe.no-previous", AtomicFile.nameOf(file)))));
  }

  /** Opens what a file holds as a case that has no file yet. */
  private void openCopy(Path file, Path of) {
    try {
      Case c = CaseStore.load(file);
      EditorWindow room = desks.roomFor(desk);
      room.files().layCopy(c, PatientBeside.load(of, c).patient(), file, of);
      desks.bringUp(room);
    } catch (CaseFileException e) {
      table.say(e.sentences());
    }
  }

  private void layCopy(Case c, Optional<PatientIdentity> patient, Path file, Path of) {
    own.none();
    table.lay(c, Optional.empty(), patient);
    taken = Optional.of(file).filter(f -> !f.equals(of));
    table.stepProperty().set(Step.REVIEW);
    table.say(
        Words.of(
            file.equals(of) ? "safe.is-copy" : "safe.is-previous",
            AtomicFile.nameOf(of),
            DeskFile.changedAt(file).map(Moment::inWords).orElse("")));
  }

  /** Takes over what another has written to the file; undo leads back to what was here. */
  private void loadTheirs() {
    Optional<Path> file = table.fileProperty().get();
    if (file.isEmpty()) {
      return;
    }
    try {
      Found theirs = Found.in(file.get());
      boolean mineKnown = table.patientProperty().get().equals(table.savedPatient());
      own.opened(file.get(), theirs.digest());
      table.apply(Words.of("safe.edit-theirs", AtomicFile.nameOf(file.get())), theirs.subject());
      if (mineKnown) {
        table.know(
            theirs
                .beside()
                .patient()
                .orElseGet(() -> PatientIdentity.none(theirs.subject().reference())));
        table.markPatientSaved();
      }
      table.markSaved(file.get());
      notices.loadedTheirs(file.get());
    } catch (CaseFileException e) {
      table.say(e.sentences());
    }
  }

  /** Begins a new case: here, when this desk is empty, otherwise in a further window. */
  void create() {
    EditorWindow room = table.openProperty().get() ? desks.open() : desk;
    room.files().lay(room.files().fresh(), Step.CHART);
  }

  private void lay(Case c, Step begin) {
    taken = Optional.empty();
    own.none();
    table.lay(c, Optional.empty());
    table.stepProperty().set(begin);
  }

  private Case fresh() {
    return judged(Case.blank(CaseReference.fresh()));
  }

  /** A new case, judged by the school that the user prefers; where that fails it is said why. */
  private Case judged(Case blank) {
    try {
      Case judged = table.preferences().schoolProperty().get().judge(blank);
      table.noticeProperty().set(Optional.empty());
      return judged;
    } catch (CaseFileException e) {
      table
          .noticeProperty()
          .set(
              Optional.of(
                  Words.of(
                      "preferences.school-not-read",
                      e.sentences(),
                      SchoolChoice.name(blank.profile()))));
      return blank;
    }
  }

  /** Lays a copy of a demo case on the desk. */
  void demo(Case c) {
    desks.roomFor(desk).files().lay(c, Step.REVIEW);
  }

  /** Begins from a template, in the room that there is. */
  void begin(Case c, Template from, boolean surveyed) {
    EditorWindow room = desks.roomFor(desk);
    // One's own templates are judged by the school by which they were made.
    room.files()
        .lay(from.isOwn() ? c : room.files().judged(c), surveyed ? Step.REVIEW : Step.SURVEY);
    String said =
        Words.of(surveyed ? "notice.from-template-surveyed" : "notice.from-template", from.name());
    Optional<String> before = room.table().noticeProperty().get();
    room.table().say(before.map(n -> n + "\n" + said).orElse(said));
    desks.bringUp(room);
  }

  /** Begins another case with charts and designs of this one, in a further window. */
  void beginLikeThis() {
    Case c = Beginning.of(table.current());
    EditorWindow room = desks.open();
    room.files().lay(c, Step.CHART);
    room.table().say(Words.of("notice.like-that", c.reference()));
  }

  /** Closes the case; the last window goes back to its welcome page, another goes with its case. */
  void close() {
    if (desks.all().size() > 1) {
      desks.close(desk);
    } else if (mayLeave()) {
      own.none();
      table.close();
    }
  }

  void choose() {
    FileChooser chooser =
        chooser(Words.of("file.case-or-prescription"), "*.saddle", "*.json", "*.pdf");
    chooser.setTitle(Words.of("file.open").replace("_", ""));
    openAll(FileQuestion.allToOpen(chooser, window()));
  }

  private Window window() {
    return desk.stage();
  }

  void open(Path file) {
    openAll(List.of(file));
  }

  /**
   * Opens files, each in a window of its own; one that is open already is brought up. What cannot
   * be opened is said in the window that is then in front.
   */
  void openAll(List<Path> files) {
    List<String> troubles = new ArrayList<>();
    List<Offer> offers = new ArrayList<>();
    EditorWindow front = desk;
    for (Path file : files.subList(0, Math.min(MOST, files.size()))) {
      Optional<EditorWindow> there = desks.holding(file);
      if (there.isPresent()) {
        front = there.get();
        desks.bringUp(front);
        recent.note(file);
        continue;
      }
      try {
        Found found = Found.in(file);
        front = desks.roomFor(desk);
        front.files().take(found);
      } catch (CaseFileException e) {
        boolean gone = recent.shown().contains(file) && !Files.exists(file);
        troubles.add(gone ? Words.of("recent.missing", file.getFileName(), folder(file)) : said(e));
        if (gone) {
          offers.add(
              new Offer(
                  Words.of("recent.take-off", file.getFileName()), () -> recent.forget(file)));
        }
      }
    }
    if (files.size() > MOST) {
      troubles.add(Words.of("notice.too-many", MOST, files.size()));
    }
    if (!troubles.isEmpty()) {
      Worktable t = front.table();
      t.noticeProperty().get().ifPresent(n -> troubles.add(0, n));
      t.say(String.join("\n", troubles), offers.toArray(Offer[]::new));
    }
  }

  private static String folder(Path file) {
    return RecentFiles.folderInWords(file);
  }

  private static String said(CaseFileException e) {
    return e.sentences();
  }

  /**
   * Opens a case file, or the case in a prescription; when that fails, the case on the desk stays.
   * What was taken from a prescription has no file yet, so that saving asks for one.
   */
  void load(Path file) {
    try {
      take(Found.in(file));
    } catch (CaseFileException e) {
      table.noticeProperty().set(Optional.of(e.sentences()));
    }
  }

  private void take(Found f) {
    if (f.pdf()) {
      own.none();
    } else {
      own.opened(f.file(), f.digest());
    }
    table.lay(
        f.subject(), f.pdf() ? Optional.empty() : Optional.of(f.file()), f.beside().patient());
    taken = f.pdf() ? Optional.of(f.file()) : Optional.empty();
    table.stepProperty().set(Step.REVIEW);
    table
        .noticeProperty()
        .set(
            f.beside()
                .trouble()
                .or(
                    () ->
                        f.pdf()
                            ? Optional.of(Words.of("notice.taken", AtomicFile.nameOf(f.file())))
                            : Optional.empty()));
    recent.note(f.file());
    if (settings.found().of(f.file()).isPresent()) {
      notices.found(settings.found());
    }
  }

  /** Saves; true when the case is on disk. */
  boolean save() {
    return table.fileProperty().get().map(this::write).orElseGet(this::saveAs);
  }

  boolean saveAs() {
    FileChooser chooser = chooser(Words.of("file.case"), "*" + CaseEnding.OWN);
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Words.of("file.case-json"), "*" + CaseEnding.JSON));
    chooser.setTitle(Words.of("file.save-as"));
    chooser.setInitialFileName(name() + CaseEnding.OWN);
    return FileQuestion.toSave(chooser, window())
        .map(f -> saved(chooser, f))
        .map(f -> isElsewhere(f) ? false : write(f))
        .orElse(false);
  }

  /** A name that was given without an ending gets that of the kind that was chosen. */
  private static Path saved(FileChooser chooser, Path file) {
    FileChooser.ExtensionFilter kind = chooser.getSelectedExtensionFilter();
    boolean plain = kind != null && kind.getExtensions().contains("*" + CaseEnding.JSON);
    return plain ? withEnding(file, CaseEnding.JSON) : CaseEnding.on(file);
  }

  /** A file that is open in another window must not be written from this one. */
  private boolean isElsewhere(Path file) {
    boolean elsewhere = desks.holding(file).filter(d -> d != desk).isPresent();
    if (elsewhere) {
      table.noticeProperty().set(Optional.of(Words.of("notice.elsewhere", file.getFileName())));
    }
    return elsewhere;
  }

  /** Writes the case to a file, unless another has written there since. */
  boolean write(Path file) {
    return write(file, false);
  }

  private boolean write(Path file, boolean over) {
    try {
      if (!own.save(table.current(), file, over)) {
        notices.notOver(file);
        return false;
      }
      table.markSaved(file);
      taken = Optional.empty();
      recent.note(file);
      Optional<String> trouble =
          PatientBeside.save(
              file, table.current(), table.patientProperty().get(), table.savedPatient());
      if (trouble.isEmpty()) {
        table.markPatientSaved();
      }
      table.noticeProperty().set(trouble);
      return trouble.isEmpty();
    } catch (CaseFileException e) {
      notices.notSaved(e);
      return false;
    }
  }

  void exportDrawing() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Words.of("file.export-drawing"));
    FileChooser.ExtensionFilter clearSvg = filter("file.svg-clear", "*.svg");
    FileChooser.ExtensionFilter clearPng = filter("file.png-clear", "*.png");
    chooser
        .getExtensionFilters()
        .addAll(filter("file.svg", "*.svg"), filter("file.png", "*.png"), clearSvg, clearPng);
    chooser.setInitialFileName(name() + ".svg");
    Optional<Path> chosen = FileQuestion.toSave(chooser, window());
    if (chosen.isPresent()) {
      FileChooser.ExtensionFilter kind = chooser.getSelectedExtensionFilter();
      boolean clear = kind == clearSvg || kind == clearPng;
      String ending = kind == null ? ".svg" : kind.getExtensions().get(0).substring(1);
      Path file = chosen.get();
      writeDrawing(
          isPng(file) ? file : withEnding(file, ending),
          clear ? Background.CLEAR : Background.PAPER);
    }
  }

  private static FileChooser.ExtensionFilter filter(String key, String ending) {
    return new FileChooser.ExtensionFilter(Words.of(key, DeskDrawing.DPI), ending);
  }

  private static boolean isPng(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".png");
  }

  void writeDrawing(Path file, Background background) {
    DeskDrawing drawing = DeskDrawing.of(table);
    try {
      AtomicFile.write(
          isPng(file) ? file : withEnding(file, ".svg"),
          isPng(file)
              ? drawing.png(background)
              : drawing.svg(background).getBytes(StandardCharsets.UTF_8));
      table.noticeProperty().set(Optional.of(Words.of("notice.exported", file.getFileName())));
    } catch (CaseFileException e) {
      table.noticeProperty().set(Optional.of(e.sentences()));
    } catch (IOException e) {
      notWritten(file, e);
    }
  }

  /** Writes a picture of each stage of the design, beside each other under numbered names. */
  void exportSteps() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Words.of("steps.file"));
    chooser.getExtensionFilters().addAll(filter("file.svg", "*.svg"), filter("file.png", "*.png"));
    chooser.setInitialFileName(name() + ".svg");
    FileQuestion.toSave(chooser, window())
        .ifPresent(
            chosen -> {
              FileChooser.ExtensionFilter kind = chooser.getSelectedExtensionFilter();
              boolean png = isPng(chosen) || kind != null && kind.getExtensions().contains("*.png");
              writeSteps(withEnding(chosen, png ? ".png" : ".svg"));
            });
  }

  /** Writes the pictures under the name of a file, with the number and name of the stage in it. */
  void writeSteps(Path file) {
    List<String> written = new ArrayList<>();
    for (GrowthStage stage : GrowthStage.values()) {
      Path one = stageFile(file, stage);
      DeskDrawing drawing = DeskDrawing.of(table, stage);
      try {
        AtomicFile.write(
            one,
            isPng(file)
                ? drawing.png(Background.PAPER)
                : drawing.svg(Background.PAPER).getBytes(StandardCharsets.UTF_8));
      } catch (CaseFileException e) {
        table.noticeProperty().set(Optional.of(e.sentences()));
        return;
      } catch (IOException e) {
        notWritten(one, e);
        return;
      }
      written.add(AtomicFile.nameOf(one));
    }
    table
        .noticeProperty()
        .set(
            Optional.of(
                Words.of(
                    "notice.steps-exported",
                    written.size(),
                    written.get(0),
                    written.get(written.size() - 1))));
  }

  private static Path stageFile(Path file, GrowthStage stage) {
    String name = AtomicFile.nameOf(file);
    int dot = name.lastIndexOf('.');
    return file.resolveSibling(
        name.substring(0, dot)
            + "-"
            + (stage.ordinal() + 1)
            + "-"
            + stage.name().toLowerCase(Locale.ROOT).replace('_', '-')
            + name.substring(dot));
  }

  void exportFhir() {
    FileChooser chooser = chooser(Words.of("file.fhir"), "*.json");
    chooser.setTitle(Words.of("file.export-fhir"));
    chooser.setInitialFileName(name() + ".fhir.json");
    FileQuestion.toSave(chooser, window())
        .map(f -> withEnding(f, ".json"))
        .ifPresent(this::writeFhir);
  }

  /** Writes the bundle with the reference alone: whose case it is stays in the house. */
  void writeFhir(Path file) {
    if (isTheCase(file)) {
      table.noticeProperty().set(Optional.of(Words.of("notice.is-the-case", file.getFileName())));
      return;
    }
    try {
      AtomicFile.write(file, FhirBundle.toBytes(table.assessment(), LocalDate.now()));
      table.noticeProperty().set(Optional.of(Words.of("notice.exported", file.getFileName())));
    } catch (CaseFileException e) {
      table.noticeProperty().set(Optional.of(e.sentences()));
    }
  }

  /** A case file and a bundle have the same ending, so that one could take the other's place. */
  private boolean isTheCase(Path file) {
    return table
        .fileProperty()
        .get()
        .filter(own -> own.toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize()))
        .isPresent();
  }

  private void notWritten(Path file, IOException e) {
    table
        .noticeProperty()
        .set(
            Optional.of(
                Words.of(
                    "notice.not-written", file.getFileName(), String.valueOf(e.getMessage()))));
  }

  /** Whether the case on the desk may be left: saved, or its loss accepted. */
  boolean mayLeave() {
    if (!table.unsavedProperty().get()) {
      return true;
    }
    ButtonType save = new ButtonType(Words.of("leave.save"), ButtonBar.ButtonData.YES);
    ButtonType discard = new ButtonType(Words.of("leave.discard"), ButtonBar.ButtonData.NO);
    ButtonType cancel = new ButtonType(Words.of("leave.cancel"), ButtonBar.ButtonData.CANCEL_CLOSE);
    Alert ask =
        new Alert(Alert.AlertType.CONFIRMATION, Words.of("leave.question"), save, discard, cancel);
    ask.setHeaderText(Words.of("leave.title", DeskNames.of(table)));
    ask.setTitle(Words.of("app.name"));
    ask.initOwner(window());
    Optional<ButtonType> answer = ask.showAndWait();
    return answer.map(a -> a == discard || a == save && save()).orElse(false);
  }

  private String name() {
    return place()
        .map(p -> p.getFileName().toString().replaceAll("\\.[^.]+$", ""))
        .orElseGet(() -> table.current().reference().replaceAll("[^A-Za-z0-9._-]", "-"));
  }

  /** Where the case comes from. */
  Optional<Path> place() {
    return table.fileProperty().get().or(() -> taken);
  }

  /** A chooser that begins where the case comes from. */
  FileChooser chooser(String what, String... endings) {
    FileChooser chooser = new FileChooser();
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(what, endings));
    place()
        .map(p -> p.toAbsolutePath().getParent().toFile())
        .filter(File::isDirectory)
        .ifPresent(chooser::setInitialDirectory);
    return chooser;
  }

  static Path withEnding(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending)
        ? file
        : file.resolveSibling(file.getFileName() + ending);
  }
}
