package saddlewright.desktop.panels;

import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.chart.ChartField;
import saddlewright.chart.Wanting;
import saddlewright.classification.EdentulousArea;
import saddlewright.classification.SupportClass;
import saddlewright.dentition.End;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.Note;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.desktop.AfterTheSheet;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.views.FdiNote;

/** Everything about what is selected; about the case when nothing is. */
public final class SubjectPane extends VBox {
  private final Worktable table;
  private final Label title = new Label();
  private final ScrollPane scroll = new ScrollPane();
  private Optional<Subject> shown = Optional.empty();
  private Optional<ChartField> pursued = Optional.empty();
  private final AfterTheSheet pause = new AfterTheSheet(this::rebuild);

  public SubjectPane(Worktable table) {
    this.table = table;
    getStyleClass().add("panel");
    setId("subject");
    title.getStyleClass().add("panel-title");
    title.setWrapText(true);
    title.setId("subject-title");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, new FdiNote(table), scroll);
    // Building fields costs more than drawing: the sheet is to change before they do.
    InvalidationListener later =
        o -> {
          // On the step of the prescription another panel stands in its place.
          if (table.stepProperty().get() != Step.PRESCRIPTION) {
            pause.ask();
          }
        };
    table
        .stepProperty()
        .addListener(
            (o, was, now) -> {
              if (was == Step.PRESCRIPTION) {
                pause.ask();
              }
            });
    table.selectionProperty().addListener(later);
    table.assessmentProperty().addListener(later);
    table.askedProperty().addListener(later);
    rebuild();
  }

  /** Whether it shows what is selected now; shortly after a change it still has to. */
  public boolean isSettled() {
    return pause.isSettled();
  }

  private void rebuild() {
    Optional<Subject> subject = table.selected();
    Optional<String> focus =
        Optional.ofNullable(getScene())
            .map(s -> s.getFocusOwner())
            .filter(n -> inside(n))
            .map(Node::getId);
    double at = subject.equals(shown) ? scroll.getVvalue() : 0;
    boolean fresh = !subject.equals(shown);
    shown = subject;
    title.setText(
        subject.map(s -> ComponentWords.of(s, table.current())).orElse(Words.of("subject.case")));
    scroll.setContent(form(subject));
    scroll.setVvalue(at);
    Optional<ChartField> asked = table.askedProperty().get();
    if (asked.isEmpty() && focus.isPresent() && !fresh && isAnswered(focus.get())) {
      table.goTo(pursued.orElseThrow());
      return;
    }
    if (asked.isPresent()) {
      pursued = asked;
      table.askedProperty().set(Optional.empty());
      pause.forget();
      asked.map(FieldPlace::of).ifPresent(this::enter);
    } else {
      focus.ifPresent(id -> refocus(id));
    }
    if (fresh && subject.flatMap(table::component).filter(Note.class::isInstance).isPresent()) {
      Node words = scroll.getContent().lookup("#note-text");
      if (words instanceof TextInputControl t && t.getText().equals(Words.of("note.new"))) {
        t.requestFocus();
        t.selectAll();
      }
    }
  }

  private void refocus(String id) {
    scroll.getContent().lookupAll("*").stream()
        .filter(n -> id.equals(n.getId()))
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  /** Whether the value that was asked for was just given here while other teeth still want it. */
  private boolean isAnswered(String input) {
    if (pursued.filter(f -> FieldPlace.of(f).contains(input)).isEmpty()) {
      return false;
    }
    ChartField f = pursued.get();
    List<Tooth> wanting = Wanting.teeth(table.current().chart(f.arch()), f);
    return !wanting.isEmpty()
        && table
            .selected()
            .filter(Subject.OfTooth.class::isInstance)
            .map(s -> ((Subject.OfTooth) s).tooth())
            .filter(t -> f.teeth().contains(t) && !wanting.contains(t))
            .isPresent();
  }

  /** Goes to the first of the fields that the form has, and brings it into view. */
  private void enter(List<String> fields) {
    Parent form = (Parent) scroll.getContent();
    for (String id : fields) {
      Optional<Node> field =
          form.lookupAll("*").stream().filter(n -> id.equals(n.getId())).findFirst();
      if (field.isPresent()) {
        applyCss();
        layout();
        double hidden = form.getLayoutBounds().getHeight() - scroll.getViewportBounds().getHeight();
        double y =
            form.sceneToLocal(field.get().localToScene(field.get().getBoundsInLocal())).getMinY();
        if (hidden > 0) {
          double middle = scroll.getViewportBounds().getHeight() / 2;
          scroll.setVvalue(Math.max(0, Math.min(1, (y - middle) / hidden)));
        }
        field.get().requestFocus();
        return;
      }
    }
  }

  private boolean inside(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n == this) {
        return true;
      }
    }
    return false;
  }

  private Node form(Optional<Subject> subject) {
    if (subject.isEmpty()) {
      return CaseForm.of(table);
    }
    if (subject.get() instanceof Subject.OfTooth t) {
      return ToothForm.of(table, t.tooth());
    }
    if (subject.get() instanceof Subject.OfArea a) {
      return area(a.span());
    }
    Optional<Component> c = table.component(subject.get());
    if (c.isPresent()) {
      return ComponentForm.of(table, subject.get(), c.get());
    }
    Form form = new Form();
    CaseForm.archFields(form, table, subject.get().arch());
    ReasonLinks.add(form, table, subject.get(), "arch.reasons");
    return form;
  }

  private Node area(Span span) {
    Form form = new Form();
    Optional<EdentulousArea> found =
        table.assessment().arch(span.arch()).classification().areas().stream()
            .filter(a -> a.span().overlaps(span))
            .findFirst();
    if (found.isEmpty()) {
      form.words(Words.of("area.gone"));
      return form;
    }
    EdentulousArea a = found.get();
    List<String> replaced = a.replaced().stream().map(Tooth::toString).toList();
    form.fact(Words.of("area.replaced"), String.join(", ", replaced));
    form.fact(Words.of("area.kind"), Words.of(a.freeEnd() ? "area.free-end" : "area.bounded"));
    ArchDesign design = table.current().design(span.arch());
    form.fact(Words.of("area.support"), Words.capital(support(a, design).words()));
    design.saddlesIn(a.span()).stream()
        .findFirst()
        .ifPresentOrElse(
            s -> form.link(ComponentWords.full(s), () -> table.select(Subject.of(span.arch(), s))),
            () -> form.words(Words.of("area.no-saddle")));
    ReasonLinks.add(form, table, Subject.of(a.span()), "area.reasons");
    return form;
  }

  private static SupportClass support(EdentulousArea a, ArchDesign design) {
    boolean before = a.span().before().map(t -> isRested(design, t, a)).orElse(false);
    boolean after = a.span().after().map(t -> isRested(design, t, a)).orElse(false);
    return SupportClass.of(a, before, after);
  }

  /** A rest at either end of the neighbour carries that end of the saddle. */
  private static boolean isRested(ArchDesign design, Tooth tooth, EdentulousArea area) {
    return design.stream(Rest.class)
        .anyMatch(
            r ->
                r.tooth() == tooth
                    && (area.freeEnd()
                        || r.site().end().map(e -> faces(tooth, e, area)).orElse(true)));
  }

  private static boolean faces(Tooth tooth, End end, EdentulousArea area) {
    return tooth.neighbour(end).map(area.span()::contains).orElse(false);
  }
}
