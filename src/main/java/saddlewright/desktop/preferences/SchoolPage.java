package saddlewright.desktop.preferences;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.stage.FileChooser;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.ProfileStore;
import saddlewright.desktop.FileQuestion;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.rules.Departure;
import saddlewright.rules.Profile;

/** The school by whose profile new cases are judged: a built-in one, or a file of the school's. */
final class SchoolPage extends Page {
  private final Preferences preferences;
  private final ComboBox<NewCaseSchool> school = new ComboBox<>();
  private final Label about = words("", "preferences-hint");
  private final Label trouble = words("", "field-error");

  SchoolPage(Preferences preferences) {
    super("school");
    this.preferences = preferences;
    say(Words.of("preferences.school-intro"));
    school.setId("preferences-school");
    school.setConverter(new InWords<>(SchoolPage::name));
    fill();
    school.valueProperty().bindBidirectional(preferences.schoolProperty());
    row(Words.of("preferences.school"), school, Optional.empty());
    Button choose = new Button(Words.of("preferences.school-choose"));
    choose.setId("preferences-school-file");
    choose.setOnAction(e -> choose());
    row(
        Words.of("preferences.school-own"),
        choose,
        Optional.of(Words.of("preferences.school-own-hint")));
    trouble.setId("preferences-school-trouble");
    trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
    about.setId("preferences-school-about");
    add(trouble);
    heading(Words.of("preferences.school-about"));
    add(about);
    preferences
        .schoolProperty()
        .addListener(
            o -> {
              fill();
              tell();
            });
    tell();
  }

  private void fill() {
    Profile.BUILT_IN.stream().map(NewCaseSchool::of).forEach(this::offer);
    offer(preferences.schoolProperty().get());
  }

  private void offer(NewCaseSchool s) {
    if (!school.getItems().contains(s)) {
      school.getItems().add(s);
    }
  }

  private static String name(NewCaseSchool s) {
    return s.file()
        .map(AtomicFile::nameOf)
        .orElseGet(() -> Profile.builtIn(s.builtIn()).map(Profile::title).orElse(s.builtIn()));
  }

  private void choose() {
    FileChooser question = new FileChooser();
    question.setTitle(Words.of("preferences.school-choose"));
    question
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Words.of("school.profile"), "*.json"));
    FileQuestion.toOpen(question, school.getScene().getWindow()).ifPresent(this::take);
  }

  /** Takes a file that holds a profile; what is wrong with another is said here. */
  void take(Path file) {
    try {
      ProfileStore.load(file);
      preferences.schoolProperty().set(NewCaseSchool.of(file));
    } catch (CaseFileException e) {
      trouble.setText(e.sentences());
    }
  }

  /** Says of the school that is chosen what it holds otherwise than the one it is based on. */
  private void tell() {
    try {
      Profile p = preferences.schoolProperty().get().profile().profile();
      trouble.setText("");
      List<Departure> departures = p.departures();
      about.setText(
          departures.isEmpty()
              ? Words.of("preferences.school-plain", p.label())
              : Words.of(
                  "preferences.school-departs", p.label(), p.base().title(), departures.size()));
    } catch (CaseFileException e) {
      trouble.setText(e.sentences());
      about.setText("");
    }
  }

  @Override
  void look() {
    // The file may have been mended, or lost, since.
    tell();
  }

  @Override
  void reset() {
    preferences.reset(Preferences.Group.SCHOOL);
  }

  @Override
  Runnable wayBack() {
    Map<String, String> now = preferences.texts();
    return () -> preferences.take(now);
  }
}
