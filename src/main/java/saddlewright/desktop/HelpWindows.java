package saddlewright.desktop;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import saddlewright.desktop.help.AboutPane;
import saddlewright.desktop.help.CautionsPane;
import saddlewright.desktop.help.GlossaryPane;
import saddlewright.desktop.help.HelpPane;

/** The windows that the Help menu opens beside the editor; none of them holds up the work. */
final class HelpWindows {
  private final Worktable table;
  private final Stage owner;
  private final Map<String, SideWindow> open = new HashMap<>();

  HelpWindows(Worktable table, Stage owner) {
    this.table = table;
    this.owner = owner;
  }

  /** Help for the step that is worked at; asked for again, it comes back to that step. */
  void step() {
    SideWindow w = window("help.title", () -> new HelpPane(table), 560, 760);
    w.show();
    ((HelpPane) w.pane()).here();
  }

  void glossary() {
    window("glossary.title", GlossaryPane::new, 640, 760).show();
  }

  void cautions() {
    window("cautions.title", CautionsPane::new, 560, 420).show();
  }

  void about() {
    window("about.title", AboutPane::new, 620, 720).show();
  }

  /** The welcome page over the case, if one is open. */
  void welcome() {
    table.welcomeShownProperty().set(true);
  }

  /** The window of a title, made when it is first asked for. */
  SideWindow window(String title, Supplier<Region> pane, double width, double height) {
    return open.computeIfAbsent(
        title, t -> new SideWindow(table, owner, Words.of(t), pane.get(), width, height));
  }
}
