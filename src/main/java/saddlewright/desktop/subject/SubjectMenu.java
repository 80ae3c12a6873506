package saddlewright.desktop.subject;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ChartField;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Tooth;
import saddlewright.design.Belonging;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Finding;
import saddlewright.rules.Remedy;
import saddlewright.rules.Report;

/** All that can be done to what lies under the pointer, remedies of its findings first. */
public final class SubjectMenu extends ContextMenu {
  private final Worktable table;
  private final Map<MenuItem, Remedy> remedies = new LinkedHashMap<>();

  public SubjectMenu(Worktable table, List<Subject> there) {
    this.table = table;
    Subject chief = table.selected().filter(there::contains).orElse(there.get(0));
    MenuItem title = new MenuItem(ComponentWords.of(chief, table.current()));
    title.setDisable(true);
    getItems().add(title);
    remedies(chief);
    table.component(chief).ifPresent(c -> component(chief, c));
    if (chief instanceof Subject.OfTooth t) {
      tooth(t.tooth());
    }
    others(chief, there);
    findings(chief);
    setOnShown(e -> remedies.forEach(this::showWhileChosen));
    setOnHidden(e -> table.previewProperty().set(Optional.empty()));
  }

  /** Puts items before all others, below the title. */
  public void lead(List<MenuItem> items) {
    if (!items.isEmpty()) {
      getItems().addAll(1, items);
      getItems().add(1, new SeparatorMenuItem());
      if (!(getItems().get(items.size() + 2) instanceof SeparatorMenuItem)) {
        getItems().add(items.size() + 2, new SeparatorMenuItem());
      }
    }
  }

  /** What a remedy would do is seen on the sheet while its line of the menu is the chosen one. */
  private void showWhileChosen(MenuItem item, Remedy remedy) {
    Node line = item.getStyleableNode();
    if (line != null) {
      line.focusedProperty()
          .addListener(
              (o, was, is) -> {
                if (is) {
                  table.previewProperty().set(Optional.of(remedy));
                } else if (table.previewProperty().get().equals(Optional.of(remedy))) {
                  table.previewProperty().set(Optional.empty());
                }
              });
    }
  }

  private void remedies(Subject subject) {
    for (Report.Entry e : table.assessment().report().entries()) {
      Finding f = e.finding();
      if (e.stands() && f.subjects().contains(subject)) {
        for (Remedy r : f.remedies()) {
          remedies.put(item(r.label(), () -> table.take(r)), r);
        }
      }
    }
    line();
  }

  private void component(Subject subject, Component c) {
    for (Attribute a : Attributes.of(c)) {
      Menu menu = new Menu(a.name());
      for (int i = 0; i < a.options().size(); i++) {
        Attribute.Option o = a.options().get(i);
        RadioMenuItem choice = new RadioMenuItem(o.label());
        choice.setSelected(i == a.chosen());
        choice.setOnAction(
            e ->
                table.apply(
                    Words.of("edit.change", ComponentWords.brief(c), o.label()),
                    subject.arch(),
                    new DesignEdit.Change(o.component())));
        menu.getItems().add(choice);
      }
      getItems().add(menu);
    }
    line();
    SelectionEdits edits = new SelectionEdits(table);
    item(Words.of("menu.mirror"), () -> edits.mirror(false));
    if (Belonging.to(table.current().design(subject.arch()), c).size() > 1) {
      item(Words.of("menu.mirror-unit"), () -> edits.mirror(true));
    }
    item(Words.of("menu.delete"), edits::delete);
  }

  private void tooth(Tooth tooth) {
    ArchChart chart = table.current().chart(tooth.arch());
    ToothFindings f = chart.tooth(tooth);
    Menu states = new Menu(Words.of("menu.state"));
    for (ToothStatus s : ToothStatus.values()) {
      choice(
          states,
          Words.of(s),
          f.status() == s,
          () ->
              table.apply(
                  Words.of("edit.chart", tooth, Words.of(s)),
                  table.current().with(chart.with(tooth, f.withStatus(s)))));
    }
    getItems().add(states);
    if (chart.isLost(tooth) || chart.isClosed(tooth)) {
      Menu gaps = new Menu(Words.of("menu.gap"));
      for (GapDecision g : GapDecision.values()) {
        choice(
            gaps,
            Words.of(g),
            f.gap() == g,
            () ->
                table.apply(
                    Words.of("edit.chart", tooth, Words.of(g)),
                    table.current().with(chart.with(tooth, f.withGap(g)))));
      }
      getItems().add(gaps);
    }
    item(Words.of("menu.values"), () -> enterValues(tooth, chart.stands(tooth)));
  }

  /** Goes to the first of the fields in which what was surveyed of a tooth is written. */
  private void enterValues(Tooth tooth, boolean stands) {
    table.select(Subject.of(tooth));
    table
        .askedProperty()
        .set(
            Optional.of(
                stands
                    ? ChartField.condition(List.of(tooth))
                    : ChartField.saddleSpace(List.of(tooth))));
  }

  /** The findings about it: choosing one opens it. */
  private void findings(Subject subject) {
    Menu menu = new Menu(Words.of("menu.findings"));
    for (Finding f : table.assessment().report().standing()) {
      if (f.subjects().contains(subject)) {
        MenuItem item =
            new MenuItem(
                Words.of(
                    "menu.finding", Words.of("severity." + f.severity().code()), f.sentence()));
        item.setMnemonicParsing(false);
        item.setOnAction(e -> table.look(f));
        menu.getItems().add(item);
      }
    }
    if (!menu.getItems().isEmpty()) {
      line();
      getItems().add(menu);
    }
  }

  private void others(Subject chief, List<Subject> there) {
    line();
    for (Subject s : there) {
      if (!s.equals(chief)) {
        item(
            Words.of("menu.select-other", ComponentWords.of(s, table.current())),
            () -> table.select(s));
      }
    }
    if (getItems().get(getItems().size() - 1) instanceof SeparatorMenuItem last) {
      getItems().remove(last);
    }
  }

  private MenuItem item(String label, Runnable action) {
    MenuItem item = new MenuItem(label);
    item.setMnemonicParsing(false);
    item.setOnAction(e -> action.run());
    getItems().add(item);
    return item;
  }

  private static void choice(Menu menu, String label, boolean selected, Runnable action) {
    RadioMenuItem item = new RadioMenuItem(label);
    item.setSelected(selected);
    item.setOnAction(e -> action.run());
    menu.getItems().add(item);
  }

  private void line() {
    if (!(getItems().get(getItems().size() - 1) instanceof SeparatorMenuItem)) {
      getItems().add(new SeparatorMenuItem());
    }
  }
}
