package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.scene.Cursor;
import javafx.scene.Group;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.Facts;
import saddlewright.desktop.tools.Proposal;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Situation;

/** What can be grabbed on a selected major connector: its borders, where they cross the midline. */
final class ConnectorHandles extends Group {
  /** Usual least clearance of lower bars from gingival margins, mm (widely taught). */
  private static final double LOWER_CLEARANCE = 3;

  /** Usual least clearance of upper borders, mm (widely taught). */
  private static final double UPPER_CLEARANCE = 6;

  private static final double TARGET = 26;

  private final SheetPane sheet;
  private final Worktable table;
  private final Ghost ghost;
  private boolean dragging;

  ConnectorHandles(SheetPane sheet, Worktable table, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.ghost = ghost;
  }

  void update() {
    if (dragging) {
      return;
    }
    getChildren().clear();
    Optional<Subject> selected = table.selected();
    selected
        .flatMap(table::component)
        .filter(MajorConnector.class::isInstance)
        .map(MajorConnector.class::cast)
        .ifPresent(c -> place(selected.get().arch(), c));
  }

  private void place(Arch arch, MajorConnector c) {
    Situation s = table.assessment().arch(arch);
    Optional<Laid> laid = s.layout().find(c.id());
    if (laid.isEmpty() || laid.get().body().isEmpty()) {
      return;
    }
    List<Path> metal = laid.get().body().inside(Path.of(new Point(0, -5), new Point(0, 100)));
    if (metal.isEmpty()) {
      return;
    }
    List<Double> ys = new ArrayList<>();
    for (Path p : metal) {
      ys.add(Math.min(p.start().y(), p.end().y()));
      ys.add(Math.max(p.start().y(), p.end().y()));
    }
    ys.sort(null);
    double first = ys.get(0);
    double last = ys.get(ys.size() - 1);
    ConnectorShape shape = c.shape();
    if (arch == Arch.LOWER) {
      if (c.form() != ConnectorForm.LINGUAL_PLATE && c.form() != ConnectorForm.DENTAL_BAR) {
        double clear =
            shape
                .clearance()
                .orElse(laid.get().measure(Measure.MARGIN_CLEARANCE).orElse(LOWER_CLEARANCE));
        add(
            arch,
            c,
            last - height(c, laid.get(), first, last),
            "handle.clearance",
            (sh, dy) -> sh.withClearance(Optional.of(limit(clear + dy, 0, 15))));
      }
      double height = height(c, laid.get(), first, last);
      add(
          arch,
          c,
          last,
          "handle.height",
          (sh, dy) -> sh.withHeight(Optional.of(limit(height + dy, 1, 25))));
      return;
    }
    add(
        arch,
        c,
        first,
        "handle.anterior",
        (sh, dy) ->
            sh.withBorders(
                Optional.of(limit(first + dy, 0, 78)), keep(sh.posteriorBorder(), last)));
    if (c.form() != ConnectorForm.HORSESHOE) {
      add(
          arch,
          c,
          last,
          "handle.posterior",
          (sh, dy) ->
              sh.withBorders(
                  keep(sh.anteriorBorder(), first), Optional.of(limit(last + dy, 2, 80))));
    }
    if (ys.size() >= 4) {
      double open = ys.get(1);
      double close = ys.get(2);
      add(
          arch,
          c,
          open,
          "handle.opening-front",
          (sh, dy) ->
              sh.withOpening(Optional.of(limit(open + dy, 0, 78)), keep(sh.openingBack(), close)));
      add(
          arch,
          c,
          close,
          "handle.opening-back",
          (sh, dy) ->
              sh.withOpening(keep(sh.openingFront(), open), Optional.of(limit(close + dy, 2, 80))));
    } else if (c.form() == ConnectorForm.HORSESHOE) {
      add(
          arch,
          c,
          last,
          "handle.opening-front",
          (sh, dy) -> sh.withOpening(Optional.of(limit(last + dy, 2, 78)), sh.openingBack()));
    }
  }

