package saddlewright.soundness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.TissueStop;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;
import saddlewright.layout.Measure;
import saddlewright.rules.Naming;
import saddlewright.rules.Situation;
import saddlewright.soundness.RightSubject.Scope;

/** The faults that can be put into one sound design, and those that would be none, with why. */
final class Seeding {
  private static final double LEAST_SPACING = 5;

  private final String name;
  private final Situation sound;
  private final ArchDesign design;
  private final Demanded demanded;
  private final List<SeededFault> faults = new ArrayList<>();
  private final TreeMap<String, Integer> spared = new TreeMap<>();

  private Seeding(String name, Situation sound) {
    this.name = name;
    this.sound = sound;
    this.design = sound.design();
    this.demanded = new Demanded(sound);
  }

  static Seeding of(String name, Situation sound) {
    Seeding s = new Seeding(name, sound);
    s.removals();
    s.tips();
    s.clearances();
    s.forms();
    s.restEnds();
    s.abutments();
    return s;
  }

  List<SeededFault> faults() {
    return faults;
  }

  /** How many mutations were left out, by reason. */
  TreeMap<String, Integer> spared() {
    return spared;
  }

  // What is taken away.

  private void removals() {
    for (Rest r : design.all(Rest.class)) {
      FaultKind kind =
          r.indirectRetainer() ? FaultKind.INDIRECT_RETAINER_REMOVED : FaultKind.REST_REMOVED;
      RightSubject right =
          r.indirectRetainer()
              ? RightSubject.of(sound, r, Scope.ARCH_AND_ITS_SADDLES)
              : RightSubject.of(sound, r);
      remove(kind, r, demanded.spare(r), right);
    }
    for (Clasp c : design.all(Clasp.class)) {
      remove(
          FaultKind.CLASP_REMOVED,
          c,
          demanded.spare(c),
          RightSubject.of(sound, c, demanded.leavesTooFew(c) ? Scope.ARCH : Scope.TOOTH));
    }
    removeAll(ReciprocalArm.class, FaultKind.RECIPROCATION_REMOVED, demanded::spare);
    design.stream(Plating.class)
        .filter(demanded::reciprocates)
        .forEach(
            p ->
                remove(
                    FaultKind.RECIPROCATION_REMOVED,
                    p,
                    Optional.empty(),
                    RightSubject.of(sound, p)));
    for (MajorConnector m : design.all(MajorConnector.class)) {
      remove(
          FaultKind.CONNECTOR_REMOVED, m, Optional.empty(), RightSubject.of(sound, m, Scope.ARCH));
    }
    removeAll(GuidePlate.class, FaultKind.GUIDE_PLATE_REMOVED, p -> Optional.empty());
    removeAll(MinorConnector.class, FaultKind.MINOR_CONNECTOR_REMOVED, demanded::spare);
    removeAll(TissueStop.class, FaultKind.TISSUE_STOP_REMOVED, t -> Optional.empty());
    removeAll(RetentionMesh.class, FaultKind.MESH_REMOVED, t -> Optional.empty());
  }

  private <C extends Component> void removeAll(
      Class<C> type, FaultKind kind, Function<C, Optional<String>> spare) {
    design.stream(type).forEach(c -> remove(kind, c, spare.apply(c), RightSubject.of(sound, c)));
  }

  private void remove(FaultKind kind, Component c, Optional<String> spare, RightSubject right) {
    if (spare.isPresent()) {
      spared.merge(spare.get(), 1, Integer::sum);
    } else {
      seed(kind, Naming.of(c), right, () -> designed(design.without(c.id())));
    }
  }

  // Where tips lie.

  private void tips() {
    for (Clasp c : design.all(Clasp.class)) {
      tip(FaultKind.TIP_AT_OTHER_END, c, otherEnd(c));
      tip(FaultKind.TIP_ON_OTHER_FACE, c, Zone.of(c.tip().face().opposite(), c.tip().end()));
    }
  }

  /** From the middle of the face to its distal end, where an I-bar would slip off. */
  private static Zone otherEnd(Clasp c) {
    return Zone.of(
        c.tip().face(), Optional.of(c.tip().end().map(End::opposite).orElse(End.DISTAL)));
  }

