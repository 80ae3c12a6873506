package saddlewright.desktop.sheet.handles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Tooth;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.DesignEdit;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.design.UnknownComponent;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;
import saddlewright.rules.Situation;

/** The handles of a component: everything of it that can be moved on the sheet. */
public final class Handles implements ComponentVisitor<List<Handle>> {
  /** A note is grasped this far before its first letter, mm. */
  private static final double BEFORE_WORDS = 3.5;

  /** Half the width that a letter of a note takes, mm. */
  private static final double HALF_LETTER = 0.7;

  private final Situation situation;

  private Handles(Situation situation) {
    this.situation = situation;
  }

  public static List<Handle> of(Situation situation, Component component) {
    return component.accept(new Handles(situation));
  }

  @Override
  public List<Handle> saddle(Saddle c) {
    return SpanHandles.of(situation, c);
  }

  @Override
  public List<Handle> rest(Rest c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> clasp(Clasp c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> reciprocalArm(ReciprocalArm c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> guidePlate(GuidePlate c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> guidePlane(GuidePlane c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> plating(Plating c) {
    return SpanHandles.of(situation, c);
  }

  @Override
  public List<Handle> minorConnector(MinorConnector c) {
    return ToothHandles.of(situation, c);
  }

  @Override
  public List<Handle> majorConnector(MajorConnector c) {
    List<Handle> out = new ArrayList<>(MajorConnectorHandles.of(situation, c));
    out.addAll(SpanHandles.of(situation, c));
    return out;
  }

  @Override
  public List<Handle> retentionMesh(RetentionMesh c) {
    return SpanHandles.of(situation, c);
  }

  @Override
  public List<Handle> finishLine(FinishLine c) {
    return SpanHandles.of(situation, c);
  }

  @Override
  public List<Handle> tissueStop(TissueStop c) {
    return underSaddle(c, c.tooth(), TissueStop::new);
  }

  @Override
  public List<Handle> backing(Backing c) {
    return underSaddle(c, c.tooth(), Backing::new);
  }

  /** What belongs to one place of a saddle goes to its other places. */
  private List<Handle> underSaddle(
      Component c, Tooth at, BiFunction<ComponentId, Tooth, Component> made) {
    List<Tooth> places =
        situation.design().saddleAt(at).map(s -> s.span().teeth()).orElse(List.of(at)).stream()
            .filter(t -> t == at || !situation.chart().isClosed(t))
            .toList();
    if (places.size() < 2) {
      return List.of();
    }
    List<Stop> stops = new ArrayList<>();
    for (Tooth t : places) {
      PlacedTooth placed = situation.form().tooth(t);
      stops.add(
          new Stop(
              placed.centre(),
              Words.of("handle.to-tooth", t),
              new DesignEdit.Change(made.apply(c.id(), t))));
    }
    return List.of(
        new Handle(
            "tooth",
            Words.of("handle.tooth"),
            situation.arch(),
            c.id(),
            new Steps(stops, places.indexOf(at), false),
            List.of()));
  }

  @Override
  public List<Handle> postDam(PostDam c) {
    return List.of();
  }

  @Override
  public List<Handle> relief(Relief c) {
    return List.of();
  }

  @Override
  public List<Handle> note(Note c) {
    Point words = new Point(c.x(), c.y());
    Point before = new Point(c.x() - BEFORE_WORDS - HALF_LETTER * c.text().length(), c.y());
    List<Handle> out = new ArrayList<>();
    out.add(
        free(
            c,
            "words",
            before,
            words,
            p -> new Note(c.id(), c.text(), p.x(), p.y(), c.pointsAtX(), c.pointsAtY())));
    if (c.pointsAtX().isPresent() && c.pointsAtY().isPresent()) {
      Point end = new Point(c.pointsAtX().get(), c.pointsAtY().get());
      out.add(
          free(
              c,
              "points-at",
              end,
              end,
              p ->
                  new Note(
                      c.id(), c.text(), c.x(), c.y(), Optional.of(p.x()), Optional.of(p.y()))));
    }
    return out;
  }

  private Handle free(
      Note c, String id, Point at, Point place, java.util.function.Function<Point, Note> moved) {
    return new Handle(
        id,
        Words.of("handle." + id),
        situation.arch(),
        c.id(),
        new Anywhere(at, place, p -> new DesignEdit.Change(moved.apply(p))),
        List.of());
  }

  @Override
  public List<Handle> unknown(UnknownComponent c) {
    return List.of();
  }
}
