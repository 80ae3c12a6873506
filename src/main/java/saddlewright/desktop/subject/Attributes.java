package saddlewright.desktop.subject;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.ConnectorForm;
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
import saddlewright.desktop.subject.Attribute.Option;

/** What can be changed of each kind of component by choosing. */
public final class Attributes implements ComponentVisitor<List<Attribute>> {
  private static final Attributes ALL = new Attributes();
  private static final double[] SPACERS = {0.25, 0.5, 0.75, 1, 1.5, 2};

  private Attributes() {}

  public static List<Attribute> of(Component c) {
    return c.accept(ALL);
  }

  @Override
  public List<Attribute> saddle(Saddle c) {
    List<Attribute> out = new ArrayList<>();
    out.addAll(
        span(
            "attribute.replaces",
            c,
            c.span(),
            s -> new Saddle(c.id(), s, c.base(), c.flange(), c.lingualFinish())));
    out.add(
        choice(
            "attribute.base",
            Saddle.Base.values(),
            c,
            b -> new Saddle(c.id(), c.span(), b, c.flange(), c.lingualFinish())));
    out.add(
        choice(
            "attribute.flange",
            Saddle.Flange.values(),
            c,
            f -> new Saddle(c.id(), c.span(), c.base(), f, c.lingualFinish())));
    out.add(
        choice(
            "attribute.lingual-finish",
            Saddle.Finish.values(),
            c,
            f -> new Saddle(c.id(), c.span(), c.base(), c.flange(), f)));
    return out;
  }

  @Override
  public List<Attribute> rest(Rest c) {
    return List.of(
        chosen(
            "attribute.site",
            Stream.of(RestSite.values()).filter(s -> s.existsOn(c.tooth())).toList(),
            s -> Words.capital(ToothNames.site(s)),
            c,
            s -> new Rest(c.id(), c.tooth(), s, c.form(), c.seat(), c.indirectRetainer())),
        choice(
            "attribute.form",
            Rest.Form.values(),
            c,
            f -> new Rest(c.id(), c.tooth(), c.site(), f, c.seat(), c.indirectRetainer())),
        choice(
            "attribute.seat",
            Rest.Seat.values(),
            c,
            s -> new Rest(c.id(), c.tooth(), c.site(), c.form(), s, c.indirectRetainer())),
        chosen(
            "attribute.indirect",
            List.of(false, true),
            b -> Words.of(b ? "yes" : "no"),
            c,
            b -> new Rest(c.id(), c.tooth(), c.site(), c.form(), c.seat(), b)));
  }

  @Override
  public List<Attribute> clasp(Clasp c) {
    return List.of(
        choice(
            "attribute.form",
            ClaspForm.values(),
            c,
            f -> new Clasp(c.id(), c.tooth(), f, c.tip(), c.origin(), c.material())),
        chosen(
            "attribute.tip",
            List.of(Zone.values()),
            z -> Words.capital(ToothNames.zone(c.tooth(), z)),
            c,
            z -> new Clasp(c.id(), c.tooth(), c.form(), z, c.origin(), c.material())),
        end(
            "attribute.origin",
            c,
            e -> new Clasp(c.id(), c.tooth(), c.form(), c.tip(), e, c.material())),
        choice(
            "attribute.material",
            ClaspMaterial.values(),
            c,
            m -> new Clasp(c.id(), c.tooth(), c.form(), c.tip(), c.origin(), m)));
  }

  @Override
  public List<Attribute> reciprocalArm(ReciprocalArm c) {
    return List.of(
        chosen(
            "attribute.face",
            List.of(Face.values()),
            f -> Words.capital(ToothNames.face(c.tooth(), f)),
            c,
            f -> new ReciprocalArm(c.id(), c.tooth(), f, c.origin())),
        end("attribute.origin", c, e -> new ReciprocalArm(c.id(), c.tooth(), c.face(), e)));
  }

  @Override
  public List<Attribute> guidePlate(GuidePlate c) {
    return List.of(end("attribute.surface", c, e -> new GuidePlate(c.id(), c.tooth(), e)));
  }

  @Override
  public List<Attribute> guidePlane(GuidePlane c) {
    return List.of(
        choice(
            "attribute.surface",
            GuidePlane.Surface.values(),
            c,
            s -> new GuidePlane(c.id(), c.tooth(), s)));
  }

  @Override
  public List<Attribute> plating(Plating c) {
    return span("attribute.covers", c, c.span(), s -> new Plating(c.id(), s));
  }

