package saddlewright.desktop.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.design.Component;
import saddlewright.desktop.Step;

class TermTest {

  @SuppressWarnings("unchecked") // the sealed family of components
  static Stream<Class<? extends Component>> kinds() {
    return Arrays.stream(Component.class.getPermittedSubclasses())
        .map(c -> (Class<? extends Component>) c);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_kind_of_component_has_its_word(Class<? extends Component> kind) {
    assertThat(Term.of(kind)).isPresent();
  }

  @ParameterizedTest
  @EnumSource(Step.class)
  void every_step_has_its_word(Step step) {
    assertThat(Term.of(step)).isPresent();
  }

  @Test
  void no_word_is_about_what_is_not_there() {
    Set<String> known =
        Stream.concat(
                kinds().map(Class::getSimpleName),
                Stream.of(Step.values()).map(s -> "step:" + s.name()))
            .collect(Collectors.toSet());

    assertThat(Term.ALL).flatExtracting(Term::about).isSubsetOf(known).doesNotHaveDuplicates();
  }

  @Test
  void every_word_is_explained_and_sourced_and_stands_once() {
    assertThat(Term.ALL)
        .hasSizeGreaterThan(60)
        .allSatisfy(
            t -> {
              assertThat(t.uk()).isNotBlank();
              assertThat(t.us()).isNotBlank();
              assertThat(t.meaning()).endsWith(".").hasSizeGreaterThan(10);
              assertThat(t.source()).isNotBlank();
            });
    assertThat(Term.ALL).extracting(t -> t.uk().toLowerCase(java.util.Locale.ROOT)).isSorted();
    assertThat(Term.ALL).extracting(Term::uk).doesNotHaveDuplicates();
  }

  /**
   * Pairs of British and North American words as teaching notes of both schools use them; the
   * definitions of fulcrum line and indirect retention are those of the Glossary of Prosthodontic
   * Terms, 9th edition.
   */
  @ParameterizedTest
  @CsvSource({
    "saddle, denture base",
    "free-end saddle, distal extension",
    "occlusally approaching clasp, suprabulge",
    "gingivally approaching clasp, infrabulge",
    "guide surface, guiding plane",
    "survey line, height of contour",
    "support axis, fulcrum line",
    "path of insertion, path of placement",
    "horseshoe, u-shaped",
    "lingual plate, linguoplate",
  })
  void a_word_of_one_school_finds_that_of_the_other(String uk, String us) {
    List<Term> found = Term.ALL.stream().filter(t -> t.matches(Sought.words(us))).toList();

    assertThat(found).extracting(t -> t.uk().toLowerCase(java.util.Locale.ROOT)).contains(uk);
  }
}
