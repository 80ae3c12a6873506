package saddlewright.desktop.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import saddlewright.casefile.Assessment;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
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
import saddlewright.design.Subject;
import saddlewright.design.TissueStop;
import saddlewright.design.UnknownComponent;
import saddlewright.desktop.Words;
import saddlewright.layout.Measure;
import saddlewright.rules.Finding;
import saddlewright.rules.Severity;

/** What is to be said of a subject to somebody who does not see the sheet. */
public final class Spoken implements ComponentVisitor<String> {
  private final Assessment now;
  private final Notation notation;

  private Spoken(Assessment now, Notation notation) {
    this.now = now;
    this.notation = notation;
  }

  public static Spoken of(Assessment now, Notation notation) {
    return new Spoken(now, notation);
  }

  /** All that is said of a subject, its findings last. */
  public String of(Subject subject) {
    if (subject instanceof Subject.OfTooth t) {
      return tooth(t.tooth());
    }
    Predicate<Finding> about = f -> f.subjects().contains(subject);
    if (subject instanceof Subject.OfComponent c) {
      return now.subject()
          .design(c.arch())
          .find(c.id())
          .map(x -> joined(List.of(ComponentWords.full(x)), findings(about)))
          .orElse("");
    }
    if (subject instanceof Subject.OfArea a) {
      return joined(List.of(area(a.span())), findings(about));
    }
    return joined(List.of(arch(subject.arch())), findings(about));
  }

  /**
   * Such as "upper right first molar, 16, standing, mesial occlusal rest, circumferential clasp,
   * tip mesiobuccal 0.25 mm".
   */
  public String tooth(Tooth tooth) {
    List<String> out = new ArrayList<>();
    out.add(ToothNames.full(tooth));
    out.add(notation.format(tooth));
    out.add(state(tooth));
    out.addAll(parts(tooth));
    return joined(out, findings(about(tooth)));
  }

  /** Whether it stands; otherwise what has become, or will become, of it and of its place. */
  public String state(Tooth tooth) {
    ArchChart chart = now.subject().chart(tooth.arch());
    ToothFindings f = chart.tooth(tooth);
    String status = low(Words.of(f.status()));
    if (!chart.isLost(tooth) && !chart.isClosed(tooth)) {
      return status;
    }
    // What is replaced is seen from its saddle; only what is not needs to be said.
    return f.gap() == GapDecision.REPLACED ? status : status + ", " + low(Words.of(f.gap()));
  }

  /** The components that lie on the tooth or over its place, one phrase each. */
  public List<String> parts(Tooth tooth) {
    return now.subject().design(tooth.arch()).components().stream()
        .filter(c -> c.teeth().contains(tooth) && !(c instanceof MajorConnector))
        .map(c -> low(component(c)))
        .toList();
  }

  /** A component without the tooth on which it lies. */
  public String component(Component c) {
    return c.accept(this);
  }

  /** Such as "edentulous area 35 to 37, free-end". */
  public String area(Span span) {
    Optional<EdentulousArea> area =
        now.arch(span.arch()).classification().areas().stream()
            .filter(a -> a.span().equals(span))
            .findFirst();
    String where = Words.of("spoken.area", span(span));
    return area.map(
            a -> where + ", " + low(Words.of(a.freeEnd() ? "area.free-end" : "area.bounded")))
        .orElse(where);
  }

  /** Such as "Upper arch: Kennedy Class II, 12 teeth stand". */
  public String arch(Arch arch) {
    return Words.of(
        "spoken.arch",
        Words.of("subject.arch." + arch.code()),
        now.arch(arch).classification().label(),
        now.subject().chart(arch).standing().size());
  }

  /** What is charted of the soft tissues of an arch. */
  public String softTissues(Arch arch) {
    SoftTissues s = now.subject().chart(arch).softTissues();
    List<String> out = new ArrayList<>();
    s.palate().ifPresent(p -> out.add(Words.of("soft.palate") + " " + low(Words.of(p))));
    s.tori().stream().sorted().forEach(t -> out.add(low(Words.of(t))));
    for (Side side : Side.values()) {
      Optional.ofNullable(s.ridges().get(side))
          .ifPresent(
              r -> out.add(Words.of("soft.ridge", low(Words.of(side))) + " " + low(Words.of(r))));
    }
    if (s.highLingualFrenum()) {
      out.add(low(Words.of("soft.lingual-frenum")));
    }
    int depths = s.teeth().size();
    if (depths > 0) {
      out.add(Words.of("spoken.measured", depths));
    }
    return out.isEmpty() ? low(Words.of("uncharted")) : String.join(", ", out);
  }

