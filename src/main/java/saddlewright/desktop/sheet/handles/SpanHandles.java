package saddlewright.desktop.sheet.handles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.FinishLine;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;
import saddlewright.layout.Measure;
import saddlewright.rules.Situation;

/** The ends of what runs along the arch, which go from tooth to tooth. */
final class SpanHandles {
  private final Situation situation;
  private final Component component;
  private final Span span;
  private final Function<Span, DesignEdit> edit;
  private final double across;
  private final Predicate<Tooth> runs;
  private final List<Gauge> gauges;

  /**
   * @param across where the handles lie, as a share of the depth of a crown, buccal positive
   * @param runs the places over which it can run; where it cannot, it ends
   */
  private SpanHandles(
      Situation situation,
      Component component,
      Span span,
      Function<Span, DesignEdit> edit,
      double across,
      Predicate<Tooth> runs,
      Gauge... gauges) {
    this.situation = situation;
    this.component = component;
    this.span = span;
    this.edit = edit;
    this.across = across;
    this.runs = runs;
    this.gauges = List.of(gauges);
  }

  static List<Handle> of(Situation s, Saddle c) {
    Predicate<Tooth> free =
        t ->
            s.chart().isLost(t)
                && s.design().stream(Saddle.class)
                    .noneMatch(o -> !o.id().equals(c.id()) && o.span().contains(t));
    return new SpanHandles(
            s,
            c,
            c.span(),
            to -> resized(s.design(), c, to),
            0,
            free,
            Gauge.of("saddles-run-from-abutment-to-abutment", Measure.LENGTH))
        .ends();
  }

  static List<Handle> of(Situation s, RetentionMesh c) {
    return new SpanHandles(
            s,
            c,
            c.span(),
            to -> new DesignEdit.Change(new RetentionMesh(c.id(), to, c.form())),
            0,
            inSaddle(s, c.span()),
            Gauge.of("free-end-meshes-run-far-enough", Measure.LENGTH))
        .ends();
  }

  static List<Handle> of(Situation s, FinishLine c) {
    return new SpanHandles(
            s,
            c,
            c.span(),
            to -> new DesignEdit.Change(new FinishLine(c.id(), to, c.level())),
            -0.7,
            inSaddle(s, c.span()))
        .ends();
  }

  static List<Handle> of(Situation s, Plating c) {
    return new SpanHandles(
            s,
            c,
            c.span(),
            to -> new DesignEdit.Change(new Plating(c.id(), to)),
            -1,
            s.chart()::stands)
        .ends();
  }

  static List<Handle> of(Situation s, MajorConnector c) {
    return new SpanHandles(
            s,
            c,
            c.span(),
            to -> new DesignEdit.Change(new MajorConnector(c.id(), c.form(), to, c.shape())),
            s.arch() == Arch.LOWER ? -1.5 : -1.7,
            t -> true)
        .ends();
  }

  private static Predicate<Tooth> inSaddle(Situation s, Span span) {
    return s.design().saddlesIn(span).stream()
        .findFirst()
        .<Predicate<Tooth>>map(saddle -> saddle.span()::contains)
        .orElse(s.chart()::isLost);
  }

  /** The saddle over another span, with the metalwork that ended where it did. */
  private static DesignEdit resized(ArchDesign design, Saddle saddle, Span to) {
    Span was = saddle.span();
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(saddle.withSpan(to)));
    for (Component c : design.components()) {
      if (c instanceof RetentionMesh m
          && was.contains(m.span().first())
          && was.contains(m.span().last())) {
        followed(m.span(), was, to)
            .ifPresent(
                s -> edits.add(new DesignEdit.Change(new RetentionMesh(m.id(), s, m.form()))));
      } else if (c instanceof FinishLine f
          && was.contains(f.span().first())
          && was.contains(f.span().last())) {
        followed(f.span(), was, to)
            .ifPresent(s -> edits.add(new DesignEdit.Change(new FinishLine(f.id(), s, f.level()))));
      } else if (c instanceof TissueStop t && was.contains(t.tooth())) {
        Tooth at =
            t.tooth() == was.first() ? to.first() : t.tooth() == was.last() ? to.last() : t.tooth();
        if (at != t.tooth()) {
          edits.add(new DesignEdit.Change(new TissueStop(t.id(), at)));
        }
      }
    }
    return edits.size() == 1 ? edits.get(0) : new DesignEdit.Several(edits);
  }

  /** The span of a part of a saddle after the saddle's ends have moved; empty when it stays. */
  private static Optional<Span> followed(Span part, Span was, Span to) {
    Tooth first = part.first() == was.first() ? to.first() : part.first();
    Tooth last = part.last() == was.last() ? to.last() : part.last();
    Span inside =
        Span.of(
            first.place() < to.first().place() ? to.first() : first,
            last.place() > to.last().place() ? to.last() : last);
    return Optional.of(inside).filter(s -> !s.equals(part));
  }

  private List<Handle> ends() {
    List<Handle> out = new ArrayList<>();
    end(true).ifPresent(out::add);
    end(false).ifPresent(out::add);
    return out;
  }

  /** The end on the patient's right, or that on the left; empty when it cannot go anywhere. */
  private Optional<Handle> end(boolean right) {
    Tooth held = right ? span.first() : span.last();
    Tooth other = right ? span.last() : span.first();
    int out = right ? -1 : 1;
    List<Tooth> places = new ArrayList<>();
    for (int p = other.place(); p >= 0 && p <= 15; p += out) {
      Tooth t = Tooth.at(span.arch(), p);
      boolean inside = span.contains(t);
      if (!inside && !runs.test(t)) {
        break;
      }
      if (t == held || (runs.test(t) && !situation.chart().isClosed(t))) {
        places.add(t);
      }
    }
    if (places.size() < 2) {
      return Optional.empty();
    }
    if (right) {
      Collections.reverse(places);
    }
    List<Stop> stops =
        places.stream()
            .map(
                t ->
                    new Stop(
                        at(t, out), Words.of("handle.to-tooth", t), edit.apply(Span.of(t, other))))
            .toList();
    String id = right ? "right-end" : "left-end";
    return Optional.of(
        new Handle(
            id,
            Words.of("handle." + id),
            situation.arch(),
            component.id(),
            new Steps(stops, places.indexOf(held), false),
            gauges));
  }

  /** The far end of a place, where a span that reaches so far ends. */
  private Point at(Tooth t, int out) {
    PlacedTooth placed = situation.form().tooth(t);
    boolean mesial = t.neighbour(End.MESIAL).map(n -> n.place() == t.place() + out).orElse(false);
    return placed.at(mesial ? 0.75 : -0.75, across);
  }
}
