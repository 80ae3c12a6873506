package saddlewright.desktop.preferences;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.inks.Inks;
import saddlewright.drawing.Ink;
import saddlewright.prescription.pdf.Paper;
import saddlewright.rules.Profile;

class PreferencesTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve(Preferences.FILE);
  }

  private Preferences from(String text) throws IOException {
    Files.writeString(file(), text);
    return Preferences.in(folder);
  }

  @Test
  void every_preference_comes_back_from_its_file() {
    Preferences p = Preferences.in(folder);
    Path school = folder.resolve("our school.json");
    p.textSizeProperty().set(1.75);
    p.notationProperty().set(Notation.PALMER);
    p.paperProperty().set(Paper.LETTER);
    p.appearanceProperty().set(Appearance.DARK);
    p.recentPrivateProperty().set(true);
    p.schoolProperty().set(NewCaseSchool.of(school));
    p.roleProperty().set(SigningRole.TUTOR);
    p.inkProperty(false, Ink.REST).set(Optional.of("#102030"));
    p.inkProperty(true, Ink.RETENTIVE).set(Optional.of("#ffeedd"));

    Preferences again = Preferences.in(folder);

    assertThat(again.troubleProperty().get()).isEmpty();
    assertThat(again.textSizeProperty().get()).isEqualTo(1.75);
    assertThat(again.notationProperty().get()).isEqualTo(Notation.PALMER);
    assertThat(again.paperProperty().get()).isEqualTo(Paper.LETTER);
    assertThat(again.darkProperty().get()).isTrue();
    assertThat(again.recentPrivateProperty().get()).isTrue();
    assertThat(again.schoolProperty().get().file()).contains(school.toAbsolutePath());
    assertThat(again.roleProperty().get()).isEqualTo(SigningRole.TUTOR);
    assertThat(again.inksProperty().get())
        .isEqualTo(new Inks(Map.of(Ink.REST, "#102030"), Map.of(Ink.RETENTIVE, "#ffeedd")));
  }

  @Test
  void the_file_is_commented_and_is_one_that_java_reads_as_properties() throws IOException {
    Preferences p = Preferences.in(folder);
    assertThat(file()).doesNotExist();

    p.schoolProperty().set(NewCaseSchool.of(folder.resolve("a\\b #1 = é.json")));

    Properties read = new Properties();
    try (var in = Files.newBufferedReader(file(), StandardCharsets.UTF_8)) {
      read.load(in);
    }
    assertThat(read.getProperty("school-of-new-cases"))
        .isEqualTo(folder.resolve("a\\b #1 = é.json").toAbsolutePath().toString());
    assertThat(read.getProperty("notation")).isEqualTo("fdi");
    assertThat(Files.readString(file())).contains("# How teeth are numbered: one of fdi, palmer");
  }

  @Test
  void a_broken_line_is_passed_over_with_a_sentence_that_says_where() throws IOException {
    Preferences p =
        from("text-size = huge\nnotation = palmer\npaper = \\u12\nink.light.rest = red\n");

    assertThat(p.notationProperty().get()).isEqualTo(Notation.PALMER);
    assertThat(p.textSizeProperty().get()).isEqualTo(1);
    assertThat(p.paperProperty().get()).isEqualTo(Paper.A4);
    assertThat(p.inksProperty().get()).isEqualTo(Inks.USUAL);
    assertThat(p.troubleProperty().get().orElseThrow())
        .contains("line 1: text-size is “huge”, which is not a number from 1.0 to 3.0")
        .contains("line 3: “paper = \\u12” cannot be read")
        .contains("line 4: ink.light.rest is “red”, which is not a colour such as #0a5b9f")
        .doesNotContain("line 2");
  }

  @Test
  void what_the_user_wrote_stays_when_one_thing_is_changed() throws IOException {
    String before =
        "# mine\n\nfrom-the-future = 7\nnotation: palmer\ntext-size = huge\nlong = a \\\n   b\n";
    Preferences p = from(before);

    p.notationProperty().set(Notation.UNIVERSAL);

    assertThat(Files.readString(file()))
        .startsWith(before.replace("notation: palmer", "notation = universal"));
  }

  @Test
  void what_another_process_changed_meanwhile_is_not_undone() throws IOException {
    Preferences p = from("notation = palmer\npaper = a4\n");
    Files.writeString(file(), "notation = palmer\npaper = letter\n");

    p.notationProperty().set(Notation.FDI);

    assertThat(Files.readString(file())).startsWith("notation = fdi\npaper = letter\n");
  }

  @Test
  void no_file_keeps_the_program_from_starting() throws IOException {
    Files.write(file(), new byte[] {(byte) 0xff, (byte) 0xfe, 0, '=', '\\', 'u', 'x', 10});
    assertThat(Preferences.in(folder).notationProperty().get()).isEqualTo(Notation.FDI);

    Files.delete(file());
    Files.createDirectory(file());
    Preferences p = Preferences.in(folder);
    assertThat(p.troubleProperty().get().orElseThrow()).contains("cannot be read");

    p.notationProperty().set(Notation.PALMER);
    assertThat(p.notationProperty().get()).isEqualTo(Notation.PALMER);
    assertThat(p.troubleProperty().get().orElseThrow()).contains("is not kept");
  }

  @Test
  void paper_is_taken_over_from_where_it_stood_before() throws IOException {
    Files.writeString(folder.resolve("printing.properties"), "paper=LETTER\nscreen.x=4.2\n");

    assertThat(Preferences.in(folder).paperProperty().get()).isEqualTo(Paper.LETTER);
    assertThat(folder.resolve("printing.properties")).content().contains("paper=LETTER");
  }

  @Test
  void an_ink_that_is_the_usual_one_again_leaves_no_line() throws IOException {
    Preferences p = Preferences.in(folder);
    p.inkProperty(true, Ink.REST).set(Optional.of("#123456"));
    assertThat(file()).content().contains("ink.dark.rest = #123456");

    p.inkProperty(true, Ink.REST).set(Optional.empty());
    assertThat(file()).content().doesNotContain("ink.dark.rest");
  }

  @Test
  void a_reset_can_be_taken_back() {
    Preferences p = Preferences.in(folder);
    p.inkProperty(false, Ink.MESH).set(Optional.of("#000001"));
    p.notationProperty().set(Notation.PALMER);
    Map<String, String> before = p.texts();

    p.reset(Preferences.Group.INKS);
    assertThat(p.inksProperty().get()).isEqualTo(Inks.USUAL);
    assertThat(p.notationProperty().get()).isEqualTo(Notation.PALMER);
    p.resetAll();
    assertThat(p.isUsual()).isTrue();

    p.take(before);
    assertThat(Preferences.in(folder).texts()).isEqualTo(before);
  }

  @Test
  void the_size_of_text_stays_within_its_bounds() {
    Preferences p = Preferences.usual();
    p.textSizeProperty().set(9);
    assertThat(p.textSizeProperty().get()).isEqualTo(3);
    p.textSizeProperty().set(0.2);
    assertThat(p.textSizeProperty().get()).isEqualTo(1);
  }

  @Test
  void a_dark_desk_that_is_asked_for_outlasts_a_light_system() {
    Preferences p = Preferences.usual();
    p.systemDarkProperty().set(true);
    assertThat(p.darkProperty().get()).isTrue();

    p.darkProperty().set(false);
    assertThat(p.appearanceProperty().get()).isEqualTo(Appearance.LIGHT);
    p.darkProperty().set(true);
    p.systemDarkProperty().set(false);
    assertThat(p.darkProperty().get()).isTrue();
  }

  @Test
  void what_is_changed_at_one_desk_is_changed_at_all() {
    Preferences p = Preferences.in(folder);
    Worktable one = new Worktable(p);
    Worktable other = new Worktable(p);

    one.notationProperty().set(Notation.UNIVERSAL);
    one.darkDeskProperty().set(true);
    p.inkProperty(true, Ink.NOTE).set(Optional.of("#abcdef"));

    assertThat(other.notationProperty().get()).isEqualTo(Notation.UNIVERSAL);
    assertThat(other.darkDeskProperty().get()).isTrue();
    assertThat(other.inksProperty().get().on(true).hex(Ink.NOTE)).isEqualTo("#abcdef");
  }

  @Test
  void new_cases_are_judged_by_the_school_that_is_preferred() throws Exception {
    Preferences p = from("school-of-new-cases = hygiene-first\n");

    assertThat(p.schoolProperty().get().profile().profile()).isEqualTo(Profile.HYGIENE_FIRST);
  }
}
