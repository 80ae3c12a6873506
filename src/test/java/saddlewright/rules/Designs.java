package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
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
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;
import saddlewright.layout.Measure;

/** Designs for tests, written as one would dictate them. */
public final class Designs {
  private ArchChart chart;
  private ArchChart opposing;
  private Profile profile = Profile.UK_TEACHING;
  private final List<Component> components = new ArrayList<>();
  private UnaryOperator<Layout> lie = UnaryOperator.identity();

  private Designs(Arch arch) {
    chart = ArchChart.full(arch);
    opposing = ArchChart.full(arch.opposite());
  }

  public static Designs upper() {
    return new Designs(Arch.UPPER).notReplaced(18, 28);
  }

  public static Designs lower() {
    return new Designs(Arch.LOWER).notReplaced(38, 48);
  }

  /** Lower Class I, last teeth 35 and 45: RPI units, cingulum rests on the canines, lingual bar. */
  public static Designs lowerClassOne() {
    return lower()
        .missing(36, 37, 46, 47)
        .lingualDepth(10, 31, 32, 33, 34, 35, 41, 42, 43, 44, 45)
        .saddle(36, 37)
        .saddle(46, 47)
        .rpi(35)
        .rpi(45)
        .indirect(33, RestSite.CINGULUM)
        .strut(33, MinorConnector.Place.LINGUAL_FACE)
        .indirect(43, RestSite.CINGULUM)
        .strut(43, MinorConnector.Place.LINGUAL_FACE)
        .connector(ConnectorForm.LINGUAL_BAR, 45, 35);
  }

