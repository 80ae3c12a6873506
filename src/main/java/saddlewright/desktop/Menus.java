package saddlewright.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCombination;
import javafx.stage.Window;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Side;
import saddlewright.design.ArchDesign;
import saddlewright.desktop.actions.MoreKeys;
import saddlewright.desktop.copying.DesignCopies;
import saddlewright.desktop.desks.OpenDesks;
import saddlewright.desktop.desks.RecentFiles;
import saddlewright.desktop.desks.RecentMenu;
import saddlewright.desktop.desks.WindowMenu;
import saddlewright.desktop.panels.SchoolChoice;
import saddlewright.desktop.prescription.GapTrail;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.subject.SelectionEdits;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;
import saddlewright.desktop.views.Stages;
import saddlewright.rules.Profile;

/** The menu bar; every action of the window is found in it. */
final class Menus extends MenuBar {
  /** What opens beside the editor. */
  interface Beside {
    void findAction();

    void shortcuts();

    void history();

    void preferences();

    /** Goes to the next part of the window, or the one before. */
    void pane(boolean onwards);

    void sheetOnly();
  }

  private static final double ZOOM = 1.25;
  private static final double TEXT_STEP = 0.25;

  private final Worktable table;
  private final CaseFiles files;
  private final PrescriptionFiles prescriptions;
  private final SheetPane sheet;
  private final Copies copies;
  private final DesignCopies designs;
  private final Stages stages;

  Menus(
      Worktable table,
      ToolBox tools,
      CaseFiles files,
      PrescriptionFiles prescriptions,
      RecentFiles recent,
      SheetPane sheet,
      EditorWindow desk,
      Consumer<Boolean> stepThroughFindings,
      GapTrail gaps,
      HelpWindows help,
      Beside beside) {
    this.table = table;
    this.files = files;
    this.prescriptions = prescriptions;
    this.sheet = sheet;
    this.copies = new Copies(table);
    this.designs = new DesignCopies(table, sheet, files::openAll);
    this.stages = new Stages(table);
    getMenus()
        .addAll(
            file(recent, desk),
            edit(beside),
            view(stepThroughFindings, gaps, beside),
            design(tools),
            sheetMenu(),
            window(desk),
            help(help, beside));
  }

  private Menu file(RecentFiles recent, EditorWindow desk) {
    ObservableBooleanValue closed = Bindings.not(table.openProperty());
    return menu(
        "menu.file",
        item("file.new", "Shortcut+N", files::create),
        item("file.new-from-template", "Shortcut+T", () -> desk.showTemplates(false)),
        disabled(item("file.new-like-this", "", files::beginLikeThis), closed),
        item("file.open", "Shortcut+O", files::choose),
        RecentMenu.of(recent, files::open, desk::showRecent, () -> hidden(recent)),
        new SeparatorMenuItem(),
        disabled(item("file.save", "Shortcut+S", files::save), closed),
        disabled(item("file.save-as", "Shortcut+Shift+S", files::saveAs), closed),
        disabled(
            item("file.previous", "", files::openPrevious),
            Bindings.createBooleanBinding(
                () -> table.fileProperty().get().isEmpty(), table.fileProperty())),
        item("file.found", "", desk::showFound),
        disabled(item("file.save-template", "", () -> desk.showTemplates(true)), closed),
        new SeparatorMenuItem(),
        disabled(
            item("file.preview", "Shortcut+P", () -> table.pagesShownProperty().set(true)), closed),
        disabled(
            item("file.export-pdf", "Shortcut+Shift+P", () -> prescriptions.save(window())),
            closed),
        disabled(
            item("file.issue", "Shortcut+Shift+I", () -> prescriptions.issue(window(), () -> {})),
            closed),
        disabled(item("file.export-drawing", "Shortcut+E", files::exportDrawing), closed),
        disabled(item("file.export-steps", "", files::exportSteps), closed),
        disabled(item("file.export-fhir", "", files::exportFhir), closed),
        new SeparatorMenuItem(),
        disabled(
            item("file.close", "Shortcut+W", files::close),
            Bindings.and(closed, Bindings.size(desk.desks().all()).lessThan(2))),
        item("file.quit", "Shortcut+Q", desk.desks()::quit));
  }

