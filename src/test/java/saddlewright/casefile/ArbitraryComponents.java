package saddlewright.casefile;

import static saddlewright.casefile.ArbitraryCharts.maybe;
import static saddlewright.casefile.ArbitraryCharts.number;
import static saddlewright.casefile.ArbitraryCharts.teeth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
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

/** Arbitrary components of every kind, wise or not, for property tests. */
public final class ArbitraryComponents {
  private ArbitraryComponents() {}

  /** A component that still waits for its id. */
  @FunctionalInterface
  public interface Maker {
    Component make(ComponentId id);
  }

  /** Components of any kind for an arch, of unknown kinds too when that is wanted. */
  public static Arbitrary<Maker> of(Arch arch, boolean unknown) {
    List<Arbitrary<Maker>> kinds = new ArrayList<>(onTeeth(arch));
    kinds.addAll(onSpans(arch));
    kinds.addAll(elsewhere());
    if (unknown) {
      kinds.add(ArbitraryCases.json().map(json -> id -> unknown(id, json)));
    }
    return Arbitraries.oneOf(kinds);
  }

  private static <E extends Enum<E>> Arbitrary<E> any(Class<E> type) {
    return Arbitraries.of(type);
  }

  private static Arbitrary<Span> spans(Arch arch) {
    return Combinators.combine(teeth(arch), teeth(arch)).as(Span::of);
  }

  private static List<Arbitrary<Maker>> onTeeth(Arch arch) {
    Arbitrary<Tooth> tooth = teeth(arch);
    return List.of(
        Combinators.combine(
                tooth,
                any(RestSite.class),
                any(Rest.Form.class),
                any(Rest.Seat.class),
                Arbitraries.of(true, false))
            .as((t, s, f, seat, i) -> id -> new Rest(id, t, s, f, seat, i)),
        Combinators.combine(
                tooth,
                any(ClaspForm.class),
                any(Zone.class),
                any(End.class),
                any(ClaspMaterial.class))
            .as((t, f, z, e, m) -> id -> new Clasp(id, t, f, z, e, m)),
        Combinators.combine(tooth, any(Face.class), any(End.class))
            .as((t, f, e) -> id -> new ReciprocalArm(id, t, f, e)),
        Combinators.combine(tooth, any(End.class)).as((t, e) -> id -> new GuidePlate(id, t, e)),
        Combinators.combine(tooth, any(GuidePlane.Surface.class))
            .as((t, s) -> id -> new GuidePlane(id, t, s)),
        Combinators.combine(tooth, any(MinorConnector.Place.class))
            .as((t, p) -> id -> new MinorConnector(id, t, p)),
        tooth.map(t -> id -> new TissueStop(id, t)),
        tooth.map(t -> id -> new Backing(id, t)));
  }

  private static List<Arbitrary<Maker>> onSpans(Arch arch) {
    Arbitrary<Span> span = spans(arch);
    Arbitrary<ConnectorForm> forms =
        Arbitraries.of(
            Arrays.stream(ConnectorForm.values()).filter(f -> f.arch() == arch).toList());
    return List.of(
        Combinators.combine(
                span, any(Saddle.Base.class), any(Saddle.Flange.class), any(Saddle.Finish.class))
            .as((s, b, f, l) -> id -> new Saddle(id, s, b, f, l)),
        span.map(s -> id -> new Plating(id, s)),
        Combinators.combine(forms, span, shapes())
            .as((f, s, shape) -> id -> new MajorConnector(id, f, s, shape)),
        Combinators.combine(span, any(RetentionMesh.Form.class))
            .as((s, f) -> id -> new RetentionMesh(id, s, f)),
        Combinators.combine(span, any(FinishLine.Level.class))
            .as((s, l) -> id -> new FinishLine(id, s, l)));
  }

  private static Arbitrary<ConnectorShape> shapes() {
    return Combinators.combine(
            maybe(number(0, 20)),
            maybe(number(0.5, 40)),
            maybe(number(0, 80)),
            maybe(number(0, 80)),
            maybe(number(0, 80)),
            maybe(number(0, 80)))
        .as(ConnectorShape::new);
  }

  private static List<Arbitrary<Maker>> elsewhere() {
    Arbitrary<Double> mm = number(-200, 200);
    return List.of(
        any(PostDam.Extent.class).map(e -> id -> new PostDam(id, e)),
        Combinators.combine(any(Relief.Area.class), number(0, 5))
            .as((a, t) -> id -> new Relief(id, a, t)),
        Combinators.combine(
                ArbitraryCases.text(), mm, mm, maybe(Combinators.combine(mm, mm).as(List::of)))
            .as(
                (text, x, y, target) ->
                    id ->
                        new Note(
                            id, text, x, y, target.map(p -> p.get(0)), target.map(p -> p.get(1)))));
  }

  private static UnknownComponent unknown(ComponentId id, String json) {
    String source = "{\"what\":" + json + ",\"kind\":\"future-part\",\"id\":\"" + id + "\"}";
    return new UnknownComponent(id, "future-part", source);
  }
}
