package saddlewright.desktop.panels;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.survey.Items;
import saddlewright.rules.Profile;

/** The case as a whole: what it is called, its classes with their reasons, its components. */
final class CaseForm {
  private final Worktable table;
  private final Case now;
  private final Form form = new Form();

  private CaseForm(Worktable table) {
    this.table = table;
    this.now = table.current();
  }

  static Node of(Worktable table) {
    CaseForm f = new CaseForm(table);
    f.identity();
    f.school();
    for (Arch arch : Arch.values()) {
      f.arch(arch);
    }
    return f.form;
  }

  private void identity() {
    form.text(
        "case-reference",
        Words.of("case.reference"),
        now.reference(),
        t -> set(c -> c.withIdentity(t, c.title(), c.story())));
    form.text(
        "case-title",
        Words.of("case.title"),
        now.title(),
        t -> set(c -> c.withIdentity(c.reference(), t, c.story())));
    form.area(
        "case-story",
        Words.of("case.story"),
        now.story(),
        3,
        t -> set(c -> c.withIdentity(c.reference(), c.title(), t)));
  }

  private void school() {
    form.choice(
        "case-school",
        Words.of("case.school"),
        SchoolChoice.options(table),
        now.profile(),
        SchoolChoice::name,
        p -> SchoolChoice.take(table, p));
    if (now.profile().standing() == Profile.Standing.UNKNOWN) {
      form.words(Words.capital(now.profile().label()) + ".");
    }
    form.link(Words.of("case.school-edit"), () -> table.schoolShownProperty().set(true));
  }

  private void arch(Arch arch) {
    form.heading(Words.of("subject.arch." + arch.code()));
    archFields(form, table, arch);
    List<Component> parts = now.design(arch).components();
    if (parts.isEmpty()) {
      form.words(Words.of("case.no-components"));
    }
    for (Component c : parts) {
      form.link(ComponentWords.full(c), () -> table.select(Subject.of(arch, c)));
    }
  }

  /** Class, reasons and what is charted of the arch as a whole. */
  static void archFields(Form form, Worktable table, Arch arch) {
    Classification k = table.assessment().arch(arch).classification();
    form.fact(Words.of("case.class"), Words.capital(k.label()));
    k.reasoning().forEach(form::words);
    SoftTissues s = table.current().chart(arch).softTissues();
    form.link(Words.of("soft.pictures"), () -> table.tissueShownProperty().set(true));
    if (arch == Arch.UPPER) {
      form.choice(
          "palate",
          Words.of("soft.palate"),
          ToothForm.optional(SoftTissues.PalateForm.values()),
          s.palate(),
          o -> o.map(Words::of).orElse(Words.of("uncharted")),
          p -> soft(table, arch, t -> t.withPalate(p)));
      form.number(
          "palate-limit",
          Words.of("soft.palate-limit"),
          Words.of("unit.palate-limit"),
          s.palateLimit(),
          s.palateLimit().flatMap(Items::palateLimitCaution),
          v -> soft(table, arch, t -> t.withPalateLimit(v)));
    } else {
      form.check(
          "lingual-frenum",
          Words.of("soft.lingual-frenum"),
          s.highLingualFrenum(),
          on -> soft(table, arch, t -> t.withHighLingualFrenum(on)));
    }
    for (SoftTissues.Torus torus : SoftTissues.Torus.values()) {
      if ((torus == SoftTissues.Torus.PALATAL) == (arch == Arch.UPPER)) {
        form.check(
            "torus-" + torus,
            Words.of(torus),
            s.tori().contains(torus),
            on -> soft(table, arch, t -> t.withTori(toggled(t.tori(), torus, on))));
      }
    }
    for (Side side : Side.values()) {
      form.choice(
          "ridge-" + arch + side,
          Words.of("soft.ridge", Words.of(side)),
          ToothForm.optional(SoftTissues.RidgeState.values()),
          Optional.ofNullable(s.ridges().get(side)),
          o -> o.map(Words::of).orElse(Words.of("uncharted")),
          r -> soft(table, arch, t -> t.withRidge(side, r)));
    }
  }

  private static Set<SoftTissues.Torus> toggled(
      Set<SoftTissues.Torus> tori, SoftTissues.Torus torus, boolean on) {
    Set<SoftTissues.Torus> out = EnumSet.noneOf(SoftTissues.Torus.class);
    out.addAll(tori);
    if (on) {
      out.add(torus);
    } else {
      out.remove(torus);
    }
    return out;
  }

  private static void soft(Worktable table, Arch arch, Function<SoftTissues, SoftTissues> change) {
    ArchChart chart = table.current().chart(arch);
    table.apply(
        Words.of("edit.soft", arch.code()),
        table.current().with(chart.with(change.apply(chart.softTissues()))));
  }

  private void set(Function<Case, Case> change) {
    table.apply(Words.of("edit.details"), change.apply(table.current()));
  }
}