  private void hidden(RecentFiles recent) {
    table.say(
        Words.of("recent.now-private", recent.count()),
        new Offer(Words.of("recent.clear"), recent::forgetAll));
  }

  private Window window() {
    return getScene().getWindow();
  }

  private Menu edit(Beside beside) {
    MenuItem undo = item("edit.undo-nothing", "Shortcut+Z", table::undo);
    MenuItem redo = item("edit.redo-nothing", "Shortcut+Shift+Z", table::redo);
    undo.setId("undo");
    redo.setId("redo");
    undo.setMnemonicParsing(false);
    redo.setMnemonicParsing(false);
    Runnable names =
        () -> {
          name(undo, "edit.undo", table.undoNameProperty().get());
          name(redo, "edit.redo", table.redoNameProperty().get());
        };
    table.undoNameProperty().addListener(o -> names.run());
    table.redoNameProperty().addListener(o -> names.run());
    names.run();
    SelectionEdits selection = new SelectionEdits(table);
    MenuItem delete = item("menu.delete", "Delete", selection::delete);
    MenuItem mirror = item("menu.mirror", "Shortcut+M", () -> selection.mirror(false));
    MenuItem unit = item("menu.mirror-unit", "Shortcut+Shift+M", () -> selection.mirror(true));
    ObservableBooleanValue closed = Bindings.not(table.openProperty());
    var nothing =
        Bindings.createBooleanBinding(
            () ->
                table.selected().flatMap(table::component).isEmpty()
                    || table.stepProperty().get() == Step.PRESCRIPTION,
            table.selectionProperty(),
            table.stepProperty(),
            table.currentProperty());
    return menu(
        "menu.edit",
        undo,
        MoreKeys.add(redo, "Shortcut+Y"),
        disabled(item("edit.history", "Shortcut+H", beside::history), closed),
        new SeparatorMenuItem(),
        disabled(delete, nothing),
        disabled(mirror, nothing),
        disabled(unit, nothing),
        disabled(item("menu.mirror-right", "", () -> selection.mirrorSide(Side.RIGHT)), closed),
        disabled(item("menu.mirror-left", "", () -> selection.mirrorSide(Side.LEFT)), closed),
        new SeparatorMenuItem(),
        disabled(item("edit.copy", "Shortcut+C", designs::copyParts), nothing),
        item("edit.paste", "Shortcut+V", designs::paste),
        disabled(item("edit.copy-design", "Shortcut+Alt+C", designs::copyDesign), closed),
        disabled(item("edit.paste-a-design", "Shortcut+Alt+V", designs::pasteDesign), closed),
        new SeparatorMenuItem(),
        disabled(item("edit.copy-drawing", "Shortcut+Shift+C", copies::drawing), closed),
        disabled(item("edit.copy-schedule", "Shortcut+Shift+T", copies::schedule), closed),
        new SeparatorMenuItem(),
        item("edit.clear-upper", "", () -> clear(Arch.UPPER)),
        item("edit.clear-lower", "", () -> clear(Arch.LOWER)),
        new SeparatorMenuItem(),
        item("edit.preferences", "Shortcut+Comma", beside::preferences));
  }

  private static void name(MenuItem item, String key, Optional<String> name) {
    item.setDisable(name.isEmpty());
    item.setText(name.map(n -> Words.of(key, n)).orElseGet(() -> Words.of(key + "-nothing")));
  }

  private void clear(Arch arch) {
    table.apply(Words.of("edit.clear", arch.code()), table.current().with(ArchDesign.empty(arch)));
  }