  private void tip(FaultKind kind, Clasp c, Zone zone) {
    if (sound.chart().tooth(c.tooth()).undercuts().containsKey(zone)) {
      spared.merge("tip: that zone has a surveyed undercut too", 1, Integer::sum);
      return;
    }
    change(kind, c, new Clasp(c.id(), c.tooth(), c.form(), zone, c.origin(), c.material()));
  }

  // What is made too small.

  private void clearances() {
    for (MajorConnector m : design.all(MajorConnector.class)) {
      connector(m);
    }
    for (Clasp c : design.all(Clasp.class)) {
      if (c.form().isGingivallyApproaching()) {
        measure(FaultKind.BAR_ARM_NEAR_MARGIN, c, Measure.MARGIN_CLEARANCE, 1);
        measure(FaultKind.BAR_ARM_NEARER_THAN_TAUGHT, c, Measure.MARGIN_CLEARANCE, 2.5);
        tissues(
            FaultKind.SULCUS_SHALLOWER_THAN_TAUGHT,
            Naming.of(c),
            RightSubject.of(sound, c),
            t -> t.withBuccalDepth(c.tooth(), Optional.of(3.5)));
        tissues(
            FaultKind.SHALLOW_SULCUS,
            Naming.of(c),
            RightSubject.of(sound, c),
            t -> t.withBuccalDepth(c.tooth(), Optional.of(2.0)));
      }
    }
    List<MinorConnector> struts = design.all(MinorConnector.class);
    for (MinorConnector m : struts) {
      double spacing =
          sound.layout().find(m.id()).orElseThrow().measure(Measure.SPACING).orElse(100);
      if (demanded.isPlated(m.tooth(), Optional.empty())) {
        spared.merge("minor connector: a plate closes the window beside it", 1, Integer::sum);
      } else if (struts.size() > 1 && spacing >= LEAST_SPACING) {
        measure(FaultKind.NARROW_WINDOW, m, Measure.SPACING, 2);
        measure(FaultKind.WINDOW_NARROWER_THAN_TAUGHT, m, Measure.SPACING, 4);
      } else {
        spared.merge(
            "minor connector: it stands alone, or its source itself puts it less than 5 mm from"
                + " the next",
            1,
            Integer::sum);
      }
    }
    for (Rest r : design.all(Rest.class)) {
      tooth(
          FaultKind.NO_ROOM_FOR_REST,
          r.tooth(),
          Naming.of(r),
          f -> f.withClearance(r.site(), Optional.of(0.3)));
      tooth(
          FaultKind.LITTLE_ROOM_FOR_REST,
          r.tooth(),
          Naming.of(r),
          f -> f.withClearance(r.site(), Optional.of(0.8)));
    }
  }

  private void connector(MajorConnector m) {
    RightSubject right = RightSubject.alone(sound, m);
    boolean onTeeth =
        Set.of(ConnectorForm.LINGUAL_PLATE, ConnectorForm.DENTAL_BAR).contains(m.form());
    if (onTeeth) {
      spared.merge("connector: a plate covers the margins by design", 1, Integer::sum);
    } else {
      shape(FaultKind.CONNECTOR_NEAR_MARGIN, m, right, s -> s.withClearance(Optional.of(1.0)));
      shape(
          FaultKind.CONNECTOR_NEARER_THAN_TAUGHT, m, right, s -> s.withClearance(Optional.of(2.5)));
    }
    if (m.form() == ConnectorForm.PALATAL_RING) {
      shape(
          FaultKind.SMALL_OPENING,
          m,
          right,
          s -> s.withOpening(Optional.of(22.0), Optional.of(30.0)));
    }
    if (m.form() == ConnectorForm.PALATAL_STRAP) {
      shape(FaultKind.NARROW_STRAP, m, right, s -> s.withHeight(Optional.of(5.0)));
    }
    if (m.form().arch() == Arch.LOWER && !onTeeth) {
      double high = m.form() == ConnectorForm.SUBLINGUAL_BAR ? 3 : 5;
      tissues(
          FaultKind.SHALLOW_FLOOR,
          Naming.of(m),
          right,
          t -> {
            SoftTissues out = t;
            for (Tooth tooth : t.lingualDepth().keySet()) {
              out = out.withLingualDepth(tooth, Optional.of(high));
            }
            return out;
          });
    }
  }

