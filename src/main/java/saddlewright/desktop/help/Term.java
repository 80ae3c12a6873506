package saddlewright.desktop.help;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import saddlewright.dentition.DataTable;
import saddlewright.design.Component;
import saddlewright.desktop.Step;

/**
 * A word of the trade.
 *
 * @param uk what it is called in British teaching and in this program
 * @param us what it is called in North American teaching
 * @param meaning what it is, in our own words
 * @param about kinds of components and steps that it names
 * @param source where the words are taken from
 */
public record Term(String uk, String us, String meaning, List<String> about, String source) {
  /** The glossary, by British word. */
  public static final List<Term> ALL = DataTable.rows("glossary").stream().map(Term::of).toList();

  public Term {
    about = List.copyOf(about);
  }

  private static Term of(Map<String, String> row) {
    String about = row.get("about");
    return new Term(
        row.get("uk"),
        row.get("us"),
        row.get("meaning"),
        about.isEmpty() ? List.of() : Arrays.asList(about.split("\\|")),
        row.get("source"));
  }

  /** The word for a kind of component. */
  public static Optional<Term> of(Class<? extends Component> kind) {
    return about(kind.getSimpleName());
  }

  /** The word for what is decided at a step. */
  public static Optional<Term> of(Step step) {
    return about("step:" + step.name());
  }

  private static Optional<Term> about(String what) {
    return ALL.stream().filter(t -> t.about().contains(what)).findFirst();
  }

  /** The word in both usages, once where they agree. */
  public String both() {
    return uk.equalsIgnoreCase(us) ? uk : uk + " / " + us;
  }

  /** Whether all these words occur in it. */
  public boolean matches(List<String> words) {
    String all = (uk + " " + us + " " + meaning).toLowerCase(Locale.ROOT);
    return words.stream().allMatch(all::contains);
  }
}