  private Menu view(Consumer<Boolean> findings, GapTrail gaps, Beside beside) {
    ObservableBooleanValue closed = Bindings.not(table.openProperty());
    Menu notation = new Menu(Words.of("view.notation"));
    ToggleGroup notations = new ToggleGroup();
    for (Notation n : Notation.values()) {
      RadioMenuItem item = new RadioMenuItem(Words.of(n));
      item.setToggleGroup(notations);
      item.setSelected(n == table.notationProperty().get());
      item.setOnAction(e -> table.notationProperty().set(n));
      notation.getItems().add(item);
    }
    return menu(
        "menu.view",
        item("view.both", "Shortcut+0", () -> show(Worktable.Shown.BOTH)),
        item("view.upper", "Shortcut+1", () -> show(Worktable.Shown.UPPER)),
        item("view.lower", "Shortcut+2", () -> show(Worktable.Shown.LOWER)),
        new SeparatorMenuItem(),
        item("view.fit-all", "Shortcut+9", sheet::fit),
        item("view.fit-upper", "Shortcut+3", () -> sheet.fit(Arch.UPPER)),
        item("view.fit-lower", "Shortcut+4", () -> sheet.fit(Arch.LOWER)),
        disabled(item("view.fit-subject", "Shortcut+5", sheet::fitSelection), closed),
        item("view.true-size", "Shortcut+6", sheet::trueSize),
        item("view.zoom-in", "Shortcut+Equals", () -> sheet.zoom(ZOOM)),
        item("view.zoom-out", "Shortcut+Minus", () -> sheet.zoom(1 / ZOOM)),
        new SeparatorMenuItem(),
        disabled(stepByStep(), closed),
        disabled(item("view.step-back", "Shortcut+Open Bracket", stages::back), closed),
        disabled(item("view.step-on", "Shortcut+Close Bracket", stages::onwards), closed),
        disabled(item("view.sheet-only", "F11", beside::sheetOnly), closed),
        new SeparatorMenuItem(),
        check("view.survey", "Shortcut+Shift+U", table.surveyProperty()),
        check("view.anatomy", "Shortcut+Shift+A", table.anatomyProperty()),
        check("view.numbers", "Shortcut+Shift+K", table.numbersProperty()),
        check("view.markers", "Shortcut+Shift+F", table.markersProperty()),
        notation,
        new SeparatorMenuItem(),
        check("view.list", "Shortcut+B", table.preferences().listShownProperty()),
        item("menu.next-pane", "F6", () -> beside.pane(true)),
        item("menu.previous-pane", "Shift+F6", () -> beside.pane(false)),
        new SeparatorMenuItem(),
        item("view.next-finding", "F8", () -> findings.accept(true)),
        item("view.previous-finding", "Shift+F8", () -> findings.accept(false)),
        disabled(item("view.next-gap", "F9", gaps::onwards), closed),
        disabled(item("view.previous-gap", "Shift+F9", gaps::back), closed),
        new SeparatorMenuItem(),
        item("view.text-larger", "Shortcut+Alt+Equals", () -> text(TEXT_STEP)),
        item("view.text-smaller", "Shortcut+Alt+Minus", () -> text(-TEXT_STEP)),
        check("view.mono", "Shortcut+Shift+B", table.blackAndWhiteProperty()),
        check("view.dark", "Shortcut+Shift+D", table.darkDeskProperty()));
  }

  private MenuItem stepByStep() {
    CheckMenuItem item = new CheckMenuItem(Words.of("view.step-by-step"));
    item.setOnAction(
        e -> {
          if (item.isSelected()) {
            stages.onwards();
          } else {
            stages.leave();
          }
        });
    table.stageProperty().addListener(o -> item.setSelected(stages.isShown()));
    return item;
  }

  /** Sets text larger or smaller, and says how large it now is. */
  private void text(double by) {
    DoubleProperty size = table.textSizeProperty();
    size.set(Math.round((size.get() + by) * 100) / 100.0);
    table
        .noticeProperty()
        .set(Optional.of(Words.of("notice.text-size", Math.round(100 * size.get()))));
  }

  private void show(Worktable.Shown shown) {
    table.shownProperty().set(shown);
  }

  private Menu design(ToolBox tools) {
    Menu menu = new Menu(Words.of("menu.design"));
    for (Step step : Step.values()) {
      Menu sub = new Menu((step.ordinal() + 1) + "  " + Words.of(step));
      MenuItem go = new MenuItem(Words.of("design.go"));
      go.setAccelerator(KeyCombination.valueOf("Alt+" + (step.ordinal() + 1) % 10));
      go.setOnAction(e -> table.stepProperty().set(step));
      sub.getItems().add(go);
      if (!tools.of(step).isEmpty()) {
        sub.getItems().add(new SeparatorMenuItem());
      }
      for (ToolChoice c : tools.of(step)) {
        MenuItem item = new MenuItem(c.label());
        item.setMnemonicParsing(false);
        item.setOnAction(
            e -> {
              tools.take(step, c, table.stepProperty().get() == step);
              table.stepProperty().set(step);
            });
        sub.getItems().add(item);
      }
      menu.getItems().add(sub);
    }
    menu.getItems().addAll(new SeparatorMenuItem(), school());
    menu.disableProperty().bind(Bindings.not(table.openProperty()));
    return menu;
  }

