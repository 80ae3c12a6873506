package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Actions;
import saddlewright.desktop.help.Dependency;
import saddlewright.desktop.help.StepHelp;
import saddlewright.desktop.help.Term;
import saddlewright.rules.RuleBook;

/** Help, glossary and About as they are read in their windows. */
class HelpWindowsTest {
  private static final Path CASE = Path.of("demo-cases/10-fault-lower-class-2.json");

  @TempDir Path folder;
  private OnStage desk;

  @BeforeEach
  void open() throws Exception {
    desk = OnStage.open(folder);
  }

  @AfterEach
  void close() throws Exception {
    desk.close();
  }

  private List<String> texts(Node pane) throws Exception {
    return OnStage.run(
        () -> {
          pane.applyCss();
          return pane.lookupAll("*").stream()
              .filter(n -> n instanceof Labeled)
              .map(n -> ((Labeled) n).getText())
              .toList();
        });
  }

  private Node pane(String title, Runnable opening) throws Exception {
    return OnStage.run(
        () -> {
          opening.run();
          return desk.window
              .help()
              .window(
                  title,
                  () -> {
                    throw new AssertionError(title + " was not opened");
                  },
                  0,
                  0)
              .pane();
        });
  }

  private Node help() throws Exception {
    return pane("help.title", desk.window.help()::step);
  }

  private static void type(Node pane, String id, String text) throws Exception {
    OnStage.run(
        () -> {
          pane.applyCss();
          ((TextField) pane.lookup("#" + id)).setText(text);
          return null;
        });
  }

  private static void follow(Node pane, String text) throws Exception {
    OnStage.run(
        () -> {
          pane.applyCss();
          pane.lookupAll(".hyperlink").stream()
              .map(n -> (Hyperlink) n)
              .filter(l -> l.getText().equals(text))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no link " + text))
              .fire();
          return null;
        });
  }

  @Test
  void help_follows_the_step_and_lists_its_rules() throws Exception {
    Node help = help();
    assertThat(texts(help)).contains("1. Chart", "What is decided", "By pointer", "By keyboard");

    OnStage.run(
        () -> {
          desk.table().stepProperty().set(Step.SUPPORT);
          return null;
        });

    assertThat(texts(help))
        .contains("4. Support")
        .containsAll(
            StepHelp.of(Step.SUPPORT).rules().stream().map(r -> Words.capital(r.claim())).toList());
  }

  @Test
  void every_rule_is_found_under_one_step() {
    Set<String> listed =
        java.util.stream.Stream.of(Step.values())
            .flatMap(s -> StepHelp.of(s).rules().stream())
            .map(r -> r.id())
            .collect(Collectors.toSet());

    assertThat(listed).hasSize(RuleBook.rules().size());
  }

  @Test
  void help_says_what_is_selected_and_leads_to_the_page_of_a_rule_that_judges_it()
      throws Exception {
    OnStage.run(
        () -> {
          desk.window.open(CASE);
          desk.table().stepProperty().set(Step.RETENTION);
          Clasp clasp =
              (Clasp)
                  desk.table().current().lowerDesign().components().stream()
                      .filter(c -> c instanceof Clasp)
                      .findFirst()
                      .orElseThrow();
          desk.table().select(Subject.of(saddlewright.dentition.Arch.LOWER, clasp));
          return null;
        });
    desk.settle();
    Node help = help();
    var finding =
        desk.table().assessment().report().standing().stream()
            .filter(f -> f.subjects().contains(desk.table().selected().orElseThrow()))
            .findFirst()
            .orElseThrow();
    String claim = Words.capital(RuleBook.find(finding.ruleId()).orElseThrow().claim());

    assertThat(texts(help)).contains(Term.of(Clasp.class).orElseThrow().meaning(), claim);

    follow(help, claim);
    assertThat(texts(help)).contains("Why").doesNotContain("By pointer");

    OnStage.run(
        () -> {
          ((Button) help.lookup("#help-back")).fire();
          return null;
        });
    assertThat(texts(help)).contains("By pointer");
  }

