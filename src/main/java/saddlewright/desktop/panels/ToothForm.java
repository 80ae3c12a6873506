package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;

/** Chart and survey of one tooth. */
final class ToothForm {
  private final Worktable table;
  private final Tooth tooth;
  private final ArchChart chart;
  private final ToothFindings now;
  private final Form form = new Form();

  private ToothForm(Worktable table, Tooth tooth) {
    this.table = table;
    this.tooth = tooth;
    this.chart = table.current().chart(tooth.arch());
    this.now = chart.tooth(tooth);
  }

  static Node of(Worktable table, Tooth tooth) {
    ToothForm f = new ToothForm(table, tooth);
    f.chart();
    f.parts();
    ReasonLinks.add(f.form, table, Subject.of(tooth), "tooth.reasons");
    f.survey();
    f.space();
    f.undercuts();
    f.softTissues();
    return f.form;
  }

  private void chart() {
    form.choice(
        "tooth-status",
        Words.of("tooth.status"),
        List.of(ToothStatus.values()),
        now.status(),
        Words::of,
        s -> set(now.withStatus(s)));
    if (now.status() != ToothStatus.STANDING) {
      form.choice(
          "tooth-gap",
          Words.of("tooth.gap"),
          List.of(GapDecision.values()),
          now.gap(),
          Words::of,
          g -> set(now.withGap(g)));
    }
    if (tooth.position() == 8 && chart.stands(tooth)) {
      form.check(
          "tooth-abutment",
          Words.of("tooth.abutment"),
          now.abutment(),
          a -> set(now.withAbutment(a)));
    }
  }

  /** What of the design lies on the tooth. */
  private void parts() {
    List<Component> parts =
        table.current().design(tooth.arch()).components().stream()
            .filter(c -> c.teeth().contains(tooth))
            .toList();
    if (parts.isEmpty()) {
      return;
    }
    form.heading(Words.of("tooth.parts"));
    for (Component c : parts) {
      form.link(ComponentWords.full(c), () -> table.select(Subject.of(tooth.arch(), c)));
    }
  }

  private void survey() {
    if (!chart.stands(tooth)) {
      return;
    }
    form.heading(Words.of("tooth.survey"));
    List<Optional<Condition>> conditions = optional(Condition.values());
    form.choice(
        "tooth-condition",
        Words.of("tooth.condition"),
        conditions,
        now.condition(),
        o -> o.map(Words::of).orElse(Words.of("uncharted")),
        c -> set(now.withCondition(c)));
    form.choice(
        "tooth-tilt",
        Words.of("tooth.tilt"),
        optional(Tilt.values()),
        now.tilt(),
        o -> o.map(Words::of).orElse(Words.of("none")),
        t -> set(now.withTilt(t, t.isEmpty() ? Optional.empty() : now.tiltDegrees())));
    if (now.tilt().isPresent()) {
      form.number(
          "tooth-tilt-degrees",
          Words.of("tooth.tilt-by"),
          Words.of("unit.tilt"),
          now.tiltDegrees(),
          v -> set(now.withTilt(now.tilt(), v)));
    }
    form.number(
        "tooth-rotation",
        Words.of("tooth.rotation"),
        Words.of("unit.rotation"),
        now.rotationDegrees(),
        v -> set(now.withRotation(v)));
    List<Optional<Integer>> grades = new ArrayList<>();
    grades.add(Optional.empty());
    for (int g = 0; g <= 3; g++) {
      grades.add(Optional.of(g));
    }
    form.choice(
        "tooth-mobility",
        Words.of("tooth.mobility"),
        grades,
        now.mobility(),
        o -> o.map(g -> Words.of("tooth.grade", g)).orElse(Words.of("uncharted")),
        g -> set(now.withMobility(g)));
    form.number(
        "tooth-bone",
        Words.of("tooth.bone"),
        Words.of("unit.percent"),
        now.boneSupportPercent(),
        v -> set(now.withBoneSupport(v)));
    form.number(
        "tooth-crown-root",
        Words.of("tooth.crown-root"),
        Words.of("unit.crown-root"),
        now.crownRoot(),
        v -> set(now.withCrownRoot(v)));
    form.check(
        "tooth-doubtful",
        Words.of("tooth.doubtful"),
        now.doubtful(),
        v -> set(now.withDoubtful(v)));
    form.number(
        "tooth-height",
        Words.of("tooth.crown-height"),
        Words.of("unit.crown-height"),
        now.crownHeight(),
        v -> set(now.withCrown(v, now.mesiodistal(), now.buccolingual())));
    form.number(
        "tooth-width",
        Words.of("tooth.mesiodistal"),
        Words.of("unit.crown"),
        now.mesiodistal(),
        v -> set(now.withCrown(now.crownHeight(), v, now.buccolingual())));
    form.number(
        "tooth-depth",
        Words.of("tooth.buccolingual"),
        Words.of("unit.crown"),
        now.buccolingual(),
        v -> set(now.withCrown(now.crownHeight(), now.mesiodistal(), v)));
    form.check(
        "tooth-visible", Words.of("tooth.visible"), now.visible(), v -> set(now.withVisible(v)));
    for (RestSite s : RestSite.values()) {
      if (s.existsOn(tooth)) {
        form.number(
            "clearance-" + s,
            Words.of("tooth.room", ToothNames.site(s)),
            Words.of("unit.room"),
            Optional.ofNullable(now.clearances().get(s)),
            v -> set(now.withClearance(s, v)));
      }
    }
  }

