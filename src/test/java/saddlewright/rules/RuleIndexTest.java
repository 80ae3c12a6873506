package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The index of the rule pages says what the code says. Run with -Dsaddlewright.write-expected=true
 * to write it anew.
 */
class RuleIndexTest {
  private static final Path INDEX = Path.of("docs", "rules", "README.md");

  @Test
  void the_index_is_up_to_date() throws IOException {
    if (Boolean.getBoolean("saddlewright.write-expected")) {
      Files.writeString(INDEX, index());
    }
    assertThat(Files.readString(INDEX)).isEqualTo(index());
  }

  private static String index() {
    StringBuilder out = new StringBuilder();
    out.append("# The rule book\n\n")
        .append("One rule, one claim, one page: ")
        .append(RuleBook.rules().size())
        .append(
            " of them. A finding says what was measured and what is required, and offers edits"
                + " where the cure is certain. A rule never stops an edit. What was not charted is"
                + " not passed: the rule says that it cannot be judged, and what is wanting.\n\n")
        .append("- **MUST**: a fault that a teacher would not pass.\n")
        .append("- **SHOULD**: a departure from usual teaching that wants a reason.\n")
        .append("- **CONSIDER**: a prompt.\n\n")
        .append(
            "After each source stands how far it was checked: *read in the source* (or in notes"
                + " that quote it), *from memory*, *common practice*, or *derived* with its"
                + " reasoning. Findings are general teaching rules and not advice on a patient.\n");
    for (RuleGroup g : RuleGroup.values()) {
      out.append("\n## ").append(g.title()).append("\n\n");
      out.append("| rule | severity | claim |\n|---|---|---|\n");
      for (Rule r : g.rules()) {
        out.append("| [").append(r.id()).append("](").append(r.id()).append(".md) | ");
        out.append(r.severity()).append(r.isHardStop() ? " (hard stop)" : "");
        out.append(" | ").append(r.claim()).append(" |\n");
      }
    }
    for (Profile p : Profile.BUILT_IN) {
      limits(p, out);
    }
    return out.toString();
  }

  private static void limits(Profile p, StringBuilder out) {
    boolean first = p == Profile.UK_TEACHING;
    out.append("\n## Limits of the profile \"").append(p.title()).append("\"\n\n");
    out.append("Indirect retention is judged about the ").append(p.axis().words()).append(".");
    out.append(first ? "\n" : " Only what departs from UK teaching is listed.\n");
    List<String> rows = new ArrayList<>();
    for (Quantity q : Quantity.values()) {
      if (first || !p.limits().get(q).equals(Profile.UK_TEACHING.limits().get(q))) {
        String number = BigDecimal.valueOf(p.limit(q)).stripTrailingZeros().toPlainString();
        String reason = p.limits().get(q).reason();
        rows.add(row(q.words(), (number + " " + q.unit()).strip(), p.source(q), reason));
      }
    }
    if (!rows.isEmpty()) {
      out.append("\n| quantity | limit | source |\n|---|---|---|\n");
      rows.forEach(out::append);
    }
    if (!p.weights().isEmpty()) {
      out.append("\n| rule | weighs here | source |\n|---|---|---|\n");
      p.weights()
          .forEach(
              (id, w) ->
                  out.append(
                      row(
                          id,
                          w.severity().map(Enum::name).orElse("not taught"),
                          w.source(),
                          w.reason())));
    }
  }

  private static String row(String name, String value, Source s, String reason) {
    String because = reason.isEmpty() ? "" : "; because " + reason;
    String source = s.citation() + " (" + s.evidence().words() + ")" + because;
    return "| " + name + " | " + value + " | " + source + " |\n";
  }
}