  @Test
  void a_search_finds_steps_terms_and_rules() throws Exception {
    Node help = help();
    type(help, "help-search", "infrabulge");
    assertThat(texts(help)).contains("Gingivally approaching clasp (UK)");

    type(help, "help-search", "every clasped tooth");
    assertThat(texts(help)).contains("A tooth that bears a clasp bears a rest.");

    type(help, "help-search", "xyzzy");
    assertThat(texts(help)).anyMatch(t -> t.startsWith("Nothing does."));
  }

  @Test
  void the_glossary_narrows_as_one_types() throws Exception {
    Node glossary = pane("glossary.title", desk.window.help()::glossary);
    assertThat(texts(glossary)).contains(Term.ALL.size() + " terms");

    type(glossary, "glossary-search", "Height of Contour");
    assertThat(texts(glossary)).contains("One term", "Survey line (UK)");
  }

  @Test
  void about_names_version_cautions_and_all_that_comes_with_it() throws Exception {
    Node about = pane("about.title", desk.window.help()::about);

    assertThat(texts(about))
        .containsAll(Dependency.ALL.stream().map(Dependency::name).toList())
        .containsAll(saddlewright.casefile.Cautions.FULL.stream().map(s -> "•  " + s).toList())
        .anyMatch(t -> t.startsWith("Version "));
  }

  @Test
  void the_welcome_page_is_shown_again_over_a_case_and_left_by_taking_one() throws Exception {
    OnStage.run(
        () -> {
          desk.window.open(CASE);
          desk.window.help().welcome();
          return null;
        });
    assertThat(desk.find("welcome", Node.class).isVisible()).isTrue();

    desk.press("welcome-back");
    assertThat(desk.find("welcome", Node.class).isVisible()).isFalse();
    assertThat(desk.table().fileProperty().get()).isEqualTo(Optional.of(CASE));
  }

  @Test
  void every_demo_case_and_every_step_of_the_order_gets_its_picture() throws Exception {
    long drawn = 0;
    for (int i = 0; i < 600 && drawn < 12 + 7; i++) {
      Thread.sleep(50);
      drawn =
          OnStage.run(
              () ->
                  java.util.stream.Stream.of("demo-cases", "order-picture")
                      .flatMap(id -> desk.find(id, Node.class).lookupAll("ImageView").stream())
                      .filter(n -> ((javafx.scene.image.ImageView) n).getImage() != null)
                      .count());
    }
    assertThat(drawn).isEqualTo(12 + 7);
    assertThat(desk.find("demo-cases", javafx.scene.layout.Pane.class).getChildren())
        .as("a card is as high as its picture or its words, not higher")
        .allSatisfy(
            card -> assertThat(card.getBoundsInParent().getHeight()).isBetween(90.0, 160.0));
  }

  /** Every key that the help names is one of the window's, as its menus bind them. */
  @Test
  void help_names_no_key_that_does_nothing() throws Exception {
    Set<String> bound =
        OnStage.run(
            () ->
                Actions.of(desk.window.menus()).stream()
                    .flatMap(a -> a.keys().stream())
                    .map(KeyCombination::getDisplayText)
                    .collect(Collectors.toSet()));
    // In a field of the form, where no menu reaches.
    bound.add("Alt+Down");
    Pattern key = Pattern.compile("\\b(?:(?:Ctrl|Alt|Shift)\\+)*(?:F\\d+|(?<=\\+)[A-Z][a-z]*)");
    try (var pages = Files.list(Path.of("src/main/resources/saddlewright/help"))) {
      for (Path page : pages.toList()) {
        Matcher m = key.matcher(read(page));
        while (m.find()) {
          assertThat(bound).as(page.toString()).contains(m.group());
        }
      }
    }
  }

  private static String read(Path page) throws IOException {
    return Files.readString(page, StandardCharsets.UTF_8);
  }
}
