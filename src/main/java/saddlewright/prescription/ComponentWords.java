package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.chart.Undercut;
import saddlewright.classification.EdentulousArea;
import saddlewright.classification.SupportClass;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Notation;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
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
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Sentence;
import saddlewright.rules.Situation;

/** Says what a component is, as a technician would read it; sizes come from the layout. */
final class ComponentWords implements ComponentVisitor<String> {
  private final Situation situation;
  private final Notation notation;

  ComponentWords(Situation situation, Notation notation) {
    this.situation = situation;
    this.notation = notation;
  }

  @Override
  public String saddle(Saddle saddle) {
    Optional<EdentulousArea> area =
        saddle.span().teeth().stream()
            .flatMap(t -> situation.classification().areaAt(t).stream())
            .findFirst();
    List<String> parts = new ArrayList<>();
    parts.add(area.map(a -> a.freeEnd() ? "Free-end saddle" : "Bounded saddle").orElse("Saddle"));
    area.ifPresent(a -> parts.add(support(a).words()));
    parts.add(base(saddle));
    parts.add(
        switch (saddle.flange()) {
          case FULL -> "full flange";
          case PART -> "part flange";
          case GUM_FITTED -> "gum-fitted, no flange";
        });
    String inner = ToothNames.face(saddle.span().first(), Face.LINGUAL);
    parts.add(
        inner + " finish " + (saddle.lingualFinish() == Saddle.Finish.METAL ? "metal" : "acrylic"));
    List<Tooth> replaced =
        saddle.span().teeth().stream().filter(situation.chart()::isReplaced).toList();
    if (!replaced.isEmpty() && replaced.size() < saddle.span().size()) {
      parts.add("artificial teeth at " + ToothWords.list(replaced, notation) + " only");
    }
    return sentence(parts);
  }

  private String base(Saddle saddle) {
    if (saddle.base() == Saddle.Base.METAL) {
      return "metal fitting surface";
    }
    return situation.design().stream(RetentionMesh.class)
        .filter(m -> m.span().overlaps(saddle.span()))
        .findFirst()
        .map(m -> "acrylic on " + m.form().name().toLowerCase(Locale.ROOT))
        .orElse("acrylic on metal retention");
  }

  private SupportClass support(EdentulousArea area) {
    return SupportClass.of(area, restedBeside(area, -1), restedBeside(area, 1));
  }

  /**
   * Whether the next tooth that stands beside the area in a direction along the arch has a rest.
   */
  private boolean restedBeside(EdentulousArea area, int step) {
    int place = (step < 0 ? area.span().first() : area.span().last()).place() + step;
    while (place >= 0 && place <= 15) {
      Tooth t = Tooth.at(situation.arch(), place);
      if (situation.chart().stands(t)) {
        return situation.design().stream(Rest.class).anyMatch(r -> r.tooth() == t);
      }
      place += step;
    }
    return false;
  }

  @Override
  public String rest(Rest rest) {
    String site = ToothNames.site(rest.site());
    String name =
        switch (rest.form()) {
          case STANDARD -> site + " rest";
          case EXTENDED -> "extended " + site + " rest, past the centre of the tooth";
          case DOUBLE -> "double occlusal rest, from one marginal ridge to the other";
          case EMBRASURE -> site + " rest through the embrasure";
        };
    if (rest.form() == Rest.Form.DOUBLE && !rest.site().isOcclusal()) {
      name = "double " + site + " rest";
    }
    String role = rest.indirectRetainer() ? "indirect retainer: " : "";
    return sentence(List.of(Sentence.capital(role + name), TradeTerms.of(rest.seat())));
  }

  @Override
  public String clasp(Clasp clasp) {
    List<String> parts = new ArrayList<>();
    parts.add(TradeTerms.of(clasp.form()));
    parts.add(TradeTerms.of(clasp.material()));
    parts.add("from the " + ToothNames.end(clasp.origin()));
    Undercut undercut = situation.chart().tooth(clasp.tooth()).undercuts().get(clasp.tip());
    String tip = "tip " + ToothNames.zone(clasp.tooth(), clasp.tip());
    parts.add(
        undercut == null
            ? tip + ", no undercut charted there"
            : tip + " in " + Millimetres.fine(undercut.depth()) + " undercut");
    measure(clasp, Measure.ARM_LENGTH).ifPresent(mm -> parts.add("arm " + Millimetres.of(mm)));
    return sentence(parts) + unit(clasp);
  }

  /** Names the set of parts that the clasp makes with others on its tooth, when it makes one. */
  private String unit(Clasp clasp) {
    boolean release =
        hasRest(clasp.tooth(), RestSite.MESIAL_OCCLUSAL)
            && situation.design().stream(GuidePlate.class)
                .anyMatch(p -> p.tooth() == clasp.tooth() && p.end() == End.DISTAL);
    if (!release) {
      return "";
    }
    if (clasp.form() == ClaspForm.I_BAR) {
      return " RPI set with the mesial rest and the distal guide plate.";
    }
    boolean akers = clasp.form() == ClaspForm.CIRCUMFERENTIAL && clasp.origin() == End.DISTAL;
    return akers ? " RPA set with the mesial rest and the distal guide plate." : "";
  }

  private boolean hasRest(Tooth tooth, RestSite site) {
    return situation.design().stream(Rest.class)
        .anyMatch(r -> r.tooth() == tooth && r.site() == site);
  }

  @Override
  public String reciprocalArm(ReciprocalArm arm) {
    List<String> parts = new ArrayList<>();
    parts.add("Reciprocal arm");
    parts.add("cast with the framework");
    parts.add(ToothNames.face(arm.tooth(), arm.face()) + " face");
    parts.add("from the " + ToothNames.end(arm.origin()));
    measure(arm, Measure.ARM_LENGTH).ifPresent(mm -> parts.add("arm " + Millimetres.of(mm)));
    return sentence(parts);
  }

