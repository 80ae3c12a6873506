package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Polyline;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.NumberItem;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.desktop.survey.picture.Picture;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.desktop.tools.Proposal;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.geometry.Vector;

/**
 * While the survey is made, the knobs beside the selected tooth by which the depths of its sulci
 * are set on the sheet, each with a line along the gingival margins at that depth.
 */
final class SulcusGrips extends Group {
  /** The line at a depth runs past as many teeth to either side. */
  private static final int REACH = 2;

  private final SheetPane sheet;
  private final Worktable table;
  private final Ghost ghost;
  private final Surveyed survey;
  private final Group lines = new Group();
  private final List<Depth> depths = new ArrayList<>();
  private Optional<Tooth> shown = Optional.empty();

  /** A depth that can be dragged. */
  private record Depth(Face face, NumberItem item, Knob knob) {}

  SulcusGrips(SheetPane sheet, Worktable table, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.ghost = ghost;
    this.survey = new Surveyed(table);
    setId("sulcus-grips");
    lines.setMouseTransparent(true);
    getChildren().add(lines);
    survey.chartProperty().addListener(o -> previewed());
  }

  /** Shows the knobs of the selected tooth, where they are now. */
  void update() {
    Optional<Tooth> wanted =
        table.stepProperty().get() == Step.SURVEY
            ? table
                .selected()
                .filter(Subject.OfTooth.class::isInstance)
                .map(s -> ((Subject.OfTooth) s).tooth())
                .filter(t -> sheet.place(t.arch()).isPresent())
            : Optional.empty();
    if (!wanted.equals(shown)) {
      shown = wanted;
      depths.clear();
      getChildren().setAll(lines);
      wanted.ifPresent(this::take);
    }
    place();
  }

  private void take(Tooth tooth) {
    survey.turnTo(tooth);
    if (tooth.arch() == Arch.LOWER) {
      add(tooth, Face.LINGUAL, Items.LINGUAL_DEPTH);
    }
    add(tooth, Face.BUCCAL, Items.BUCCAL_DEPTH);
  }

  private void add(Tooth tooth, Face face, NumberItem item) {
    Transform place = sheet.place(tooth.arch()).orElseThrow();
    Vector out = place.apply(way(tooth, face));
    NumberTouch touch =
        new NumberTouch(
            face == Face.LINGUAL ? "sheet-lingual-depth" : "sheet-buccal-depth",
            item,
            List.of(),
            0.5,
            0.1,
            t -> drawn(face, t),
            new Vector(out.x(), -out.y()));
    Knob knob =
        new Knob(survey, touch, this::onSheet, (k, typed) -> table.cardShownProperty().set(true))
            .onLook(k -> say(item, k));
    knob.addEventHandler(
        javafx.scene.input.MouseEvent.MOUSE_EXITED,
        e -> {
          if (!knob.isDragging()) {
            ghost.clear();
          }
        });
    depths.add(new Depth(face, item, knob));
    getChildren().add(knob);
  }

  private PlacedTooth placed(Tooth tooth) {
    return survey.form().tooth(tooth);
  }

  private Vector way(Tooth tooth, Face face) {
    Vector out = table.assessment().arch(tooth.arch()).form().tooth(tooth).outward();
    return face == Face.BUCCAL ? out : out.negated();
  }

  /** The depth at which the sheet draws the sulcus while none is charted, to half a millimetre. */
  private double drawn(Face face, Tooth tooth) {
    ArchForm form = table.assessment().arch(tooth.arch()).form();
    PlacedTooth t = form.tooth(tooth);
    Path sulcus = face == Face.BUCCAL ? form.buccalSulcus() : form.lingualSulcus();
    return Math.round(2 * sulcus.distanceTo(t.rim(t.degreesAcross(face)))) / 2.0;
  }

  /** From a place of the window to millimetres of the sheet, y up. */
  private Point onSheet(Point2D scene) {
    Point2D p = sheet.sceneToLocal(scene);
    Point on = sheet.camera().toSheet(p.getX(), p.getY());
    return new Point(on.x(), -on.y());
  }

  private void place() {
    lines.getChildren().clear();
    if (shown.isEmpty()) {
      return;
    }
    Tooth tooth = shown.get();
    ArchForm form = survey.form();
    for (Depth d : depths) {
      PlacedTooth t = placed(tooth);
      Point margin = t.rim(t.degreesAcross(d.face()));
      double depth = d.item().value(survey.chart(), tooth).orElseGet(() -> drawn(d.face(), tooth));
      Point at = margin.plus(way(tooth, d.face()).times(depth));
      sheet
          .toPane(tooth.arch(), at)
          .ifPresent(
              p -> {
                Node[] nodes = Picture.handle(new Point2D(p.x(), p.y()));
                d.knob().show(nodes);
                line(form, d.face(), tooth, depth);
              });
    }
  }

  /** At the same depth beside the neighbours. */
  private void line(ArchForm form, Face face, Tooth tooth, double depth) {
    List<Point> knots = new ArrayList<>();
    for (int place = tooth.place() - REACH; place <= tooth.place() + REACH; place++) {
      if (place >= 0 && place <= 15) {
        PlacedTooth t = form.tooth(Tooth.at(tooth.arch(), place));
        if (!t.isClosed()) {
          Vector out = face == Face.BUCCAL ? t.outward() : t.outward().negated();
          knots.add(t.rim(t.degreesAcross(face)).plus(out.times(depth)));
        }
      }
    }
    if (knots.size() < 2) {
      return;
    }
    Polyline line = new Polyline();
    for (Point p : Path.smooth(knots).points()) {
      sheet.toPane(tooth.arch(), p).ifPresent(q -> line.getPoints().addAll(q.x(), q.y()));
    }
    line.getStyleClass().add("rail-line");
    lines.getChildren().add(line);
  }

  private void previewed() {
    if (shown.isEmpty()) {
      return;
    }
    ArchChart next = survey.chart();
    Optional<Depth> held = depths.stream().filter(d -> d.knob().isDragging()).findFirst();
    place();
    if (held.isPresent()) {
      ghost.draw(
          new Proposal(
              held.get().item().name(shown.get()), shown.get().arch(), table.current().with(next)));
      say(held.get().item(), held.get().knob());
    }
  }

  private void say(NumberItem item, Knob knob) {
    Tooth tooth = shown.orElseThrow();
    String words =
        Words.of(
            "tissue.knob",
            table.notationProperty().get().format(tooth),
            item.name(tooth),
            item.amount(survey.chart(), tooth));
    Optional<String> caution = item.caution(survey.chart(), tooth);
    ghost.say(
        caution.map(c -> words + "\n" + c).orElse(words),
        caution.isPresent(),
        knob.getBoundsInParent().getCenterX(),
        knob.getBoundsInParent().getCenterY());
  }
}