  /** The school that judges: the built-in profiles, the case's own, and the way to change it. */
  private Menu school() {
    Menu menu = new Menu(Words.of("design.school"));
    MenuItem edit =
        item("design.school-edit", "Shortcut+L", () -> table.schoolShownProperty().set(true));
    Runnable fill =
        () -> {
          menu.getItems().clear();
          ToggleGroup schools = new ToggleGroup();
          for (Profile p : SchoolChoice.options(table)) {
            RadioMenuItem item = new RadioMenuItem(SchoolChoice.name(p));
            item.setMnemonicParsing(false);
            item.setToggleGroup(schools);
            item.setSelected(p.equals(table.current().profile()));
            item.setOnAction(e -> SchoolChoice.take(table, p));
            menu.getItems().add(item);
          }
          menu.getItems().addAll(new SeparatorMenuItem(), edit);
        };
    table
        .currentProperty()
        .addListener(
            (o, was, now) -> {
              if (!was.profile().equals(now.profile())) {
                fill.run();
              }
            });
    fill.run();
    return menu;
  }

  private Menu sheetMenu() {
    ObservableBooleanValue closed = Bindings.not(table.openProperty());
    return menu(
        "menu.sheet",
        disabled(item("sheet.case", "Shortcut+I", () -> table.select()), closed),
        disabled(
            item("sheet.tooth-card", "Shortcut+D", () -> table.cardShownProperty().set(true)),
            closed),
        disabled(
            item("sheet.soft-tissues", "", () -> table.tissueShownProperty().set(true)), closed),
        disabled(
            item(
                "sheet.quick-entry",
                "Shortcut+Shift+E",
                () -> table.quickEntryShownProperty().set(true)),
            closed),
        disabled(
            item(
                "sheet.prescription",
                "Shortcut+R",
                () -> table.stepProperty().set(Step.PRESCRIPTION)),
            closed));
  }

  private Menu window(EditorWindow desk) {
    OpenDesks<EditorWindow> desks = desk.desks();
    ObservableBooleanValue alone = Bindings.size(desks.all()).lessThan(2);
    return WindowMenu.of(
        desks,
        desk,
        List.of(
            item("window.new", "Shortcut+Shift+N", desks::open),
            disabled(
                MoreKeys.add(
                    item("window.next", "Shortcut+F6", () -> desks.step(desk, true)), "Ctrl+Tab"),
                alone),
            disabled(
                MoreKeys.add(
                    item("window.previous", "Shortcut+Shift+F6", () -> desks.step(desk, false)),
                    "Ctrl+Shift+Tab"),
                alone)));
  }

  private Menu help(HelpWindows help, Beside beside) {
    return menu(
        "menu.help",
        item("help.step", "F1", help::step),
        item("help.glossary", "Shortcut+Shift+G", help::glossary),
        new SeparatorMenuItem(),
        item("help.find", "Shortcut+K", beside::findAction),
        item("help.shortcuts", "Shortcut+Slash", beside::shortcuts),
        new SeparatorMenuItem(),
        item("help.welcome", "", help::welcome),
        item("help.cautions", "", help::cautions),
        item("help.about", "", help::about));
  }

  private static Menu menu(String key, MenuItem... items) {
    Menu menu = new Menu(Words.of(key));
    menu.getItems().addAll(items);
    return menu;
  }

  private static MenuItem item(String key, String shortcut, Runnable action) {
    MenuItem item = new MenuItem(Words.of(key));
    if (!shortcut.isEmpty()) {
      item.setAccelerator(KeyCombination.valueOf(shortcut));
    }
    item.setOnAction(e -> action.run());
    return item;
  }

  private static CheckMenuItem check(String key, String shortcut, BooleanProperty property) {
    CheckMenuItem item = new CheckMenuItem(Words.of(key));
    item.setAccelerator(KeyCombination.valueOf(shortcut));
    item.selectedProperty().bindBidirectional(property);
    return item;
  }

  private static MenuItem disabled(MenuItem item, ObservableBooleanValue when) {
    item.disableProperty().bind(when);
    return item;
  }
}