  private void shape(
      FaultKind kind, MajorConnector m, RightSubject right, UnaryOperator<ConnectorShape> change) {
    seed(
        kind,
        Naming.of(m),
        right,
        () -> designed(design.with(m.withShape(change.apply(m.shape())))));
  }

  private void measure(FaultKind kind, Component c, Measure measure, double value) {
    seed(
        kind,
        Naming.of(c),
        RightSubject.of(sound, c),
        () -> {
          Laid laid = sound.layout().find(c.id()).orElseThrow();
          Layout other = sound.layout().with(laid.with(measure, value));
          return new Situation(
              sound.chart(),
              sound.opposing(),
              sound.classification(),
              sound.form(),
              design,
              other,
              sound.profile());
        });
  }

  // What clasps are made of and how.

  private void forms() {
    for (Clasp c : design.all(Clasp.class)) {
      wrongForms(c).forEach(f -> change(FaultKind.WRONG_FORM, c, formed(c, f)));
      boolean arm = c.form() == ClaspForm.CIRCUMFERENTIAL || c.form() == ClaspForm.COMBINATION;
      if (arm && c.tip().end().isPresent()) {
        change(
            FaultKind.ARM_FROM_WRONG_END,
            c,
            new Clasp(c.id(), c.tooth(), c.form(), c.tip(), c.tip().end().get(), c.material()));
      }
      ClaspMaterial other =
          c.material().isWrought()
              ? ClaspMaterial.CAST_COBALT_CHROMIUM
              : ClaspMaterial.WROUGHT_STAINLESS_STEEL;
      change(
          FaultKind.WRONG_MATERIAL,
          c,
          new Clasp(c.id(), c.tooth(), c.form(), c.tip(), c.origin(), other));
    }
  }

  /**
   * Forms that no source would put there. A molar takes an arm from above and a ring only with two
   * rests (Br Dent J 2001;190 from memory; Stratton and Wiebelt); in front of the molars a cast arm
   * from above is too short (British undergraduate notes); an arm must come from the far line angle
   * (Oklahoma question 103), which a ring turned into a plain arm does not.
   */
  private List<ClaspForm> wrongForms(Clasp c) {
    if (c.form() == ClaspForm.RING || c.form() == ClaspForm.BACK_ACTION) {
      return List.of(ClaspForm.CIRCUMFERENTIAL);
    }
    if (!c.tooth().isMolar()) {
      return List.of(
          c.form() == ClaspForm.CIRCUMFERENTIAL || c.form() == ClaspForm.EMBRASURE
              ? ClaspForm.BACK_ACTION
              : ClaspForm.CIRCUMFERENTIAL);
    }
    List<ClaspForm> out = new ArrayList<>();
    long rests = design.stream(Rest.class).filter(r -> r.tooth() == c.tooth()).count();
    if (rests < 2) {
      out.add(ClaspForm.RING);
    }
    if (c.form().isOcclusallyApproaching() && c.tip().face() == Face.BUCCAL) {
      out.add(ClaspForm.I_BAR);
    }
    return out;
  }

  private static Clasp formed(Clasp c, ClaspForm form) {
    return new Clasp(
        c.id(), c.tooth(), form, c.tip(), c.origin(), ClaspMaterial.CAST_COBALT_CHROMIUM);
  }

  // Rests turned round.

  private void restEnds() {
    for (Rest r : design.all(Rest.class)) {
      if (!r.site().isOcclusal()) {
        continue;
      }
      Optional<String> spare = demanded.spareEnd(r);
      if (spare.isPresent()) {
        spared.merge(spare.get(), 1, Integer::sum);
        continue;
      }
      RestSite site = RestSite.occlusal(r.site().end().orElseThrow().opposite());
      change(
          FaultKind.REST_AT_WRONG_END,
          r,
          new Rest(r.id(), r.tooth(), site, r.form(), r.seat(), r.indirectRetainer()));
    }
  }

