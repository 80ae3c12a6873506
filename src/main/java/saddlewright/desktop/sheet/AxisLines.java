package saddlewright.desktop.sheet;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Group;
import javafx.scene.shape.Line;
import saddlewright.dentition.Arch;
import saddlewright.design.Saddle;
import saddlewright.desktop.Step;
import saddlewright.desktop.Worktable;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.geometry.Vector;
import saddlewright.layout.Layout;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.mechanics.RotationAxis;

/** The clasp axes about which saddles would lift, while indirect retention is being planned. */
final class AxisLines extends Group {
  /** The line is drawn past its clasps by this much, mm. */
  private static final double PAST = 9;

  private final SheetPane sheet;
  private final Worktable table;

  AxisLines(SheetPane sheet, Worktable table) {
    this.sheet = sheet;
    this.table = table;
    setMouseTransparent(true);
  }

  void update() {
    getChildren().clear();
    if (table.stepProperty().get() != Step.INDIRECT_RETENTION) {
      return;
    }
    for (Arch arch : Arch.values()) {
      Layout layout = table.assessment().arch(arch).layout();
      Set<RotationAxis> axes = new HashSet<>();
      for (Saddle s : layout.design().all(Saddle.class)) {
        IndirectRetention.aboutClasps(layout, s).ifPresent(r -> axes.add(r.axis()));
      }
      Optional<Transform> place = sheet.place(arch);
      place.ifPresent(t -> axes.forEach(a -> draw(a, t)));
    }
  }

  private void draw(RotationAxis axis, Transform place) {
    Vector along = axis.from().to(axis.to()).unit().times(PAST);
    Point a = place.apply(axis.from().minus(along));
    Point b = place.apply(axis.to().plus(along));
    double px = 1 / sheet.camera().scaleProperty().get();
    Line line = new Line(a.x(), a.y(), b.x(), b.y());
    line.getStyleClass().add("axis");
    line.setStrokeWidth(1.8 * px);
    line.getStrokeDashArray().setAll(14 * px, 4 * px, 3 * px, 4 * px);
    getChildren().add(line);
  }
}
