package saddlewright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.Stage;
import javafx.stage.Window;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;

/** A walk through everything that the window can show, for tests that look at all of it. */
final class Screens {
  /** What is looked at on each screen. */
  interface Looking {
    void at(String screen) throws Exception;
  }

  private static final Path FAULTY = Path.of("demo-cases", "10-fault-lower-class-2.json");

  /** Actions that open a window or a page of their own. */
  private static final List<String> PAGES =
      List.of(
          "file.preview",
          "design.school-edit",
          "help.shortcuts",
          "help.find",
          "edit.history",
          "edit.preferences",
          "sheet.tooth-card",
          "sheet.soft-tissues",
          "sheet.quick-entry");

  private final OnStage w;
  private final Stage main;

  Screens(OnStage w) throws Exception {
    this.w = w;
    this.main =
        OnStage.run(() -> (Stage) w.find("sheet", javafx.scene.Node.class).getScene().getWindow());
  }

  void walk(Looking looking) throws Exception {
    OnStage.run(
        () -> {
          w.table().close();
          return null;
        });
    w.settle();
    looking.at("welcome page");
    lay(CaseStore.load(FAULTY));
    for (Step s : Step.values()) {
      step(s);
      looking.at("step " + s);
    }
    step(Step.REVIEW);
    OnStage.run(
        () -> {
          w.table().look(w.table().assessment().report().standing().get(0));
          return null;
        });
    w.settle();
    looking.at("a finding opened");
    step(Step.SURVEY);
    select(Subject.of(Tooth.of(34)));
    looking.at("a tooth selected");
    for (Component c : w.table().current().lowerDesign().components()) {
      select(Subject.of(Arch.LOWER, c));
      looking.at("selected: " + c.getClass().getSimpleName());
    }
    Case both = startingWith("03-");
    lay(both);
    step(Step.REVIEW);
    looking.at("both arches");
    for (String key : PAGES) {
      Optional<Action> action = action(key);
      if (action.isPresent()) {
        OnStage.run(
            () -> {
              action.get().run();
              return null;
            });
        Thread.sleep(150);
        w.settle();
        looking.at(key);
        closeOthers();
      }
    }
  }

  private static Case startingWith(String number) throws Exception {
    try (var all = java.nio.file.Files.list(FAULTY.getParent())) {
      Path named =
          all.filter(f -> f.getFileName().toString().startsWith(number))
              .filter(f -> f.toString().endsWith(".json"))
              .findFirst()
              .orElseThrow();
      return CaseStore.load(named);
    }
  }

  private Optional<Action> action(String key) throws Exception {
    String name = Actions.plain(Words.of(key));
    return OnStage.run(() -> Actions.of(w.window.menus())).stream()
        .filter(a -> a.name().equals(name))
        .findFirst();
  }

  private void closeOthers() throws Exception {
    OnStage.run(
        () -> {
          for (Window other : List.copyOf(Window.getWindows())) {
            if (other != main) {
              other.hide();
            }
          }
          return null;
        });
  }

  private void lay(Case c) throws Exception {
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          return null;
        });
    w.settle();
  }

  private void step(Step s) throws Exception {
    OnStage.run(
        () -> {
          w.table().stepProperty().set(s);
          return null;
        });
    w.settle();
  }

  private void select(Subject s) throws Exception {
    OnStage.run(
        () -> {
          w.table().select(s);
          return null;
        });
    w.settle();
  }
}
