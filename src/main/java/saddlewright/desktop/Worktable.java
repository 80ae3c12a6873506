package saddlewright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseReference;
import saddlewright.casefile.ProfileFile;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ChartField;
import saddlewright.chart.Wanting;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.history.History;
import saddlewright.desktop.inks.Inks;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.safekeeping.RecoveryCopy;
import saddlewright.desktop.safekeeping.Safety;
import saddlewright.drawing.Palette;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.FormField;
import saddlewright.prescription.growth.GrowthStage;
import saddlewright.prescription.pdf.Letterhead;
import saddlewright.prescription.pdf.Paper;
import saddlewright.rules.Finding;
import saddlewright.rules.Profile;
import saddlewright.rules.Remedy;

/**
 * What lies on the desk: the case with all that is derived from it, what is selected in it, and how
 * it is looked at. Every panel derives from this and changes the case only through it.
 */
public final class Worktable {
  /** The arches that are shown. */
  public enum Shown {
    BOTH,
    UPPER,
    LOWER;

    public boolean shows(Arch arch) {
      return this == BOTH || (this == UPPER) == (arch == Arch.UPPER);
    }
  }

  private static final double LARGE_TEXT = 1.4;

  private final ReadOnlyObjectWrapper<Case> current =
      new ReadOnlyObjectWrapper<>(Case.blank(CaseReference.fresh()));
  private final DerivedWhenAsked assessment = new DerivedWhenAsked();
  private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyIntegerWrapper laid = new ReadOnlyIntegerWrapper(0);
  private final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<Optional<Path>> file =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<String>> undoName =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<String>> redoName =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<List<Subject>> selection = new SimpleObjectProperty<>(List.of());
  private final ObjectProperty<Optional<String>> finding =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<ChartField>> asked =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<String>> page =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Remedy>> preview =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<String>> notice =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Step> step = new SimpleObjectProperty<>(Step.CHART);
  private final ObjectProperty<Notation> notation = new SimpleObjectProperty<>(Notation.FDI);
  private final ObjectProperty<Shown> shown = new SimpleObjectProperty<>(Shown.BOTH);
  private final ObjectProperty<Optional<GrowthStage>> stage =
      new SimpleObjectProperty<>(Optional.empty());
  private final BooleanProperty survey = new SimpleBooleanProperty(true);
  private final BooleanProperty anatomy = new SimpleBooleanProperty(true);
  private final BooleanProperty numbers = new SimpleBooleanProperty(false);
  private final BooleanProperty markers = new SimpleBooleanProperty(true);
  private final BooleanProperty schoolShown = new SimpleBooleanProperty(false);
  private final BooleanProperty welcomeShown = new SimpleBooleanProperty(false);
  private final BooleanProperty pagesShown = new SimpleBooleanProperty(false);
  private final BooleanProperty cardShown = new SimpleBooleanProperty(false);
  private final BooleanProperty tissueShown = new SimpleBooleanProperty(false);
  private final BooleanProperty quickEntryShown = new SimpleBooleanProperty(false);
  private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);
  private final BooleanProperty blackAndWhite = new SimpleBooleanProperty(false);
  private final BooleanProperty darkDesk = new SimpleBooleanProperty(false);
  private final ObjectProperty<Optional<Letterhead>> letterhead =
      new SimpleObjectProperty<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<PatientIdentity>> patient =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Optional<FormField>> sought =
      new SimpleObjectProperty<>(Optional.empty());
  private final History history = new History();
  private final ReadOnlyObjectWrapper<List<History.Entry>> edits =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyIntegerWrapper standing = new ReadOnlyIntegerWrapper(0);
  private final ReadOnlyIntegerWrapper savedState = new ReadOnlyIntegerWrapper(0);
  private final ReadOnlyIntegerWrapper revision = new ReadOnlyIntegerWrapper(0);
  private final ObjectProperty<Safety> safety = new SimpleObjectProperty<>(Safety.NOTHING_TO_KEEP);
  private final ObjectProperty<Inks> inks = new SimpleObjectProperty<>(Inks.USUAL);
  private final DoubleProperty textSize = new SimpleDoubleProperty(1);
  private final Preferences preferences;
  private List<Offer> offered = List.of();
  private String offeredFor = "";
  private Optional<Case> saved = Optional.of(current.get());
  private boolean recovering;
  private Optional<PatientIdentity> savedPatient = Optional.empty();
  private Optional<Completeness> completeness = Optional.empty();
  private Optional<ProfileFile> ownSchool = Optional.empty();

  /**
   * What is derived from the current case. That of the empty desk is derived only when it is asked
   * for: the first frame of a window does not ask.
   */
  private final class DerivedWhenAsked extends ReadOnlyObjectWrapper<Assessment> {
    private Optional<Assessment> ofEmptyDesk = Optional.empty();
    private boolean attaching;

    boolean isDerived() {
      return super.get() != null || ofEmptyDesk.isPresent();
    }

    @Override
    public Assessment get() {
      Assessment derived = super.get();
      if (derived != null || attaching) {
        return derived;
      }
      if (ofEmptyDesk.isEmpty()) {
        ofEmptyDesk = Optional.of(Assessment.of(current.get()));
      }
      return ofEmptyDesk.get();
    }

    /** A property is read once when it is listened to, for no other reason than to be valid. */
    @Override
    public void addListener(InvalidationListener listener) {
      attaching = true;
      try {
        super.addListener(listener);
      } finally {
        attaching = false;
      }
    }
  }

  /** A desk on which nothing is preferred. */
  public Worktable() {
    this(Preferences.usual());
  }

  /**
   * A desk as the user prefers it. What is bound to the preferences is held by them weakly, so that
   * a desk that is closed is forgotten.
   */
  public Worktable(Preferences preferences) {
    this.preferences = preferences;
    notation.bindBidirectional(preferences.notationProperty());
    paper.bindBidirectional(preferences.paperProperty());
    darkDesk.bindBidirectional(preferences.darkProperty());
    textSize.bindBidirectional(preferences.textSizeProperty());
    inks.bind(preferences.inksProperty());
    history.begin(current.get());
  }

  /** What the user prefers, in this window and in all others. */
  public Preferences preferences() {
    return preferences;
  }

  public ReadOnlyObjectProperty<Case> currentProperty() {
    return current.getReadOnlyProperty();
  }

  public Case current() {
    return current.get();
  }

  /** Class, layout and findings of the current case. */
  public ReadOnlyObjectProperty<Assessment> assessmentProperty() {
    return assessment;
  }

  public Assessment assessment() {
    return assessment.get();
  }

  /** Whether a case is open; otherwise the welcome page is shown. */
  public ReadOnlyBooleanProperty openProperty() {
    return open.getReadOnlyProperty();
  }

  /** How many cases have been laid on the desk: it grows when another takes the place of one. */
  public ReadOnlyIntegerProperty laidProperty() {
    return laid.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty unsavedProperty() {
    return unsaved.getReadOnlyProperty();
  }

  /** The file of the case, once it has one. */
  public ReadOnlyObjectProperty<Optional<Path>> fileProperty() {
    return file.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Optional<String>> undoNameProperty() {
    return undoName.getReadOnlyProperty();
  }

  public ReadOnlyObjectProperty<Optional<String>> redoNameProperty() {
    return redoName.getReadOnlyProperty();
  }

  public ObjectProperty<List<Subject>> selectionProperty() {
    return selection;
  }

  /** The chief subject of the selection. */
  public Optional<Subject> selected() {
    return selection.get().stream().findFirst();
  }

  public void select(Subject... subjects) {
    selection.set(List.of(subjects));
  }

  /** Key of the finding that is being looked at. */
  public ObjectProperty<Optional<String>> findingProperty() {
    return finding;
  }

  /** Opens a finding and selects what it is about. */
  public void look(Finding f) {
    bringUp(f.arch());
    if (step.get() == Step.PRESCRIPTION) {
      step.set(Step.REVIEW);
    }
    selection.set(f.subjects());
    finding.set(Optional.of(f.key()));
  }

  /** Id of the rule whose page is read. */
  public ObjectProperty<Optional<String>> pageProperty() {
    return page;
  }

  /** The value that the survey is asked for: its field is to be brought up. */
  public ObjectProperty<Optional<ChartField>> askedProperty() {
    return asked;
  }

  /** Goes to the field of the chart where a value is wanting. */
  public void goTo(ChartField field) {
    step.set(Step.SURVEY);
    finding.set(Optional.empty());
    List<Tooth> wanting = Wanting.teeth(current().chart(field.arch()), field);
    Optional<Tooth> tooth =
        wanting.stream().findFirst().or(() -> field.teeth().stream().findFirst());
    select(tooth.map(Subject::of).orElseGet(() -> Subject.of(field.arch())));
    bringUp(field.arch());
    asked.set(Optional.of(field));
  }

  /** The field of the prescription that is to be brought up. */
  public ObjectProperty<Optional<FormField>> soughtProperty() {
    return sought;
  }

  /** Goes to a field of the prescription. */
  public void goTo(FormField field) {
    step.set(Step.PRESCRIPTION);
    sought.set(Optional.of(field));
  }

  /**
   * Whose case it is, when that is known here. It is no part of the case: undo knows nothing of it,
   * and it is kept in a file of its own.
   */
  public ReadOnlyObjectProperty<Optional<PatientIdentity>> patientProperty() {
    return patient.getReadOnlyProperty();
  }

  /** Takes over who the patient is. */
  public void know(PatientIdentity identity) {
    completeness = Optional.empty();
    patient.set(Optional.of(identity).filter(p -> !p.isEmpty()));
    refresh();
  }

  /** The practice's picture at the head of what is printed; it is no part of the case. */
  public ObjectProperty<Optional<Letterhead>> letterheadProperty() {
    return letterhead;
  }

  /** Whose case it was when it was saved or laid on the desk. */
  public Optional<PatientIdentity> savedPatient() {
    return savedPatient;
  }

  /** How far the form of the prescription is filled in. */
  public Completeness completeness() {
    if (completeness.isEmpty()) {
      completeness = Optional.of(Completeness.of(assessment(), patient.get()));
    }
    return completeness.get();
  }

  /** Whether all that must be filled in is; no more is worked out for it than is needed. */
  public boolean isComplete() {
    return completeness
        .map(Completeness::isComplete)
        .orElseGet(() -> Completeness.isComplete(assessment(), patient.get()));
  }

  /** Sees to it that an arch is shown. */
  public void bringUp(Arch arch) {
    if (!shown.get().shows(arch)) {
      shown.set(Shown.BOTH);
    }
  }

  /** A remedy that is being thought about: the sheet shows what it would do. */
  public ObjectProperty<Optional<Remedy>> previewProperty() {
    return preview;
  }

  /** Makes the edit of a remedy; undo names it. */
  public void take(Remedy remedy) {
    preview.set(Optional.empty());
    apply(remedy.label(), remedy.arch(), remedy.edit());
  }

  /** A message that stands above the sheet until it is dismissed. */
  public ObjectProperty<Optional<String>> noticeProperty() {
    return notice;
  }

  /** Says a sentence above the sheet, with what can be done about it at once. */
  public void say(String sentence, Offer... what) {
    notice.set(Optional.empty());
    offered = List.of(what);
    offeredFor = sentence;
    notice.set(Optional.of(sentence));
  }

  /** What can be done at once about the notice that stands. */
  public List<Offer> offers() {
    return notice.get().filter(offeredFor::equals).isPresent() ? offered : List.of();
  }

  public ObjectProperty<Step> stepProperty() {
    return step;
  }

  /** The stage of the design that is shown in place of the whole; an edit ends it. */
  public ObjectProperty<Optional<GrowthStage>> stageProperty() {
    return stage;
  }

  public ObjectProperty<Notation> notationProperty() {
    return notation;
  }

  public ObjectProperty<Shown> shownProperty() {
    return shown;
  }

  public BooleanProperty surveyProperty() {
    return survey;
  }

  public BooleanProperty anatomyProperty() {
    return anatomy;
  }

  /** Whether the components on the sheet bear their numbers of the schedule. */
  public BooleanProperty numbersProperty() {
    return numbers;
  }

  /** Whether findings are marked on the sheet. */
  public BooleanProperty markersProperty() {
    return markers;
  }

  /** Whether the limits and weights of the school are being looked at. */
  public BooleanProperty schoolShownProperty() {
    return schoolShown;
  }

  /** Whether the card of a tooth is being looked at. */
  public BooleanProperty cardShownProperty() {
    return cardShown;
  }

  /** Whether the pictures of the soft tissues are being looked at. */
  public BooleanProperty tissueShownProperty() {
    return tissueShown;
  }

  /** Whether the table of all teeth is being filled in. */
  public BooleanProperty quickEntryShownProperty() {
    return quickEntryShown;
  }

  /** What the prescription is printed on. */
  public ObjectProperty<Paper> paperProperty() {
    return paper;
  }

  /** Whether the welcome page is being looked at although a case is open. */
  public BooleanProperty welcomeShownProperty() {
    return welcomeShown;
  }

  /** Whether the pages of the prescription are being looked at. */
  public BooleanProperty pagesShownProperty() {
    return pagesShown;
  }

  /** The school's own profile of this case, kept while another is tried. */
  public Optional<ProfileFile> ownSchool() {
    return ownSchool;
  }

  private void noteSchool(Case next) {
    if (next.profile().standing() == Profile.Standing.OWN) {
      ownSchool = Optional.of(next.schoolProfile());
    }
  }

  public BooleanProperty blackAndWhiteProperty() {
    return blackAndWhite;
  }

  public BooleanProperty darkDeskProperty() {
    return darkDesk;
  }

  /** The colours that the user has chosen for inks. */
  public ReadOnlyObjectProperty<Inks> inksProperty() {
    return inks;
  }

  /** The colours in which the sheet is shown. */
  public Palette palette() {
    return blackAndWhite.get() ? Palette.MONO : inks.get().on(darkDesk.get());
  }

  /** The colours in which the sheet is printed and exported. */
  public Palette printedPalette() {
    return blackAndWhite.get() ? Palette.MONO : inks.get().onPaper();
  }

  /** How large text is, as a multiple of the usual size: 1 to 3. */
  public DoubleProperty textSizeProperty() {
    return textSize;
  }

  /** Whether text is so large that words which stood side by side take lines of their own. */
  public boolean isTextLarge() {
    return textSize.get() >= LARGE_TEXT;
  }

  /** Lays another case on the desk, of a patient of whom nothing is known; it counts as saved. */
  public void lay(Case c, Optional<Path> from) {
    lay(c, from, Optional.empty());
  }

  /** Lays another case on the desk, and who the patient is; it counts as saved. */
  public void lay(Case c, Optional<Path> from, Optional<PatientIdentity> of) {
    if (!show(c)) {
      return;
    }
    completeness = Optional.empty();
    patient.set(of);
    savedPatient = of;
    history.begin(c);
    savedState.set(0);
    ownSchool = Optional.empty();
    noteSchool(c);
    saved = Optional.of(c);
    file.set(from);
    open.set(true);
    shown.set(concerned(c));
    selection.set(List.of());
    finding.set(Optional.empty());
    preview.set(Optional.empty());
    stage.set(Optional.empty());
    refresh();
    welcomeShown.set(false);
    laid.set(laid.get() + 1);
  }

  /**
   * Lays work on the desk that was not saved, of which this program has kept a copy. Where its file
   * still holds the case as it was saved, undo leads back to that.
   *
   * @param beside who the patient is by the file beside that of the case
   * @param edit what undo calls it
   */
  public void recover(
      RecoveryCopy work, Optional<Case> asSaved, Optional<PatientIdentity> beside, String edit) {
    recovering = true;
    try {
      lay(asSaved.orElse(work.subject()), work.file(), beside);
      apply(edit, work.subject());
      if (work.isPatientKept()) {
        completeness = Optional.empty();
        patient.set(work.patient());
      }
      if (asSaved.isEmpty()) {
        saved = Optional.empty();
        savedState.set(-1);
      }
    } finally {
      recovering = false;
    }
    refresh();
  }

  /** The arch that the case is about; both when both or none are. */
  private static Shown concerned(Case c) {
    boolean upper = isTouched(c, Arch.UPPER);
    boolean lower = isTouched(c, Arch.LOWER);
    return upper == lower ? Shown.BOTH : upper ? Shown.UPPER : Shown.LOWER;
  }

  private static boolean isTouched(Case c, Arch arch) {
    return !c.design(arch).components().isEmpty() || !c.chart(arch).equals(ArchChart.full(arch));
  }

  /** Clears the desk, so that the welcome page is shown. */
  public void close() {
    pagesShown.set(false);
    cardShown.set(false);
    tissueShown.set(false);
    quickEntryShown.set(false);
    lay(Case.blank(CaseReference.fresh()), Optional.empty());
    open.set(false);
  }

  public void markSaved(Path path) {
    saved = Optional.of(current());
    savedState.set(history.standing());
    history.endGesture();
    file.set(Optional.of(path));
    refresh();
  }

  /** Notes that who the patient is has been saved in its own file. */
  public void markPatientSaved() {
    patient.set(
        patient
            .get()
            .map(p -> new PatientIdentity(current().reference(), p.name(), p.born(), p.record())));
    savedPatient = patient.get();
    refresh();
  }

  /** Makes an edit that can be taken back by its name. */
  public void apply(String name, Case next) {
    if (!next.equals(current()) && show(next)) {
      history.push(name, next);
      edited();
    }
  }

  public void apply(String name, Arch arch, DesignEdit edit) {
    apply(name, current().with(arch, edit));
  }

  /** Makes an edit that is taken back together with the others of its gesture. */
  public void apply(String name, Case next, Gesture gesture) {
    if (!next.equals(current()) && show(next)) {
      history.push(name, next, gesture);
      edited();
    }
  }

  private void edited() {
    stage.set(Optional.empty());
    if (savedState.get() >= history.standing()) {
      savedState.set(-1);
    }
    refresh();
  }

  public void undo() {
    goTo(history.standing() - 1);
  }

  public void redo() {
    goTo(history.standing() + 1);
  }

  /** Goes to the case as it was after the nth of its edits; 0 is as it was laid on the desk. */
  public void goTo(int edit) {
    int from = history.standing();
    if (history.goTo(edit).filter(c -> c.equals(current()) || show(c)).isEmpty()) {
      history.goTo(from);
    }
    refresh();
  }

  /** The edits of the case in order, also those that have been taken back. */
  public ReadOnlyObjectProperty<List<History.Entry>> editsProperty() {
    return edits.getReadOnlyProperty();
  }

  /** How many of the edits stand. */
  public ReadOnlyIntegerProperty standingProperty() {
    return standing.getReadOnlyProperty();
  }

  /** After how many edits the case was saved last, or laid on the desk; -1 when never so. */
  public ReadOnlyIntegerProperty savedStateProperty() {
    return savedState.getReadOnlyProperty();
  }

  /** A number that grows with every change to what would have to be saved, and with each saving. */
  public ReadOnlyIntegerProperty revisionProperty() {
    return revision.getReadOnlyProperty();
  }

  /** How safe the work is that is not saved. */
  public ObjectProperty<Safety> safetyProperty() {
    return safety;
  }

  public Optional<Component> component(Subject subject) {
    return subject.component().flatMap(current().design(subject.arch())::find);
  }

  /** The tooth that stands for a subject: the first on which it lies; none for a whole arch. */
  public Optional<Tooth> toothOf(Subject subject) {
    if (subject instanceof Subject.OfTooth t) {
      return Optional.of(t.tooth());
    }
    if (subject instanceof Subject.OfArea a) {
      return Optional.of(a.span().first());
    }
    return component(subject).flatMap(c -> c.teeth().stream().findFirst());
  }

  /** Selects what the newer design of an arch has and the older has not, if there is any. */
  public void selectNew(ArchDesign older, ArchDesign newer) {
    List<Subject> fresh =
        newer.components().stream()
            .filter(c -> older.find(c.id()).isEmpty())
            .map(c -> Subject.of(newer.arch(), c))
            .toList();
    if (!fresh.isEmpty()) {
      selection.set(fresh);
    }
  }

  private boolean show(Case next) {
    Assessment derived;
    try {
      derived =
          assessment.isDerived() && next.profile().equals(current().profile())
              ? assessment().next(next)
              : Assessment.of(next);
    } catch (RuntimeException e) {
      // A sheet that cannot be laid out must not take the case down with it.
      notice.set(Optional.of(Words.of("notice.cannot-lay-out", String.valueOf(e.getMessage()))));
      return false;
    }
    noteSchool(next);
    current.set(next);
    selection.set(
        selection.get().stream()
            .filter(s -> s.component().isEmpty() || component(s).isPresent())
            .toList());
    completeness = Optional.empty();
    assessment.set(derived);
    return true;
  }

  private void refresh() {
    unsaved.set(!saved.equals(Optional.of(current())) || !savedPatient.equals(patient.get()));
    undoName.set(history.undoName());
    redoName.set(history.redoName());
    edits.set(history.entries());
    standing.set(history.standing());
    if (!recovering) {
      revision.set(revision.get() + 1);
    }
  }
}