  /** Such as "2 findings, the gravest: must"; empty where there are none. */
  public Optional<String> findings(Predicate<Finding> about) {
    List<Severity> found =
        now.report().standing().stream().filter(about).map(Finding::severity).sorted().toList();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Words.of(
            "spoken.findings", found.size(), low(Words.of("severity." + found.get(0).code()))));
  }

  /** The findings about a tooth, and those about what lies on it alone. */
  public Predicate<Finding> about(Tooth tooth) {
    List<Subject> mine = new ArrayList<>();
    mine.add(Subject.of(tooth));
    for (Component c : now.subject().design(tooth.arch()).components()) {
      if (c.teeth().equals(List.of(tooth))) {
        mine.add(Subject.of(tooth.arch(), c));
      }
    }
    return f -> f.subjects().stream().anyMatch(mine::contains);
  }

  /** Places from one to another as they are said: "35 to 37". */
  public String span(Span span) {
    return span.size() == 1
        ? notation.format(span.first())
        : Words.of("spoken.span", notation.format(span.first()), notation.format(span.last()));
  }

  private static String joined(List<String> parts, Optional<String> findings) {
    List<String> all = new ArrayList<>(parts);
    findings.ifPresent(all::add);
    return String.join(", ", all);
  }

  /** Without its capital, unless the letter stands for itself, as in "I-bar". */
  private static String low(String text) {
    return text.length() > 1 && Character.isLowerCase(text.charAt(1))
        ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
        : text;
  }

  private static String kind(Component c) {
    return ComponentWords.brief(c);
  }

  private String over(Component c, Span span) {
    return kind(c) + " " + span(span);
  }

  private static String at(String where, Component c) {
    return Words.capital(Words.of("spoken.at", where, low(kind(c))));
  }

  @Override
  public String saddle(Saddle c) {
    return over(c, c.span());
  }

  @Override
  public String rest(Rest c) {
    String rest = at(ToothNames.site(c.site()), c);
    return c.indirectRetainer() ? Words.of("spoken.indirect", rest) : rest;
  }

  @Override
  public String clasp(Clasp c) {
    String tip = ToothNames.zone(c.tooth(), c.tip());
    OptionalDouble undercut =
        now.arch(c.tooth().arch())
            .layout()
            .find(c.id())
            .map(l -> l.measure(Measure.UNDERCUT))
            .orElse(OptionalDouble.empty());
    return Words.of(
        "spoken.clasp",
        Words.of(c.form()),
        undercut.isPresent() ? tip + " " + Words.mm(undercut.getAsDouble()) : tip);
  }

  @Override
  public String reciprocalArm(ReciprocalArm c) {
    return at(ToothNames.face(c.tooth(), c.face()), c);
  }

  @Override
  public String guidePlate(GuidePlate c) {
    return at(ToothNames.end(c.end()), c);
  }

  @Override
  public String guidePlane(GuidePlane c) {
    return at(low(Words.of(c.surface())), c);
  }

  @Override
  public String plating(Plating c) {
    return c.span().size() == 1
        ? at(ToothNames.face(c.span().first(), Face.LINGUAL), c)
        : over(c, c.span());
  }

  @Override
  public String minorConnector(MinorConnector c) {
    return kind(c) + ", " + low(Words.of(c.place()));
  }

  @Override
  public String majorConnector(MajorConnector c) {
    return Words.of(c.form()) + " " + span(c.span());
  }

  @Override
  public String retentionMesh(RetentionMesh c) {
    return over(c, c.span());
  }

  @Override
  public String finishLine(FinishLine c) {
    return over(c, c.span());
  }

  @Override
  public String tissueStop(TissueStop c) {
    return over(c, Span.of(c.tooth()));
  }

  @Override
  public String backing(Backing c) {
    return over(c, Span.of(c.tooth()));
  }

  @Override
  public String postDam(PostDam c) {
    return ComponentWords.full(c);
  }

  @Override
  public String relief(Relief c) {
    return ComponentWords.full(c);
  }

  @Override
  public String note(Note c) {
    return ComponentWords.full(c);
  }

  @Override
  public String unknown(UnknownComponent c) {
    return ComponentWords.full(c);
  }
}
