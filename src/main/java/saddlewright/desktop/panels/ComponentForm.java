package saddlewright.desktop.panels;

import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.order.Coursework;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Note;
import saddlewright.design.Relief;
import saddlewright.design.Subject;
import saddlewright.design.UnknownComponent;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.Attribute;
import saddlewright.desktop.subject.Attributes;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.subject.Facts;
import saddlewright.desktop.subject.SelectionEdits;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;

/** Form, material, sites and measures of one component. */
final class ComponentForm {
  private final Worktable table;
  private final Subject subject;
  private final Component component;
  private final Form form = new Form();

  private ComponentForm(Worktable table, Subject subject, Component component) {
    this.table = table;
    this.subject = subject;
    this.component = component;
  }

  static Node of(Worktable table, Subject subject, Component component) {
    ComponentForm f = new ComponentForm(table, subject, component);
    f.attributes();
    f.ownFields();
    f.justification();
    f.measures();
    f.reasons();
    f.actions();
    return f.form;
  }

  private void attributes() {
    int n = 0;
    for (Attribute a : Attributes.of(component)) {
      Attribute.Option now = a.chosen() < 0 ? null : a.options().get(a.chosen());
      form.choice(
          "attribute-" + n++,
          a.name(),
          a.options(),
          now,
          Attribute.Option::label,
          o -> change(o.label(), o.component()));
    }
  }

  private void ownFields() {
    if (component instanceof Note n) {
      form.area(
          "note-text",
          Words.of("note.text"),
          n.text(),
          3,
          t -> change(t, new Note(n.id(), t, n.x(), n.y(), n.pointsAtX(), n.pointsAtY())));
    } else if (component instanceof MajorConnector c) {
      connector(c);
    } else if (component instanceof Relief r) {
      form.number(
          "relief-thickness",
          Words.of("attribute.thickness"),
          Words.of("unit.relief"),
          Optional.of(r.thickness()),
          v -> v.ifPresent(mm -> change(Words.mm(mm), new Relief(r.id(), r.area(), mm))));
    } else if (component instanceof UnknownComponent u) {
      form.words(Words.of("unknown.explained", u.kind()));
    }
  }

  /**
   * Why it is there, in the candidate's own words; only on coursework that has a place for them.
   */
  private void justification() {
    PrescriptionDetails p = table.current().prescription();
    Coursework c = p.coursework();
    if (p.kind() == DocumentKind.COURSEWORK && c.justified()) {
      String key = Coursework.key(subject.arch(), component.id());
      form.area(
          "justification",
          Words.of("coursework.justification"),
          c.justifications().getOrDefault(key, ""),
          3,
          t ->
              table.apply(
                  Words.of("edit.justification"),
                  table.current().with(p.with(c.withJustification(key, t.strip())))));
    }
  }

  private void connector(MajorConnector c) {
    ConnectorShape s = c.shape();
    form.heading(Words.of("connector.sizes"));
    shape(c, "clearance", s.clearance(), s::withClearance);
    shape(c, "height", s.height(), s::withHeight);
    if (c.form().arch() == Arch.UPPER) {
      shape(c, "anterior", s.anteriorBorder(), v -> s.withBorders(v, s.posteriorBorder()));
      shape(c, "posterior", s.posteriorBorder(), v -> s.withBorders(s.anteriorBorder(), v));
      shape(c, "opening-front", s.openingFront(), v -> s.withOpening(v, s.openingBack()));
      shape(c, "opening-back", s.openingBack(), v -> s.withOpening(s.openingFront(), v));
    }
    form.words(Words.of("connector.handles"));
  }

  private void shape(
      MajorConnector c,
      String name,
      Optional<Double> now,
      Function<Optional<Double>, ConnectorShape> with) {
    form.number(
        "shape-" + name,
        Words.of("shape." + name),
        Words.of("unit.shape"),
        now,
        v -> change(Words.of("shape." + name), c.withShape(with.apply(v))));
  }

  private void measures() {
    Optional<Laid> laid = table.assessment().arch(subject.arch()).layout().find(component.id());
    if (laid.isEmpty() || laid.get().measures().isEmpty()) {
      return;
    }
    form.heading(Words.of("component.measured"));
    for (var e : laid.get().measures().entrySet()) {
      Measure m = e.getKey();
      String fact = Facts.of(m, e.getValue());
      String name = Words.of(m);
      form.fact(Words.capital(name), fact.substring(name.length() + 1));
    }
  }

  /** The rules that the component answers. */
  private void reasons() {
    if (!ReasonLinks.add(form, table, subject, "component.reasons")) {
      form.heading(Words.of("component.reasons"));
      form.words(Words.of("component.no-reasons"));
    }
  }

  private void actions() {
    Button mirror = new Button(Words.of("menu.mirror"));
    mirror.setId("mirror");
    mirror.setOnAction(e -> new SelectionEdits(table).mirror(false));
    Button delete = new Button(Words.of("menu.delete"));
    delete.setId("delete");
    delete.setOnAction(e -> new SelectionEdits(table).delete());
    FlowPane row = new FlowPane(8, 8, mirror, delete);
    row.getStyleClass().add("actions");
    form.wide(row);
  }

  private void change(String what, Component next) {
    table.apply(
        Words.of("edit.change", ComponentWords.brief(component), what),
        subject.arch(),
        new DesignEdit.Change(next));
  }
}
