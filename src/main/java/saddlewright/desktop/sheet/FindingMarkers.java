package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Arch;
import saddlewright.desktop.AfterTheSheet;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Callouts;
import saddlewright.drawing.PlacedCallout;
import saddlewright.geometry.Box;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;
import saddlewright.prescription.FindingSign;
import saddlewright.rules.Finding;
import saddlewright.rules.Report;

/** Signs of the findings on the sheet, beside what they are about; a click opens the finding. */
final class FindingMarkers extends Group {
  /** Least width and height of what can be clicked, pixels. */
  private static final double TARGET = 24;

  /** Half the height of a sign, pixels. */
  private static final double LEAST = 9;

  private static final double MOST = 14;

  private final SheetPane sheet;
  private final Worktable table;
  private final Ghost ghost;
  private final AfterTheSheet pause = new AfterTheSheet(this::rebuild);

  FindingMarkers(SheetPane sheet, Worktable table, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.ghost = ghost;
    setId("finding-markers");
    // Finding free places costs more than the edit: the sheet is to change before the signs do.
  }

  /** Sets the signs anew, shortly. */
  void update() {
    pause.ask();
  }

  private void rebuild() {
    getChildren().clear();
    if (!table.markersProperty().get() || !table.openProperty().get()) {
      return;
    }
    List<FindingSign> signs = FindingSign.onScreen(table.assessment().report());
    Map<Callout, FindingSign> meaning =
        signs.stream().collect(Collectors.toMap(FindingSign::callout, s -> s, (a, b) -> a));
    List<Callout> callouts = signs.stream().map(FindingSign::callout).toList();
    MarkNodes maker = new MarkNodes(sheet.palette());
    for (Arch arch : Arch.values()) {
      Optional<Transform> place = sheet.place(arch);
      if (place.isPresent()) {
        Layout layout = table.assessment().arch(arch).layout();
        List<PlacedCallout> placed =
            Callouts.of(layout, sheet.drawNumbered(layout), callouts, size());
        for (PlacedCallout c : placed) {
          c.leader(place.get()).forEach(m -> getChildren().add(maker.of(m)));
        }
        for (PlacedCallout c : placed) {
          getChildren().add(marker(c, place.get(), maker, meaning.get(c.callout())));
        }
      }
    }
  }

  /** Signs are drawn to scale, but neither so small that they can't be read nor so large. */
  private double size() {
    double pixels = PlacedCallout.RADIUS * sheet.camera().scaleProperty().get();
    return Math.max(LEAST, Math.min(MOST, pixels)) / pixels;
  }

  private Node marker(PlacedCallout c, Transform place, MarkNodes maker, FindingSign sign) {
    Group out = new Group();
    out.getStyleClass().add("finding-marker");
    List<Node> nodes = new ArrayList<>();
    c.sign(place).forEach(m -> nodes.add(maker.of(m)));
    Box b = c.box(place);
    double least = TARGET / sheet.camera().scaleProperty().get();
    double wider = Math.max(0, least - b.width()) / 2;
    double higher = Math.max(0, least - b.height()) / 2;
    Rectangle target =
        new Rectangle(
            b.minX() - wider, b.minY() - higher, b.width() + 2 * wider, b.height() + 2 * higher);
    target.setFill(Color.TRANSPARENT);
    target.setCursor(Cursor.HAND);
    target.setUserData(sign);
    String words = words(sign);
    target.setAccessibleRole(AccessibleRole.BUTTON);
    target.setAccessibleText(words);
    Tooltip.install(target, new Tooltip(words));
    target.addEventHandler(
        MouseEvent.ANY,
        e -> {
          if (e.getEventType() == MouseEvent.MOUSE_CLICKED) {
            open(sign);
          } else if (e.getEventType() == MouseEvent.MOUSE_MOVED) {
            ghost.clear();
          }
          e.consume();
        });
    nodes.add(target);
    out.getChildren().setAll(nodes);
    return out;
  }

  /** Opens the first of its findings that is not open, or goes to the first value that it asks. */
  private void open(FindingSign sign) {
    if (sign.findings().isEmpty()) {
      table.goTo(sign.fields().get(0));
      return;
    }
    List<String> keys = sign.findings();
    int at = table.findingProperty().get().map(keys::indexOf).orElse(-1);
    String next = keys.get((at + 1) % keys.size());
    findings().stream().filter(f -> f.key().equals(next)).findFirst().ifPresent(table::look);
  }

  private String words(FindingSign sign) {
    List<String> lines = new ArrayList<>();
    findings().stream()
        .filter(f -> sign.findings().contains(f.key()))
        .forEach(f -> lines.add(f.sentence()));
    for (ChartField f : sign.fields()) {
      lines.add(Words.of("question.sentence", f.words()));
    }
    return String.join("\n", lines);
  }

  private List<Finding> findings() {
    return table.assessment().report().entries().stream().map(Report.Entry::finding).toList();
  }
}