  /** A border that has been set stays where it is; one that has not keeps its default. */
  private static Optional<Double> keep(Optional<Double> set, double now) {
    return set.isPresent() ? set : Optional.of(round(now));
  }

  private static double height(MajorConnector c, Laid laid, double first, double last) {
    return c.shape().height().orElse(laid.measure(Measure.HEIGHT).orElse(last - first));
  }

  private void add(
      Arch arch,
      MajorConnector c,
      double y,
      String name,
      BiFunction<ConnectorShape, Double, ConnectorShape> shaping) {
    Optional<Point> at = sheet.toPane(arch, new Point(0, y));
    if (at.isEmpty()) {
      return;
    }
    Circle dot = new Circle(6);
    dot.getStyleClass().add("handle");
    StackPane target = new StackPane(dot);
    target.setId(name.replace('.', '-'));
    target.setAccessibleText(Words.of(name));
    target.setPrefSize(TARGET, TARGET);
    target.resizeRelocate(at.get().x() - TARGET / 2, at.get().y() - TARGET / 2, TARGET, TARGET);
    target.setManaged(false);
    target.setCursor(Cursor.V_RESIZE);
    double scale = sheet.camera().scaleProperty().get() * (arch == Arch.LOWER ? -1 : 1);
    double[] from = new double[1];
    target.setOnMousePressed(
        e -> {
          from[0] = e.getSceneY();
          dragging = true;
          e.consume();
        });
    target.setOnMouseDragged(
        e -> {
          double dy = (e.getSceneY() - from[0]) / scale;
          target.setLayoutY(at.get().y() - TARGET / 2 + e.getSceneY() - from[0]);
          target.setLayoutX(at.get().x() - TARGET / 2);
          target.relocate(
              at.get().x() - TARGET / 2, at.get().y() - TARGET / 2 + e.getSceneY() - from[0]);
          preview(arch, c, shaping.apply(c.shape(), dy), name, e);
          e.consume();
        });
    target.setOnMouseReleased(
        e -> {
          dragging = false;
          ghost.clear();
          double dy = (e.getSceneY() - from[0]) / scale;
          if (Math.abs(e.getSceneY() - from[0]) > 1) {
            table.apply(
                Words.of("edit.shape", Words.of(c.form())),
                shaped(arch, c, shaping.apply(c.shape(), dy)));
          }
          update();
          e.consume();
        });
    getChildren().add(target);
  }

  private Case shaped(Arch arch, MajorConnector c, ConnectorShape shape) {
    return table.current().with(arch, new DesignEdit.Change(c.withShape(shape)));
  }

  private void preview(
      Arch arch, MajorConnector c, ConnectorShape shape, String name, MouseEvent e) {
    javafx.geometry.Point2D at = sheet.sceneToLocal(e.getSceneX(), e.getSceneY());
    String edit = Words.of("edit.shape", Words.of(c.form()));
    ghost.show(new Proposal(edit, arch, shaped(arch, c, shape)), "", at.getX(), at.getY());
    Optional<Laid> laid = ghost.laid(c.id());
    double least = arch == Arch.LOWER ? LOWER_CLEARANCE : UPPER_CLEARANCE;
    double clear =
        laid.map(l -> l.measure(Measure.MARGIN_CLEARANCE).orElse(Double.NaN)).orElse(Double.NaN);
    String words = Words.of(name);
    if (!Double.isNaN(clear)) {
      words += "\n" + Words.of("handle.clear", Words.mm(round(clear)), Words.mm(least));
    }
    double height = laid.map(l -> l.measure(Measure.HEIGHT).orElse(Double.NaN)).orElse(Double.NaN);
    if (!Double.isNaN(height)) {
      words += "\n" + Facts.of(Measure.HEIGHT, height);
    }
    ghost.say(words, clear < least - 0.05, at.getX(), at.getY());
  }

  private static double limit(double v, double min, double max) {
    return round(Math.max(min, Math.min(max, v)));
  }

  private static double round(double v) {
    return Math.round(v * 10) / 10.0;
  }
}
