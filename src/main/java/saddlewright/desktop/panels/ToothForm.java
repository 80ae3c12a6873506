package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.NumberItem;

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
    f.form.link(Words.of("tooth.card"), () -> table.cardShownProperty().set(true));
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
      number(Items.TILT_DEGREES);
    }
    number(Items.ROTATION);
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
    number(Items.BONE);
    number(Items.CROWN_ROOT);
    form.check(
        "tooth-doubtful",
        Words.of("tooth.doubtful"),
        now.doubtful(),
        v -> set(now.withDoubtful(v)));
    number(Items.CROWN_HEIGHT);
    number(Items.WIDTH);
    number(Items.DEPTH);
    form.check(
        "tooth-visible", Words.of("tooth.visible"), now.visible(), v -> set(now.withVisible(v)));
    for (RestSite s : RestSite.values()) {
      if (s.existsOn(tooth)) {
        number(Words.of("tooth.room", ToothNames.site(s)), Items.room(s));
      }
    }
  }

  /** Room for the denture where the tooth is lost. */
  private void space() {
    if (!chart.isLost(tooth)) {
      return;
    }
    form.heading(Words.of("tooth.gap-survey"));
    number(Items.SADDLE_SPACE);
  }

  private void undercuts() {
    if (!chart.stands(tooth)) {
      return;
    }
    form.heading(Words.of("tooth.undercuts"));
    for (Zone z : Zone.values()) {
      number(Words.capital(ToothNames.zone(tooth, z)), Items.undercut(z));
      if (now.undercuts().containsKey(z)) {
        number(Words.of("tooth.undercut-height"), Items.undercutHeight(z));
      }
    }
  }

  private void softTissues() {
    SoftTissues s = chart.softTissues();
    form.heading(Words.of("tooth.soft"));
    if (tooth.arch() == Arch.LOWER) {
      number(Items.LINGUAL_DEPTH);
    }
    number(Items.BUCCAL_DEPTH);
    number(Items.TISSUE_UNDERCUT);
    form.check(
        "soft-frenum",
        Words.of("soft.frenum"),
        s.frena().contains(tooth),
        on -> soft(t -> Items.withFrenum(t, tooth, on)));
  }

  private void number(NumberItem item) {
    number(item.title(tooth.arch()), item);
  }

  private void number(String name, NumberItem item) {
    form.number(
        name,
        item,
        chart,
        tooth,
        next ->
            table.apply(
                Words.of("edit.survey", tooth, item.name(tooth), item.amount(next, tooth)),
                table.current().with(next)));
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