  /** Lower Class II, last left tooth 34; three-arm clasp on 46 across the arch. */
  public static Designs lowerClassTwo() {
    return lower()
        .missing(35, 36, 37)
        .lingualDepth(10, 31, 32, 33, 34, 41, 42, 43, 44, 45)
        .saddle(35, 37)
        .rpi(34)
        .threeArm(46, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
        .strut(46, MinorConnector.Place.MESIAL_EMBRASURE)
        .indirect(44, RestSite.MESIAL_OCCLUSAL)
        .strut(44, MinorConnector.Place.MESIAL_EMBRASURE)
        .connector(ConnectorForm.LINGUAL_BAR, 46, 34);
  }

  /** Upper Class III modification 1: 14 15 and 24 25 lost, three-arm clasps on the first molars. */
  public static Designs upperClassThree() {
    return upper()
        .missing(14, 15, 24, 25)
        .saddle(14, 15)
        .saddle(24, 25)
        .threeArm(16, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
        .threeArm(26, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
        .rest(13, RestSite.CINGULUM)
        .guidePlate(13, End.DISTAL)
        .plating(13, 13)
        .rest(23, RestSite.CINGULUM)
        .guidePlate(23, End.DISTAL)
        .plating(23, 23)
        .connector(ConnectorForm.PALATAL_STRAP, 15, 25);
  }

  /** Upper Class I, last teeth 14 and 24: RPI units, rests on the canines, palatal plate. */
  public static Designs upperClassOne() {
    return upper()
        .missing(15, 16, 17, 25, 26, 27)
        .saddle(15, 17)
        .saddle(25, 27)
        .rpi(14)
        .rpi(24)
        .indirect(13, RestSite.CINGULUM)
        .strut(13, MinorConnector.Place.LINGUAL_FACE)
        .indirect(23, RestSite.CINGULUM)
        .strut(23, MinorConnector.Place.LINGUAL_FACE)
        .connector(ConnectorForm.PALATAL_PLATE, 17, 27);
  }

  /** Upper Class IV: four incisors lost, clasps on 16 and 26, indirect retainers on 17 and 27. */
  public static Designs upperClassFour() {
    return upper()
        .missing(12, 11, 21, 22)
        .saddle(12, 22)
        .rest(13, RestSite.CINGULUM)
        .guidePlate(13, End.MESIAL)
        .plating(13, 13)
        .rest(23, RestSite.CINGULUM)
        .guidePlate(23, End.MESIAL)
        .plating(23, 23)
        .threeArm(16, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
        .strut(16, MinorConnector.Place.MESIAL_EMBRASURE)
        .threeArm(26, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
        .strut(26, MinorConnector.Place.MESIAL_EMBRASURE)
        .indirect(17, RestSite.DISTAL_OCCLUSAL)
        .strut(17, MinorConnector.Place.DISTAL_EMBRASURE)
        .indirect(27, RestSite.DISTAL_OCCLUSAL)
        .strut(27, MinorConnector.Place.DISTAL_EMBRASURE)
        .connector(ConnectorForm.PALATAL_RING, 17, 27);
  }

  // The chart.

  public Designs missing(int... teeth) {
    return chart(teeth, f -> f.withStatus(ToothStatus.MISSING).withGap(GapDecision.REPLACED));
  }

  public Designs notReplaced(int... teeth) {
    return chart(teeth, f -> f.withStatus(ToothStatus.MISSING).withGap(GapDecision.NOT_REPLACED));
  }

  public Designs closed(int... teeth) {
    return chart(teeth, f -> f.withStatus(ToothStatus.MISSING).withGap(GapDecision.CLOSED));
  }

  public Designs toBeExtracted(int... teeth) {
    return chart(
        teeth, f -> f.withStatus(ToothStatus.TO_BE_EXTRACTED).withGap(GapDecision.REPLACED));
  }

  public Designs implant(int... teeth) {
    return chart(teeth, f -> f.withStatus(ToothStatus.IMPLANT).withGap(GapDecision.REPLACED));
  }

  public Designs standing(int... teeth) {
    return chart(teeth, f -> ToothFindings.STANDING);
  }

  public Designs tilted(int tooth, Tilt tilt) {
    return chart(new int[] {tooth}, f -> f.withTilt(Optional.of(tilt), Optional.of(18.0)));
  }

  /** Leaning, by how much is not charted. */
  public Designs tilt(int tooth, Tilt tilt) {
    return chart(new int[] {tooth}, f -> f.withTilt(Optional.of(tilt), Optional.empty()));
  }

  public Designs leaning(int tooth, Tilt tilt, double degrees) {
    return chart(new int[] {tooth}, f -> f.withTilt(Optional.of(tilt), Optional.of(degrees)));
  }

  public Designs condition(int tooth, Condition found) {
    return chart(new int[] {tooth}, f -> f.withCondition(Optional.of(found)));
  }

  public Designs boneSupport(int tooth, double percent) {
    return chart(new int[] {tooth}, f -> f.withBoneSupport(Optional.of(percent)));
  }

  public Designs crownRoot(int tooth, double ratio) {
    return chart(new int[] {tooth}, f -> f.withCrownRoot(Optional.of(ratio)));
  }

  public Designs crownHeight(double mm, int... teeth) {
    return chart(teeth, f -> f.withCrown(Optional.of(mm), f.mesiodistal(), f.buccolingual()));
  }

  public Designs crownDepth(int tooth, double mm) {
    return chart(
        new int[] {tooth}, f -> f.withCrown(f.crownHeight(), f.mesiodistal(), Optional.of(mm)));
  }

  public Designs doubtful(int... teeth) {
    return chart(teeth, f -> f.withDoubtful(true));
  }

  public Designs visible(int... teeth) {
    return chart(teeth, f -> f.withVisible(true));
  }

  public Designs saddleSpace(double mm, int... teeth) {
    return chart(teeth, f -> f.withSaddleSpace(Optional.of(mm)));
  }

  /** Changes the chart of the other arch. */
  public Designs opposing(UnaryOperator<ArchChart> change) {
    opposing = change.apply(opposing);
    return this;
  }

  public Designs judgedBy(Profile school) {
    profile = school;
    return this;
  }

  public Designs mobile(int tooth, int grade) {
    return chart(new int[] {tooth}, f -> f.withMobility(Optional.of(grade)));
  }

  public Designs room(int tooth, RestSite site, double mm) {
    return chart(new int[] {tooth}, f -> f.withClearance(site, Optional.of(mm)));
  }

  public Designs undercut(int tooth, Zone zone, double mm) {
    return chart(new int[] {tooth}, f -> f.withUndercut(zone, Optional.of(Undercut.of(mm))));
  }

  /** An undercut with its height above the gingival margin. */
  public Designs undercut(int tooth, Zone zone, double mm, double height) {
    return chart(
        new int[] {tooth},
        f -> f.withUndercut(zone, Optional.of(new Undercut(mm, Optional.of(height)))));
  }

  public Designs withoutUndercut(int tooth, Zone zone) {
    return chart(new int[] {tooth}, f -> f.withUndercut(zone, Optional.empty()));
  }

  public Designs leaning(int tooth, Tilt tilt, Optional<Double> degrees) {
    return chart(new int[] {tooth}, f -> f.withTilt(Optional.of(tilt), degrees));
  }

  /** A chart in which these teeth are lost and not replaced. */
  static ArchChart lost(ArchChart chart, int... teeth) {
    ArchChart c = chart;
    for (int t : teeth) {
      c = c.with(Tooth.of(t), ToothFindings.of(ToothStatus.MISSING, GapDecision.NOT_REPLACED));
    }
    return c;
  }

  /** All sixteen teeth of the other arch lost and replaced by a complete denture. */
  public Designs againstACompleteDenture() {
    return opposing(
        c -> {
          ArchChart bare = c;
          for (Tooth t : Tooth.in(c.arch())) {
            bare = bare.with(t, ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
          }
          return bare;
        });
  }

  private Designs chart(int[] teeth, UnaryOperator<ToothFindings> change) {
    for (int t : teeth) {
      chart = chart.with(Tooth.of(t), change.apply(chart.tooth(Tooth.of(t))));
    }
    return this;
  }

  public Designs tissues(UnaryOperator<SoftTissues> change) {
    chart = chart.with(change.apply(chart.softTissues()));
    return this;
  }

  public Designs tissueUndercut(double mm, int... teeth) {
    for (int t : teeth) {
      tissues(x -> x.withTissueUndercut(Tooth.of(t), Optional.of(mm)));
    }
    return this;
  }

  public Designs root(int... teeth) {
    return chart(teeth, f -> f.withStatus(ToothStatus.RETAINED_ROOT).withGap(GapDecision.REPLACED));
  }

  public Designs lingualDepth(double mm, int... teeth) {
    for (int t : teeth) {
      tissues(x -> x.withLingualDepth(Tooth.of(t), Optional.of(mm)));
    }
    return this;
  }

  public Designs buccalDepth(double mm, int... teeth) {
    for (int t : teeth) {
      tissues(x -> x.withBuccalDepth(Tooth.of(t), Optional.of(mm)));
    }
    return this;
  }

  // The design.

  public Designs add(Component component) {
    components.add(component);
    return this;
  }

  private ComponentId id(String kind) {
    return design().freshId(kind);
  }

  public Designs saddle(int from, int to) {
    return add(Saddle.of(id("saddle"), Span.of(from, to)));
  }

  public Designs rest(int tooth, RestSite site) {
    return add(Rest.of(id("rest"), Tooth.of(tooth), site));
  }

  public Designs rest(int tooth, RestSite site, Rest.Form form, Rest.Seat seat) {
    return add(new Rest(id("rest"), Tooth.of(tooth), site, form, seat, false));
  }

  public Designs indirect(int tooth, RestSite site) {
    return add(
        new Rest(
            id("rest"),
            Tooth.of(tooth),
            site,
            Rest.Form.STANDARD,
            site == RestSite.CINGULUM && chart.arch() == Arch.LOWER
                ? Rest.Seat.COMPOSITE
                : Rest.Seat.PREPARED_ENAMEL,
            true));
  }

  public Designs strut(int tooth, MinorConnector.Place place) {
    return add(new MinorConnector(id("minor"), Tooth.of(tooth), place));
  }

  public Designs guidePlate(int tooth, End end) {
    return add(new GuidePlate(id("plate"), Tooth.of(tooth), end));
  }

  public Designs guidePlane(int tooth, GuidePlane.Surface surface) {
    return add(new GuidePlane(id("plane"), Tooth.of(tooth), surface));
  }

  public Designs saddle(int from, int to, Saddle.Flange flange) {
    return add(
        new Saddle(
            id("saddle"),
            Span.of(from, to),
            Saddle.Base.ACRYLIC_ON_MESH,
            flange,
            Saddle.Finish.ACRYLIC));
  }

  public Designs note(String text) {
    return add(new Note(id("note"), text, 0, 50, Optional.empty(), Optional.empty()));
  }

  public Designs plating(int from, int to) {
    return add(new Plating(id("plating"), Span.of(from, to)));
  }

  public Designs mesh(int from, int to) {
    return add(new RetentionMesh(id("mesh"), Span.of(from, to), RetentionMesh.Form.LATTICE));
  }

  public Designs finishLine(int from, int to, FinishLine.Level level) {
    return add(new FinishLine(id("finish"), Span.of(from, to), level));
  }

  public Designs stop(int tooth) {
    return add(new TissueStop(id("stop"), Tooth.of(tooth)));
  }

  public Designs backing(int tooth) {
    return add(new Backing(id("backing"), Tooth.of(tooth)));
  }

  public Designs clasp(int tooth, ClaspForm form, Zone tip, End origin) {
    return add(Clasp.of(id("clasp"), Tooth.of(tooth), form, tip, origin));
  }

  public Designs clasp(int tooth, ClaspForm form, Zone tip, End origin, ClaspMaterial material) {
    return add(new Clasp(id("clasp"), Tooth.of(tooth), form, tip, origin, material));
  }

  public Designs reciprocal(int tooth, Face face, End origin) {
    return add(new ReciprocalArm(id("recip"), Tooth.of(tooth), face, origin));
  }

  public Designs connector(ConnectorForm form, int from, int to) {
    return add(MajorConnector.of(id("connector"), form, Span.of(from, to)));
  }

  /** The first connector in another form over the same span, at its usual size. */
  public Designs swapped(ConnectorForm form) {
    return changed(m -> MajorConnector.of(m.id(), form, m.span()));
  }

  /** The first connector with other sizes. */
  public Designs shaped(UnaryOperator<ConnectorShape> shape) {
    return changed(m -> m.withShape(shape.apply(m.shape())));
  }

  private Designs changed(UnaryOperator<MajorConnector> change) {
    components.replaceAll(c -> c instanceof MajorConnector m ? change.apply(m) : c);
    return this;
  }

  public Designs relief(Relief.Area area, double mm) {
    return add(new Relief(id("relief"), area, mm));
  }

  public Designs dam(PostDam.Extent extent) {
    return add(new PostDam(id("dam"), extent));
  }

  /** Rest, cast retentive arm in 0.25 mm and reciprocal arm. */
  public Designs threeArm(int tooth, RestSite site, End origin, Zone tip) {
    return rest(tooth, site)
        .clasp(tooth, ClaspForm.CIRCUMFERENTIAL, tip, origin)
        .reciprocal(tooth, tip.face().opposite(), origin)
        .undercut(tooth, tip, 0.25);
  }

  /** Mesial rest with its strut, distal guide plate, I-bar in 0.25 mm (Krol's set). */
  public Designs rpi(int tooth) {
    return rest(tooth, RestSite.MESIAL_OCCLUSAL)
        .strut(tooth, MinorConnector.Place.MESIAL_EMBRASURE)
        .guidePlate(tooth, End.DISTAL)
        .clasp(tooth, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL)
        .undercut(tooth, Zone.MID_BUCCAL, 0.25);
  }

  /** Takes away every component of a kind from a tooth. */
  public Designs without(Class<? extends Component> kind, int tooth) {
    components.removeIf(c -> kind.isInstance(c) && c.teeth().contains(Tooth.of(tooth)));
    return this;
  }

  /** Takes away every component of a kind. */
  public Designs without(Class<? extends Component> kind) {
    components.removeIf(kind::isInstance);
    return this;
  }

  public ArchDesign design() {
    return new ArchDesign(chart.arch(), components);
  }

  /**
   * Sets what is measured on the components of a kind at a tooth, in place of the layout's value.
   */
  public Designs measuring(
      Class<? extends Component> kind, int tooth, Measure measure, double value) {
    UnaryOperator<Layout> before = lie;
    lie =
        layout -> {
          Layout l = before.apply(layout);
          for (Laid x : l.all(kind)) {
            if (x.component().teeth().contains(Tooth.of(tooth))) {
              l = l.with(x.with(measure, value));
            }
          }
          return l;
        };
    return this;
  }

  /** The design as it is dictated so far, laid out anew whenever it is asked for. */
  Supplier<Situation> frozen() {
    Designs copy = new Designs(chart.arch());
    copy.chart = chart;
    copy.opposing = opposing;
    copy.profile = profile;
    copy.components.addAll(components);
    copy.lie = lie;
    return copy::situation;
  }

  public Situation situation() {
    Situation s = Situation.of(chart, opposing, design(), profile);
    return new Situation(
        s.chart(),
        s.opposing(),
        s.classification(),
        s.form(),
        s.design(),
        lie.apply(s.layout()),
        s.profile());
  }
}
