package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.handles.BodyHandle;
import saddlewright.desktop.sheet.handles.Handle;
import saddlewright.desktop.sheet.handles.Handles;
import saddlewright.desktop.sheet.handles.Slide;
import saddlewright.geometry.Point;
import saddlewright.rules.Situation;

/** The handles of what is selected, where they can be grabbed. */
final class Grips extends Group {
  private static final double STOP_RADIUS = 3;

  /** Handles nearer than this cover each other; less than they are set apart, which is rounded. */
  private static final double COVERING = Grip.TARGET - 0.5;

  private final SheetPane sheet;
  private final Worktable table;
  private final Ghost ghost;
  private final Group rail = new Group();
  private final Map<String, Grip> grips = new LinkedHashMap<>();
  private Optional<Grip> held = Optional.empty();
  private Optional<Situation> handlesOf = Optional.empty();
  private Optional<Component> handlesFor = Optional.empty();

  Grips(SheetPane sheet, Worktable table, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.ghost = ghost;
    setId("handles");
    rail.setMouseTransparent(true);
    rail.getStyleClass().add("rail");
  }

  /** Shows the handles of the chief subject of the selection, where they are now. */
  void update() {
    if (held.isPresent()) {
      return;
    }
    Optional<Subject> chief = table.selected();
    Optional<Component> component = chief.flatMap(table::component);
    Optional<Situation> situation = chief.map(s -> table.assessment().arch(s.arch()));
    if (!component.equals(handlesFor) || !isSame(situation)) {
      handlesFor = component;
      handlesOf = situation;
      take(
          component.isPresent() ? Handles.of(situation.orElseThrow(), component.get()) : List.of());
    }
    place();
  }

  private boolean isSame(Optional<Situation> now) {
    return now.isPresent() && handlesOf.isPresent() && now.get() == handlesOf.get();
  }

  /** Keeps the nodes of handles that stay, so that the one with the focus keeps it. */
  private void take(List<Handle> handles) {
    Map<String, Grip> next = new LinkedHashMap<>();
    for (Handle h : handles) {
      String key = h.arch().code() + "/" + h.component() + "/" + h.id();
      Grip grip = grips.getOrDefault(key, new Grip(this, sheet, table, ghost));
      grip.take(h);
      next.put(key, grip);
    }
    grips.clear();
    grips.putAll(next);
    List<javafx.scene.Node> nodes = new ArrayList<>(next.values());
    nodes.add(0, rail);
    if (!getChildren().equals(nodes)) {
      getChildren().removeIf(n -> !nodes.contains(n));
      for (int i = 0; i < nodes.size(); i++) {
        if (i >= getChildren().size() || getChildren().get(i) != nodes.get(i)) {
          getChildren().remove(nodes.get(i));
          getChildren().add(i, nodes.get(i));
        }
      }
    }
    rail.getChildren().clear();
  }

  /** Puts each where its handle lies; those that would cover each other stand side by side. */
  private void place() {
    List<Point> taken = new ArrayList<>();
    for (Grip grip : grips.values()) {
      Optional<Point> at = sheet.toPane(grip.handle().arch(), grip.handle().track().here());
      grip.setVisible(at.isPresent());
      if (at.isEmpty()) {
        continue;
      }
      Point p = at.get();
      for (int i = 0; i < taken.size(); i++) {
        Point t = taken.get(i);
        if (Math.abs(t.x() - p.x()) < COVERING && Math.abs(t.y() - p.y()) < COVERING) {
          p = new Point(t.x() + Grip.TARGET, p.y());
          i = -1;
        }
      }
      taken.add(p);
      grip.standAt(p);
    }
  }

  /** The grip of a handle of what is selected. */
  Optional<Grip> find(String handle) {
    return grips.values().stream().filter(g -> g.handle().id().equals(handle)).findFirst();
  }

  /** A grip of the body of a selected component, to put it on another tooth. */
  Optional<Grip> body(Subject subject) {
    return table
        .component(subject)
        .flatMap(
            c ->
                BodyHandle.of(
                    table.assessment().arch(subject.arch()),
                    c,
                    table.selectionProperty().get().stream()
                        .filter(s -> s.arch() == subject.arch())
                        .flatMap(s -> table.component(s).stream())
                        .toList()))
        .map(
            h -> {
              Grip grip = new Grip(this, sheet, table, ghost);
              grip.take(h);
              return grip;
            });
  }

  void hold(Grip grip) {
    held = Optional.of(grip);
    Handle h = grip.handle();
    List<Point> shown =
        h.track().shown().stream().flatMap(p -> sheet.toPane(h.arch(), p).stream()).toList();
    if (h.track() instanceof Slide) {
      Polyline line = new Polyline();
      shown.forEach(p -> line.getPoints().addAll(p.x(), p.y()));
      line.getStyleClass().add("rail-line");
      rail.getChildren().setAll(line);
      return;
    }
    rail.getChildren().clear();
    for (Point p : shown) {
      Circle stop = new Circle(p.x(), p.y(), STOP_RADIUS);
      stop.getStyleClass().add("rail-stop");
      rail.getChildren().add(stop);
    }
  }

  void release() {
    held = Optional.empty();
    rail.getChildren().clear();
    update();
  }
}
