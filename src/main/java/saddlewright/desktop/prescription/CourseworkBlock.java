package saddlewright.desktop.prescription;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import saddlewright.casefile.order.Coursework;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.prescription.FormField;

/**
 * What a candidate hands in besides the design: number, justifications, the growth of the design.
 */
final class CourseworkBlock extends FieldBlock {
  /** A component that can be justified. */
  private record Part(Arch arch, Component component) {
    String key() {
      return Coursework.key(arch, component.id());
    }

    String name() {
      return Words.of("subject.arch." + arch.code()) + ": " + ComponentWords.full(component);
    }
  }

  private final Worktable table;
  private final RowText candidate;
  private final CheckBox justified = new CheckBox(Words.of("coursework.justified"));
  private final CheckBox stepwise = new CheckBox(Words.of("coursework.stepwise"));
  private final CheckBox sealed = new CheckBox(Words.of("coursework.sealed"));
  private final Rows<Part> parts = new Rows<>(i -> new JustificationRow());
  private final Label none = small("hint-line");

  CourseworkBlock(Worktable table) {
    super(FormField.of("candidate-number"));
    this.table = table;
    Typing typing = new Typing(table, Words.of("edit.field", field().title()));
    candidate =
        new RowText(
            "rx-candidate-number",
            field().title(),
            16,
            s -> true,
            s -> typing.write(p -> p.with(p.coursework().withCandidate(s))),
            typing::end);
    candidate.setMaxWidth(USE_PREF_SIZE);
    switched(justified, "justified", on -> now().withJustified(on));
    switched(stepwise, "stepwise", on -> now().withStepwise(on));
    switched(sealed, "sealed", on -> now().withSealed(on));
    none.setText(Words.of("coursework.no-parts"));
    controls(candidate, justified, parts, none, stepwise, sealed);
  }

  private void switched(CheckBox box, String name, Function<Boolean, Coursework> with) {
    box.setId("coursework-" + name);
    box.setWrapText(true);
    box.setOnAction(e -> apply(with.apply(box.isSelected())));
  }

  private Coursework now() {
    return table.current().prescription().coursework();
  }

  private void apply(Coursework next) {
    table.apply(
        Words.of("edit.coursework"),
        table.current().with(table.current().prescription().with(next)));
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return candidate;
  }

  @Override
  boolean isBlank() {
    return now().candidate().isBlank();
  }

  @Override
  void refresh() {
    candidate.show(now().candidate());
    justified.setSelected(now().justified());
    stepwise.setSelected(now().stepwise());
    sealed.setSelected(now().sealed());
    List<Part> all =
        now().justified()
            ? Stream.of(Arch.values())
                .flatMap(
                    a -> table.current().design(a).components().stream().map(c -> new Part(a, c)))
                .toList()
            : List.of();
    parts.show(all);
    none.setVisible(now().justified() && all.isEmpty());
    none.setManaged(none.isVisible());
  }

  /** Why one component is there, in the candidate's words. */
  private final class JustificationRow implements Rows.Row<Part> {
    private final Label name = small("caption");
    private final Lines words = new Lines();
    private final VBox row = new VBox(2, name, words);
    private final Typing typing = new Typing(table, Words.of("edit.justification"));
    private String key = "";
    private boolean showing;

    private JustificationRow() {
      name.setLabelFor(words);
      words
          .textProperty()
          .addListener(
              o -> {
                if (!showing) {
                  String text = words.getText();
                  typing.write(p -> p.with(p.coursework().withJustification(key, text.strip())));
                }
              });
      words
          .focusedProperty()
          .addListener(
              (o, was, is) -> {
                if (was && !is) {
                  typing.end();
                }
              });
    }

    @Override
    public Node node() {
      return row;
    }

    @Override
    public Node focus() {
      return words;
    }

    @Override
    public void show(Part part) {
      key = part.key();
      words.setId("justification-" + key.replace('/', '-'));
      name.setText(part.name());
      words.setAccessibleText(Words.of("coursework.justification-of", part.name()));
      String now = now().justifications().getOrDefault(key, "");
      if (!words.getText().strip().equals(now)) {
        showing = true;
        words.setText(now);
        showing = false;
      }
      words.grow(false);
    }
  }
}
