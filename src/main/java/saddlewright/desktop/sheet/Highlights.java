package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.shape.Path;
import javafx.scene.shape.StrokeLineJoin;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Worktable;
import saddlewright.geometry.Box;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Laid;
import saddlewright.rules.Finding;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** Outlines of what is selected and of what the chosen finding is about. */
final class Highlights extends Group {
  private final SheetPane sheet;
  private final Worktable table;

  Highlights(SheetPane sheet, Worktable table) {
    this.sheet = sheet;
    this.table = table;
    setMouseTransparent(true);
  }

  void update() {
    getChildren().clear();
    table
        .findingProperty()
        .get()
        .flatMap(this::finding)
        .ifPresent(f -> f.subjects().forEach(s -> mark(s, "finding-mark")));
    table.selectionProperty().get().forEach(s -> mark(s, "selection-mark"));
  }

  private Optional<Finding> finding(String key) {
    return table.assessment().report().entries().stream()
        .map(Report.Entry::finding)
        .filter(f -> f.key().equals(key))
        .findFirst();
  }

  private void mark(Subject subject, String style) {
    Optional<Transform> t = sheet.place(subject.arch());
    List<List<Point>> rings = rings(subject);
    if (t.isEmpty() || rings.isEmpty()) {
      return;
    }
    double px = 1 / sheet.camera().scaleProperty().get();
    for (boolean halo : new boolean[] {true, false}) {
      Path path = new Path();
      for (List<Point> ring : rings) {
        MarkNodes.add(path, ring.stream().map(t.get()::apply).toList(), true);
      }
      path.setFill(null);
      path.setStrokeLineJoin(StrokeLineJoin.ROUND);
      path.getStyleClass().addAll(style, halo ? "halo" : "line");
      path.setStrokeWidth((halo ? 6 : 1.8) * px);
      if (!halo && style.startsWith("finding")) {
        path.getStrokeDashArray().setAll(6 * px, 4 * px);
      }
      getChildren().add(path);
    }
  }

  /** The part of the sheet in which the subjects lie. */
  Optional<Box> box(List<Subject> subjects) {
    List<Point> all = new ArrayList<>();
    for (Subject s : subjects) {
      sheet
          .place(s.arch())
          .ifPresent(t -> rings(s).forEach(r -> r.forEach(p -> all.add(t.apply(p)))));
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(Box.around(all));
  }

  private List<List<Point>> rings(Subject subject) {
    Situation arch = table.assessment().arch(subject.arch());
    if (subject instanceof Subject.OfTooth t) {
      return List.of(around(arch.form().tooth(t.tooth())));
    }
    if (subject instanceof Subject.OfArea a) {
      List<List<Point>> out = new ArrayList<>();
      for (Tooth t : a.span().teeth()) {
        PlacedTooth p = arch.form().tooth(t);
        if (!p.isClosed()) {
          out.add(around(p));
        }
      }
      return out;
    }
    return subject
        .component()
        .flatMap(arch.layout()::find)
        .map(Highlights::around)
        .orElse(List.of());
  }

  private static List<Point> around(PlacedTooth tooth) {
    return tooth.outline().toRegion().grown(0.5).outlines().get(0).points();
  }

  private static List<List<Point>> around(Laid laid) {
    List<List<Point>> out = new ArrayList<>();
    if (!laid.body().isEmpty()) {
      for (Outline o : laid.body().grown(0.35).boundaries()) {
        out.add(o.points());
      }
      return out;
    }
    List<saddlewright.geometry.Path> lines = new ArrayList<>(laid.details());
    laid.centreline().ifPresent(lines::add);
    for (saddlewright.geometry.Path p : lines) {
      if (p.length() > 0.5) {
        out.add(p.ribbon(1.6, 1.6).points());
      }
    }
    if (laid.component() instanceof saddlewright.design.Note n) {
      double half = Math.max(6, 0.75 * n.text().length());
      out.add(
          List.of(
              new Point(n.x() - half, n.y() - 2.4),
              new Point(n.x() + half, n.y() - 2.4),
              new Point(n.x() + half, n.y() + 2.4),
              new Point(n.x() - half, n.y() + 2.4)));
    }
    return out;
  }
}