  // What is wrong with the teeth.

  private void abutments() {
    Set<Tooth> used = new TreeSet<>();
    design.stream(Rest.class).forEach(r -> used.add(r.tooth()));
    design.stream(Clasp.class).forEach(c -> used.add(c.tooth()));
    for (Tooth t : used) {
      tooth(FaultKind.TOOTH_LOOSE, t, t + "", f -> f.withMobility(Optional.of(3)));
      tooth(FaultKind.TOOTH_MOBILE, t, t + "", f -> f.withMobility(Optional.of(2)));
      tooth(
          FaultKind.TOOTH_CARIOUS, t, t + "", f -> f.withCondition(Optional.of(Condition.CARIOUS)));
      tooth(FaultKind.BONE_LOST, t, t + "", f -> f.withBoneSupport(Optional.of(20.0)));
      tooth(FaultKind.ROOT_SHORT, t, t + "", f -> f.withCrownRoot(Optional.of(2.0)));
    }
    for (Clasp c : design.all(Clasp.class)) {
      Undercut u = sound.chart().tooth(c.tooth()).undercuts().get(c.tip());
      if (u == null) {
        continue;
      }
      tooth(
          FaultKind.UNDERCUT_SHALLOW,
          c.tooth(),
          Naming.of(c),
          f -> f.withUndercut(c.tip(), Optional.of(new Undercut(0.05, u.height()))));
      tooth(
          FaultKind.UNDERCUT_DEEP,
          c.tooth(),
          Naming.of(c),
          f -> f.withUndercut(c.tip(), Optional.of(new Undercut(u.depth() + 0.25, u.height()))));
      tooth(
          FaultKind.UNDERCUT_LOW,
          c.tooth(),
          Naming.of(c),
          f -> f.withUndercut(c.tip(), Optional.of(new Undercut(u.depth(), Optional.of(0.3)))));
      crownOf(c);
    }
  }

  private void crownOf(Clasp c) {
    ToothFindings f = sound.chart().tooth(c.tooth());
    boolean braced =
        design.stream(ReciprocalArm.class).anyMatch(a -> a.tooth() == c.tooth())
            || c.form().isSelfReciprocating();
    if (!braced) {
      spared.merge(
          "short crown: no reciprocal arm needs the height (a bar clasp set avoids the problem,"
              + " Eliason 1983)",
          1,
          Integer::sum);
      return;
    }
    tooth(
        FaultKind.CROWN_SHORT,
        c.tooth(),
        Naming.of(c),
        x -> x.withCrown(Optional.of(3.0), f.mesiodistal(), f.buccolingual()));
  }

  // The tools.

  private void change(FaultKind kind, Component from, Component to) {
    String was = Naming.of(from);
    String is = Naming.of(to);
    String what = was.equals(is) ? was : was + " made a " + is;
    seed(kind, what, RightSubject.of(sound, from), () -> designed(design.with(to)));
  }

  private void tooth(
      FaultKind kind, Tooth tooth, String what, UnaryOperator<ToothFindings> change) {
    seed(
        kind,
        what,
        RightSubject.of(sound, tooth),
        () -> charted(sound.chart().with(tooth, change.apply(sound.chart().tooth(tooth)))));
  }

  private void tissues(
      FaultKind kind, String what, RightSubject right, UnaryOperator<SoftTissues> change) {
    seed(
        kind,
        what,
        right,
        () -> charted(sound.chart().with(change.apply(sound.chart().softTissues()))));
  }

  private void seed(FaultKind kind, String what, RightSubject right, Supplier<Situation> faulty) {
    faults.add(new SeededFault(kind, name + ": " + what, sound, faulty, right));
  }

  private Situation designed(ArchDesign other) {
    return sound.next(sound.chart(), sound.opposing(), other, sound.profile());
  }

  private Situation charted(ArchChart other) {
    return sound.next(other, sound.opposing(), design, sound.profile());
  }
}
