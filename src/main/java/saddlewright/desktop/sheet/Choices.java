package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.stage.WindowEvent;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.subject.SubjectMenu;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.Sites;
import saddlewright.desktop.tools.Tool;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;
import saddlewright.rules.Situation;

/** All that the tools of the chosen step would place on a tooth, as items of a menu. */
final class Choices {
  private record Choice(Proposal proposal, Aim aim) {}

  private final SheetPane sheet;
  private final Worktable table;
  private final ToolBox tools;
  private final Ghost ghost;

  Choices(SheetPane sheet, Worktable table, ToolBox tools, Ghost ghost) {
    this.sheet = sheet;
    this.table = table;
    this.tools = tools;
    this.ghost = ghost;
  }

  /**
   * Puts them at the head of a menu: by the places of the tooth where all tools tell the same ones
   * apart, otherwise by tool. While one is the chosen line the sheet shows what it would place.
   */
  void into(SubjectMenu menu, Tooth tooth) {
    Step step = table.stepProperty().get();
    if (step == Step.CHART) {
      // What is charted of a tooth is in its menu at any step.
      return;
    }
    List<MenuItem> items = new ArrayList<>();
    Map<MenuItem, Choice> alone = new LinkedHashMap<>();
    groups(tooth, step)
        .forEach(
            (name, choices) -> {
              if (choices.size() == 1) {
                MenuItem only = item(choices.get(0));
                alone.put(only, choices.get(0));
                items.add(only);
              } else {
                items.add(menu(name, choices));
              }
            });
    menu.lead(items);
    menu.addEventHandler(WindowEvent.WINDOW_SHOWN, e -> alone.forEach(this::show));
    menu.addEventHandler(WindowEvent.WINDOW_HIDDEN, e -> ghost.clear());
  }

  /** Puts at the head of a menu what several teeth can be charted as at once. */
  void into(SubjectMenu menu, List<Tooth> teeth) {
    Menu states = new Menu(Words.of("roll.chart", teeth.size()));
    states.setMnemonicParsing(false);
    for (ToolChoice c : tools.of(Step.CHART)) {
      if (c.tool().isDragged()) {
        MenuItem item = new MenuItem(c.label());
        item.setMnemonicParsing(false);
        item.setOnAction(e -> chart(c.tool(), teeth));
        states.getItems().add(item);
      }
    }
    menu.lead(List.of(states));
  }

  /** Does to each tooth what the tool does, as one edit. */
  private void chart(Tool tool, List<Tooth> teeth) {
    Gesture gesture = new Gesture();
    for (Tooth t : teeth) {
      ArchForm form = table.assessment().arch(t.arch()).form();
      tool.sites().on(form, t).stream()
          .flatMap(s -> tool.proposals(s.aim(), table.assessment()).stream())
          .findFirst()
          .ifPresent(p -> table.apply(p.name(), p.next(), gesture));
    }
    table.select(teeth.stream().map(Subject::of).toArray(Subject[]::new));
  }

  private Map<String, List<Choice>> groups(Tooth tooth, Step step) {
    Assessment now = table.assessment();
    ArchForm form = now.arch(tooth.arch()).form();
    List<ToolChoice> offered =
        tools.of(step).stream()
            .filter(c -> c.arch().map(a -> a == tooth.arch()).orElse(true))
            .toList();
    Set<Sites> told = new LinkedHashSet<>();
    offered.forEach(c -> told.add(c.tool().sites()));
    // The tool that only selects tells nothing apart.
    told.remove(Sites.TOOTH);
    boolean bySite = told.size() == 1;
    Map<String, List<Choice>> out = new LinkedHashMap<>();
    Set<Case> seen = new HashSet<>();
    // What a tool would do at a site first belongs there; its alternatives may belong to another.
    for (boolean usual : new boolean[] {true, false}) {
      for (ToolChoice c : offered) {
        for (Sites.Site s : c.tool().sites().on(form, tooth)) {
          String group = bySite && !s.name().isEmpty() ? Words.capital(s.name()) : c.label();
          List<Proposal> all = c.tool().proposals(s.aim(), now);
          for (Proposal p : usual ? all.subList(0, Math.min(1, all.size())) : all) {
            if (seen.add(p.next())) {
              out.computeIfAbsent(group, g -> new ArrayList<>()).add(new Choice(p, s.aim()));
            }
          }
        }
      }
    }
    return out;
  }

  private Menu menu(String group, List<Choice> choices) {
    Menu menu = new Menu(group);
    menu.setMnemonicParsing(false);
    choices.forEach(c -> menu.getItems().add(item(c)));
    menu.setOnShown(
        e -> {
          for (int i = 0; i < choices.size(); i++) {
            show(menu.getItems().get(i), choices.get(i));
          }
        });
    return menu;
  }

  private MenuItem item(Choice c) {
    MenuItem item = new MenuItem(c.proposal().name());
    item.setMnemonicParsing(false);
    item.setOnAction(e -> new Press(sheet, table).place(c.proposal(), c.aim()));
    return item;
  }

  /** Says what it would measure, and shows it on the sheet while it is the chosen line. */
  private void show(MenuItem item, Choice c) {
    Node line = item.getStyleableNode();
    if (line == null || item.getUserData() != null) {
      return;
    }
    item.setUserData(c);
    Situation old = table.assessment().arch(c.proposal().arch());
    List<String> facts = NewParts.facts(old, NewParts.situation(c.proposal(), table.assessment()));
    if (!facts.isEmpty()) {
      item.setText(c.proposal().name() + "  ·  " + String.join(", ", facts));
    }
    line.focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                ghost.preview(c.proposal());
              } else {
                ghost.clear();
              }
            });
  }
}
