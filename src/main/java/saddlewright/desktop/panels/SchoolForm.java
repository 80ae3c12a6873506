package saddlewright.desktop.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.LimitRange;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.RulePage;
import saddlewright.rules.Severity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Weighting;

/** What a school holds of one limit or rule, beside what the built-in profile holds. */
final class SchoolForm {
  private final Worktable table;
  private final Profile school;
  private final Form form = new Form();

  private SchoolForm(Worktable table) {
    this.table = table;
    this.school = table.current().profile();
  }

  static Node of(Worktable table, Optional<SchoolRow> row) {
    SchoolForm f = new SchoolForm(table);
    if (row.isPresent() && row.get() instanceof SchoolRow.OfLimit l) {
      f.limit(l.quantity());
    } else if (row.isPresent() && row.get() instanceof SchoolRow.OfRule r) {
      f.rule(r.rule());
    } else {
      f.form.words(Words.of("school.choose-a-line"));
    }
    return f.form;
  }

  private void limit(Quantity q) {
    Threshold here = school.limits().get(q);
    Threshold there = school.base().limits().get(q);
    form.heading(Words.capital(q.words()));
    form.number(
        "school-value",
        Words.of("school.limit-here"),
        q.unit(),
        Optional.of(here.value()),
        v -> setLimit(q, v));
    form.fact(school.base().title(), q.amount(there.value()));
    form.fact(Words.of("school.plausible"), LimitRange.of(q).words());
    provenance(
        here.source(),
        here.reason(),
        s -> change(q, new Threshold(here.value(), s, here.reason())),
        r -> change(q, here.because(r)));
    if (!here.equals(there)) {
      form.words(Words.of("school.source-there", school.base().title(), there.source().words()));
      reset(() -> change(q, there));
    }
  }

  private void setLimit(Quantity q, Optional<Double> value) {
    Threshold here = school.limits().get(q);
    Threshold there = school.base().limits().get(q);
    LimitRange range = LimitRange.of(q);
    double v =
        value.orElseThrow(() -> new IllegalArgumentException(Words.of("school.limit-wanted")));
    if (!range.holds(v)) {
      throw new IllegalArgumentException(
          Words.of("school.implausible", q.amount(v), range.words()));
    }
    boolean departed = here.value() != there.value();
    Source source = departed ? here.source() : Source.commonPractice(Profile.OWN_TEACHING);
    change(q, v == there.value() ? there : new Threshold(v, source, departed ? here.reason() : ""));
  }

  private void change(Quantity q, Threshold t) {
    apply(Words.of("edit.limit", q.words()), school.with(q, t));
  }

  private void rule(Rule r) {
    form.heading(r.claim());
    if (r.isHardStop()) {
      form.fact(Words.of("school.weight-here"), held(r, school));
      form.words(Words.of("school.hard-stop"));
    } else {
      List<Optional<Severity>> options = new ArrayList<>();
      for (Severity s : Severity.values()) {
        options.add(Optional.of(s));
      }
      options.add(Optional.empty());
      form.choice(
          "school-weight",
          Words.of("school.weight-here"),
          options,
          school.teaches(r) ? Optional.of(school.severity(r.stated())) : Optional.empty(),
          s ->
              s.map(x -> Words.of("severity." + x.code()))
                  .orElseGet(() -> Words.of("school.not-taught")),
          s -> weigh(r, s));
    }
    form.fact(school.base().title(), held(r, school.base()));
    Optional<Weighting> w = Optional.ofNullable(school.weights().get(r.id()));
    w.ifPresent(
        x ->
            provenance(
                x.source(),
                x.reason(),
                s -> change(r, new Weighting(x.severity(), s, x.reason())),
                reason -> change(r, x.because(reason))));
    form.fact(Words.of("school.rule-source"), r.source().words());
    if (!w.equals(Optional.ofNullable(school.base().weights().get(r.id())))) {
      reset(() -> apply(weightEdit(r), school.withBaseWeight(r.id())));
    }
    RulePage.of(r).why().ifPresent(form::words);
  }

  private void weigh(Rule r, Optional<Severity> severity) {
    Weighting old = school.weights().get(r.id());
    Source source = old == null ? Source.commonPractice(Profile.OWN_TEACHING) : old.source();
    Weighting base = school.base().weights().get(r.id());
    Severity usual = base == null ? r.severity() : base.severity().orElse(r.severity());
    boolean asBefore = base == null && severity.equals(Optional.of(usual));
    if (asBefore) {
      apply(weightEdit(r), school.withBaseWeight(r.id()));
    } else {
      change(r, new Weighting(severity, source, old == null ? "" : old.reason()));
    }
  }

  private void change(Rule r, Weighting w) {
    apply(weightEdit(r), school.with(r.id(), w));
  }

  private static String weightEdit(Rule r) {
    return Words.of("edit.weight", r.id());
  }

  private static String held(Rule r, Profile p) {
    return new SchoolRow.OfRule(r).held(p);
  }

  private void provenance(
      Source source,
      String reason,
      java.util.function.Consumer<Source> setSource,
      java.util.function.Consumer<String> setReason) {
    form.choice(
        "school-evidence",
        Words.of("school.evidence"),
        List.of(Source.Evidence.values()),
        source.evidence(),
        e -> Words.capital(e.words()),
        e -> setSource.accept(new Source(source.citation(), e)));
    form.area(
        "school-source",
        Words.of("school.source"),
        source.citation(),
        3,
        t -> setSource.accept(new Source(t, source.evidence())));
    form.area("school-reason", Words.of("school.reason"), reason, 3, setReason);
  }

  private void reset(Runnable action) {
    Button b = new Button(Words.of("school.reset", school.base().title()));
    b.setId("school-reset");
    b.setOnAction(e -> action.run());
    form.wide(b);
  }

  private void apply(String name, Profile changed) {
    table.apply(name, table.current().withProfile(changed));
  }

  /** The fields that belong to the profile as a whole. */
  static Node head(Worktable table) {
    SchoolForm f = new SchoolForm(table);
    Profile p = f.school;
    f.form.choice(
        "school-profile",
        Words.of("school.profile"),
        SchoolChoice.options(table),
        p,
        SchoolChoice::name,
        x -> SchoolChoice.take(table, x));
    boolean own = p.standing() == Profile.Standing.OWN;
    if (own) {
      f.form.text(
          "school-name",
          Words.of("school.name"),
          p.title(),
          t -> f.apply(Words.of("edit.school-name"), t.isBlank() ? p : p.withName(t, p.version())));
      f.form.text(
          "school-version",
          Words.of("school.version"),
          p.version(),
          t -> f.apply(Words.of("edit.school-name"), p.withName(p.title(), t)));
    }
    f.form.choice(
        "school-axis",
        Words.of("school.axis"),
        List.of(Profile.Axis.values()),
        p.axis(),
        a -> Words.capital(a.words()),
        a -> f.apply(Words.of("edit.axis"), p.with(a)));
    f.form.words(
        own
            ? Words.of("school.based-on", p.base().title(), departures(p))
            : Words.of("school.change-makes-own"));
    return f.form;
  }

  private static String departures(Profile p) {
    int n = p.departures().size();
    return n == 0
        ? Words.of("school.departures.none")
        : n == 1 ? Words.of("school.departures.one") : Words.of("school.departures", n);
  }
}