  @Override
  public String guidePlate(GuidePlate plate) {
    return sentence(List.of(Sentence.capital(ToothNames.end(plate.end())) + " guide plate"));
  }

  @Override
  public String guidePlane(GuidePlane plane) {
    String surface =
        switch (plane.surface()) {
          case MESIAL -> "mesial";
          case DISTAL -> "distal";
          case LINGUAL -> ToothNames.face(plane.tooth(), Face.LINGUAL);
        };
    return sentence(
        List.of(
            Sentence.capital(surface) + " guide plane",
            "prepared parallel to the path of insertion"));
  }

  @Override
  public String plating(Plating plating) {
    String face = ToothNames.face(plating.span().first(), Face.LINGUAL);
    return sentence(List.of(Sentence.capital(face) + " plating", "scalloped upper edge"));
  }

  @Override
  public String minorConnector(MinorConnector connector) {
    String where =
        switch (connector.place()) {
          case MESIAL_EMBRASURE -> "in the mesial embrasure";
          case DISTAL_EMBRASURE -> "in the distal embrasure";
          case LINGUAL_FACE ->
              "up the middle of the " + ToothNames.face(connector.tooth(), Face.LINGUAL) + " face";
        };
    return sentence(List.of("Minor connector " + where));
  }

  @Override
  public String majorConnector(MajorConnector connector) {
    List<String> parts = new ArrayList<>();
    parts.add(TradeTerms.of(connector.form()));
    if (connector.form().arch() == Arch.LOWER) {
      measure(connector, Measure.HEIGHT)
          .ifPresent(mm -> parts.add(Millimetres.of(mm) + " " + lowerSize(connector.form())));
    } else {
      measure(connector, Measure.HEIGHT)
          .ifPresent(mm -> parts.add(upperSize(connector.form(), mm)));
      measure(connector, Measure.OPENING)
          .ifPresent(mm -> parts.add("opening " + Millimetres.of(mm) + " front to back"));
      measure(connector, Measure.WIDTH)
          .ifPresent(mm -> parts.add("limbs " + Millimetres.of(mm) + " wide"));
    }
    measure(connector, Measure.MARGIN_CLEARANCE)
        .ifPresent(
            mm ->
                parts.add(
                    mm > 0
                        ? "clear of the gingival margins by at least " + Millimetres.of(mm)
                        : "reaching the gingival margins"));
    parts.addAll(bordersSetByHand(connector.shape()));
    return sentence(parts);
  }

  private static String lowerSize(ConnectorForm form) {
    return switch (form) {
      case SUBLINGUAL_BAR -> "wide, lying on the floor of the mouth";
      case LINGUAL_PLATE -> "high along its lower border";
      default -> "high";
    };
  }

  private static String upperSize(ConnectorForm form, double mm) {
    boolean limbs = form == ConnectorForm.PALATAL_RING;
    return (limbs ? "anterior strap " : "") + Millimetres.of(mm) + " front to back at the midline";
  }

  private static List<String> bordersSetByHand(ConnectorShape shape) {
    List<String> out = new ArrayList<>();
    shape
        .anteriorBorder()
        .ifPresent(
            mm -> out.add("front border " + Millimetres.of(mm) + " behind the incisal midpoint"));
    shape
        .posteriorBorder()
        .ifPresent(
            mm -> out.add("rear border " + Millimetres.of(mm) + " behind the incisal midpoint"));
    return out;
  }

  @Override
  public String retentionMesh(RetentionMesh mesh) {
    return sentence(
        List.of(
            switch (mesh.form()) {
              case LATTICE -> "Retention lattice under the acrylic";
              case MESH -> "Retention mesh under the acrylic";
              case POSTS -> "Retention posts under the acrylic";
            }));
  }

  @Override
  public String finishLine(FinishLine line) {
    return sentence(
        List.of(
            "Finish line",
            switch (line.level()) {
              case EXTERNAL -> "outer surface";
              case INTERNAL -> "inner surface";
              case BOTH -> "outer and inner surfaces";
            }));
  }

  @Override
  public String tissueStop(TissueStop stop) {
    return "Tissue stop on the ridge.";
  }

  @Override
  public String backing(Backing backing) {
    return "Metal backing for the artificial tooth.";
  }

  @Override
  public String postDam(PostDam dam) {
    return switch (dam.extent()) {
      case POSTERIOR_BORDER -> "Post-dam on the fitting surface along the rear border.";
      case ALL_BORDERS ->
          "Beading on the fitting surface along all borders, faded over the midline and near the"
              + " gingival margins.";
    };
  }

  @Override
  public String relief(Relief relief) {
    return sentence(
        List.of(
            "Relief of "
                + Millimetres.fine(relief.thickness())
                + " "
                + TradeTerms.of(relief.area())));
  }

  @Override
  public String note(Note note) {
    String text = OneLine.of(note.text());
    return text.isEmpty() ? "Note without words." : "Note: " + text;
  }

  @Override
  public String unknown(UnknownComponent unknown) {
    return "Unknown component of kind “"
        + OneLine.of(unknown.kind())
        + "” ("
        + unknown.id()
        + "): kept in the case, neither drawn nor described here; ask the prescriber.";
  }

  private OptionalDouble measure(Component component, Measure measure) {
    Optional<Laid> laid = situation.layout().find(component.id());
    return laid.isPresent() ? laid.get().measure(measure) : OptionalDouble.empty();
  }

  private static String sentence(List<String> parts) {
    return String.join(", ", parts) + ".";
  }
}