  @Override
  public List<Attribute> minorConnector(MinorConnector c) {
    return List.of(
        choice(
            "attribute.place",
            MinorConnector.Place.values(),
            c,
            p -> new MinorConnector(c.id(), c.tooth(), p)));
  }

  @Override
  public List<Attribute> majorConnector(MajorConnector c) {
    List<Attribute> out = new ArrayList<>();
    out.add(
        chosen(
            "attribute.form",
            Stream.of(ConnectorForm.values()).filter(f -> f.arch() == c.form().arch()).toList(),
            Words::of,
            c,
            f -> new MajorConnector(c.id(), f, c.span(), c.shape())));
    out.addAll(
        span(
            "attribute.runs",
            c,
            c.span(),
            s -> new MajorConnector(c.id(), c.form(), s, c.shape())));
    return out;
  }

  @Override
  public List<Attribute> retentionMesh(RetentionMesh c) {
    List<Attribute> out = new ArrayList<>();
    out.add(
        choice(
            "attribute.form",
            RetentionMesh.Form.values(),
            c,
            f -> new RetentionMesh(c.id(), c.span(), f)));
    out.addAll(span("attribute.covers", c, c.span(), s -> new RetentionMesh(c.id(), s, c.form())));
    return out;
  }

  @Override
  public List<Attribute> finishLine(FinishLine c) {
    List<Attribute> out = new ArrayList<>();
    out.add(
        choice(
            "attribute.level",
            FinishLine.Level.values(),
            c,
            l -> new FinishLine(c.id(), c.span(), l)));
    out.addAll(span("attribute.covers", c, c.span(), s -> new FinishLine(c.id(), s, c.level())));
    return out;
  }

  @Override
  public List<Attribute> tissueStop(TissueStop c) {
    return List.of(tooth(c, c.tooth(), t -> new TissueStop(c.id(), t)));
  }

  @Override
  public List<Attribute> backing(Backing c) {
    return List.of(tooth(c, c.tooth(), t -> new Backing(c.id(), t)));
  }

  @Override
  public List<Attribute> postDam(PostDam c) {
    return List.of(
        choice("attribute.extent", PostDam.Extent.values(), c, e -> new PostDam(c.id(), e)));
  }

  @Override
  public List<Attribute> relief(Relief c) {
    return List.of(
        choice(
            "attribute.area", Relief.Area.values(), c, a -> new Relief(c.id(), a, c.thickness())),
        chosen(
            "attribute.thickness",
            Arrays.stream(SPACERS).boxed().toList(),
            Words::mm,
            c,
            v -> new Relief(c.id(), c.area(), v)));
  }

  @Override
  public List<Attribute> note(Note c) {
    return List.of();
  }

  @Override
  public List<Attribute> unknown(UnknownComponent c) {
    return List.of();
  }

  private static <E extends Enum<E>> Attribute choice(
      String name, E[] values, Component now, Function<E, Component> with) {
    return chosen(name, List.of(values), Words::of, now, with);
  }

  private static Attribute end(String name, Component now, Function<End, Component> with) {
    return chosen(name, List.of(End.values()), e -> Words.capital(ToothNames.end(e)), now, with);
  }

  private static Attribute tooth(Component now, Tooth at, Function<Tooth, Component> with) {
    return chosen("attribute.tooth", Tooth.in(at.arch()), Tooth::toString, now, with);
  }

  /** Both ends of a span, each to be chosen along the arch. */
  private static List<Attribute> span(
      String name, Component now, Span span, Function<Span, Component> with) {
    Arch arch = span.arch();
    return List.of(
        chosen(
            name + "-from",
            Tooth.in(arch).subList(0, span.last().place() + 1),
            Tooth::toString,
            now,
            t -> with.apply(Span.of(t, span.last()))),
        chosen(
            name + "-to",
            Tooth.in(arch).subList(span.first().place(), 16),
            Tooth::toString,
            now,
            t -> with.apply(Span.of(span.first(), t))));
  }

  private static <V> Attribute chosen(
      String name,
      List<V> values,
      Function<V, String> words,
      Component now,
      Function<V, Component> with) {
    List<Option> options =
        values.stream().map(v -> new Option(words.apply(v), with.apply(v))).toList();
    int index = options.stream().map(Option::component).toList().indexOf(now);
    return new Attribute(Words.of(name), options, index);
  }
}