  /** Room for the denture where the tooth is lost. */
  private void space() {
    if (!chart.isLost(tooth)) {
      return;
    }
    form.heading(Words.of("tooth.gap-survey"));
    form.number(
        "tooth-saddle-space",
        Words.of("tooth.saddle-space"),
        Words.of("unit.saddle-space"),
        now.saddleSpace(),
        v -> set(now.withSaddleSpace(v)));
  }

  private void undercuts() {
    if (!chart.stands(tooth)) {
      return;
    }
    form.heading(Words.of("tooth.undercuts"));
    for (Zone z : Zone.values()) {
      Optional<Undercut> u = Optional.ofNullable(now.undercuts().get(z));
      form.number(
          "undercut-" + z,
          Words.capital(ToothNames.zone(tooth, z)),
          Words.of("unit.undercut"),
          u.map(Undercut::depth),
          v -> set(now.withUndercut(z, v.map(d -> new Undercut(d, u.flatMap(Undercut::height))))));
      u.ifPresent(
          under ->
              form.number(
                  "undercut-height-" + z,
                  Words.of("tooth.undercut-height"),
                  Words.of("unit.undercut-height"),
                  under.height(),
                  v -> set(now.withUndercut(z, Optional.of(new Undercut(under.depth(), v))))));
    }
  }

  private void softTissues() {
    SoftTissues s = chart.softTissues();
    form.heading(Words.of("tooth.soft"));
    if (tooth.arch() == Arch.LOWER) {
      form.number(
          "soft-lingual",
          Words.of("soft.lingual"),
          Words.of("unit.sulcus"),
          Optional.ofNullable(s.lingualDepth().get(tooth)),
          v -> soft(t -> t.withLingualDepth(tooth, v)));
    }
    form.number(
        "soft-buccal",
        Words.of("soft.buccal"),
        Words.of("unit.sulcus"),
        Optional.ofNullable(s.buccalDepth().get(tooth)),
        v -> soft(t -> t.withBuccalDepth(tooth, v)));
    form.number(
        "soft-undercut",
        Words.of("soft.undercut"),
        Words.of("unit.tissue-undercut"),
        Optional.ofNullable(s.tissueUndercut().get(tooth)),
        v -> soft(t -> t.withTissueUndercut(tooth, v)));
    form.check(
        "soft-frenum",
        Words.of("soft.frenum"),
        s.frena().contains(tooth),
        on -> soft(t -> t.withFrena(toggled(t.frena(), on))));
  }

  private Set<Tooth> toggled(Set<Tooth> frena, boolean on) {
    Set<Tooth> out = EnumSet.noneOf(Tooth.class);
    out.addAll(frena);
    if (on) {
      out.add(tooth);
    } else {
      out.remove(tooth);
    }
    return out;
  }

  private void set(ToothFindings next) {
    Case c = table.current();
    table.apply(Words.of("edit.findings", tooth), c.with(c.chart(tooth.arch()).with(tooth, next)));
  }

  private void soft(Function<SoftTissues, SoftTissues> change) {
    Case c = table.current();
    ArchChart a = c.chart(tooth.arch());
    table.apply(Words.of("edit.findings", tooth), c.with(a.with(change.apply(a.softTissues()))));
  }

  static <E> List<Optional<E>> optional(E[] values) {
    List<Optional<E>> out = new ArrayList<>();
    out.add(Optional.empty());
    for (E v : values) {
      out.add(Optional.of(v));
    }
    return out;
  }
}
