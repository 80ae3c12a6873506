package saddlewright.desktop.prescription;

import java.util.EnumMap;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.AuditedVariable;
import saddlewright.prescription.FormField;

/** What the schedule holds of the four audited variables, arch by arch, each a way to its step. */
final class ScheduleBlock extends FieldBlock {
  private static final PseudoClass FILLED = PseudoClass.getPseudoClass("filled");

  /** The line of one arch. */
  private record Line(Label count, FlowPane row, Map<AuditedVariable, Hyperlink> links) {}

  private final Worktable table;
  private final Map<Arch, Line> lines = new EnumMap<>(Arch.class);
  private final VBox all = new VBox(4);

  ScheduleBlock(Worktable table) {
    super(FormField.of("component-schedule"));
    this.table = table;
    for (Arch arch : Arch.values()) {
      Label count = small("fact");
      Map<AuditedVariable, Hyperlink> links = new EnumMap<>(AuditedVariable.class);
      FlowPane row = new FlowPane(12, 2);
      for (AuditedVariable v : AuditedVariable.values()) {
        Hyperlink link = new Hyperlink();
        link.getStyleClass().add("audited");
        link.setId("audited-" + arch.code() + "-" + v);
        link.setOnAction(
            e -> {
              table.select();
              table.shownProperty().set(Worktable.Shown.BOTH);
              table.stepProperty().set(step(v));
            });
        links.put(v, link);
        row.getChildren().add(link);
      }
      lines.put(arch, new Line(count, row, links));
      all.getChildren().addAll(count, row);
    }
    controls(all);
    hint(Words.of("schedule.hint"));
  }

  private static Step step(AuditedVariable v) {
    return switch (v) {
      case SADDLES -> Step.SADDLES;
      case SUPPORT -> Step.SUPPORT;
      case RETENTION -> Step.RETENTION;
      case CONNECTORS -> Step.CONNECTORS;
    };
  }

  @Override
  boolean isWide() {
    return true;
  }

  /** The first variable that is wanting. */
  @Override
  Node focus() {
    return lines.entrySet().stream()
        .filter(e -> !table.current().design(e.getKey()).components().isEmpty())
        .flatMap(
            e ->
                e.getValue().links().entrySet().stream()
                    .filter(l -> !l.getKey().isIn(table.current().design(e.getKey()))))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(lines.get(Arch.UPPER).links().get(AuditedVariable.SADDLES));
  }

  @Override
  void refresh() {
    lines.forEach(
        (arch, line) -> {
          ArchDesign d = table.current().design(arch);
          boolean designed = !d.components().isEmpty();
          line.count()
              .setText(
                  Words.of(
                      designed ? "schedule.arch" : "schedule.no-design",
                      Words.of("subject.arch." + arch.code()),
                      d.components().size()));
          line.links()
              .forEach(
                  (v, link) -> {
                    boolean in = v.isIn(d);
                    link.setText(
                        Words.of(in ? "level.sign.filled" : "level.sign.open") + " " + Words.of(v));
                    link.setAccessibleText(
                        Words.of(
                            in ? "schedule.heard" : "schedule.heard-wanting",
                            Words.of("subject.arch." + arch.code()),
                            Words.of(v)));
                    link.pseudoClassStateChanged(FILLED, in);
                  });
          line.row().setVisible(designed);
          line.row().setManaged(designed);
        });
  }
}
