package saddlewright.desktop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import saddlewright.archform.PlacedTooth;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.MajorConnector;
import saddlewright.design.Note;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.desktop.subject.Attribute;
import saddlewright.desktop.subject.Attributes;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;
import saddlewright.geometry.Point;

/**
 * Somebody with a mouse who draws a given case from nothing, and looks only at what the ghosts
 * offer: of the places and tools that come into question the one is taken that brings most of what
 * is wanting and least of what is not wanted.
 */
final class Redrawing {
  private static final double[] ALONG = {-0.85, -0.5, 0, 0.5, 0.85};
  private static final double[] ACROSS = {-1.1, -0.8, -0.4, 0, 0.4, 0.8, 1.1};
  private static final ComponentId ANY = ComponentId.of("x-1");

  /** A click that would place something. */
  private record Click(Step step, ToolChoice tool, Aim aim, int turn, Proposal offer, int worth) {}

  private final OnStage w;
  private final Case target;
  private final ToolBox tools;
  private final List<String> left = new ArrayList<>();
  private int actions;

  Redrawing(OnStage w, Case target) throws Exception {
    this.w = w;
    this.target = target;
    this.tools = OnStage.run(() -> new ToolBox(w.table().stepProperty()));
  }

  /** Clicks, drags and keys that it took. */
  int actions() {
    return actions;
  }

  /** What could not be drawn. */
  List<String> left() {
    return left;
  }

  void draw() throws Exception {
    for (Arch arch : Arch.values()) {
      if (isTouched(arch)) {
        show(arch);
        chart(arch);
        survey(arch);
        typeTheRest(arch);
        components(arch);
      }
    }
  }

  private boolean isTouched(Arch arch) {
    return !target.design(arch).components().isEmpty()
        || !target.chart(arch).equals(ArchChart.full(arch));
  }

  private void show(Arch arch) throws Exception {
    w.press("show-" + arch.name());
    actions++;
  }

  /** Runs of teeth of one state are charted by one drag. */
  private void chart(Arch arch) throws Exception {
    press(Step.CHART);
    List<Tooth> run = new ArrayList<>();
    for (int place = 0; place <= 16; place++) {
      Optional<Tooth> t = place < 16 ? Optional.of(Tooth.at(arch, place)) : Optional.<Tooth>empty();
      boolean goesOn = t.isPresent() && !run.isEmpty() && sameState(run.get(0), t.get());
      if (!goesOn && !run.isEmpty()) {
        chart(run);
        run.clear();
      }
      if (t.isPresent() && !isState(t.get(), ToothFindings.STANDING)) {
        run.add(t.get());
      }
    }
  }

  private ToothFindings wanted(Tooth t) {
    return target.chart(t.arch()).tooth(t);
  }

  private boolean sameState(Tooth a, Tooth b) {
    return isState(b, wanted(a));
  }

  private boolean isState(Tooth t, ToothFindings f) {
    return wanted(t).status() == f.status() && wanted(t).gap() == f.gap();
  }

  private void chart(List<Tooth> run) throws Exception {
    Tooth first = run.get(0);
    for (ToolChoice c : tools.of(Step.CHART)) {
      Optional<Aim> aim = aim(first, 0, 0);
      boolean does =
          OnStage.run(
              () ->
                  c.tool().proposals(aim.orElseThrow(), w.table().assessment()).stream()
                      .map(p -> p.next().chart(first.arch()).tooth(first))
                      .anyMatch(
                          f ->
                              f.status() == wanted(first).status()
                                  && f.gap() == wanted(first).gap()));
      if (does) {
        take(c);
        w.drag(run.stream().mapToInt(Tooth::fdi).toArray());
        actions++;
        return;
      }
    }
    left.add("no tool charts " + first + " as " + wanted(first).status());
  }

  private void survey(Arch arch) throws Exception {
    Map<Double, List<Map.Entry<Tooth, Zone>>> byDepth = new java.util.TreeMap<>();
    for (Tooth t : Tooth.values()) {
      if (t.arch() == arch) {
        wanted(t)
            .undercuts()
            .forEach(
                (z, u) ->
                    byDepth
                        .computeIfAbsent(u.depth(), d -> new ArrayList<>())
                        .add(Map.entry(t, z)));
      }
    }
    if (byDepth.isEmpty()) {
      return;
    }
    press(Step.SURVEY);
    for (var e : byDepth.entrySet()) {
      for (var at : e.getValue()) {
        Tooth t = at.getKey();
        Optional<Click> click =
            best(
                arch,
                Step.SURVEY,
                List.of(t),
                (p) -> {
                  ToothFindings f = p.next().chart(arch).tooth(t);
                  boolean hit =
                      Optional.ofNullable(f.undercuts().get(at.getValue()))
                          .map(u -> u.depth() == e.getKey())
                          .orElse(false);
                  return hit ? 1 : 0;
                });
        if (click.isPresent()) {
          click(click.get());
        }
      }
    }
  }

  /** What is typed and not pointed at: heights, tilts, clearances, depths, and depths between. */
  private void typeTheRest(Arch arch) throws Exception {
    OnStage.run(
        () -> {
          w.table().apply("typed survey", w.table().current().with(target.chart(arch)));
          return null;
        });
  }

  private void components(Arch arch) throws Exception {
    for (int guard = 0; guard < 120; guard++) {
      List<Component> wanting = wanting(arch);
      List<Component> surplus = surplus(arch);
      Optional<Component> changed =
          surplus.stream().filter(s -> wanting.stream().anyMatch(t -> isNear(s, t))).findFirst();
      if (changed.isPresent()) {
        Component goal =
            wanting.stream().filter(t -> isNear(changed.get(), t)).findFirst().orElseThrow();
        if (!change(arch, changed.get(), goal)) {
          return;
        }
      } else if (!surplus.isEmpty()) {
        delete(arch, surplus.get(0));
      } else if (wanting.isEmpty()) {
        return;
      } else if (!place(arch, wanting)) {
        return;
      }
    }
    left.add("no end to it");
  }

  private boolean place(Arch arch, List<Component> wanting) throws Exception {
    List<Component> refused = new ArrayList<>();
    List<Component> ordered = new ArrayList<>(wanting);
    ordered.sort(java.util.Comparator.comparingInt(c -> rank(c)));
    for (Component next : ordered) {
      List<Tooth> teeth = next.teeth().isEmpty() ? List.of() : next.teeth();
      Step step = step(next);
      List<Component> there = w.table().current().design(arch).components();
      Optional<Click> click =
          best(arch, step, teeth, p -> worth(p.next().design(arch), there, wanting, next));
      if (click.isPresent()) {
        click(click.get());
        return true;
      }
      refused.add(next);
    }
    refused.forEach(c -> left.add("no click places " + c));
    return false;
  }

  /** Most of what is wanting, least of what is not wanted; 0 when the one sought is not near. */
  private static int worth(
      ArchDesign next, List<Component> there, List<Component> wanting, Component sought) {
    List<Component> open = new ArrayList<>(wanting);
    int worth = 0;
    boolean near = false;
    for (Component c : next.components()) {
      if (there.contains(c)) {
        continue;
      }
      near |= isNear(c, sought);
      Optional<Component> hit = open.stream().filter(o -> same(o, c)).findFirst();
      if (hit.isPresent()) {
        open.remove(hit.get());
        worth += 10;
      } else if (open.stream().anyMatch(o -> isNear(c, o))) {
        worth += 2;
      } else {
        worth -= 6;
      }
    }
    for (Component c : there) {
      worth -= next.components().contains(c) ? 0 : 12;
    }
    return near ? Math.max(1, worth + 20) : 0;
  }

  private static int rank(Component c) {
    return switch (step(c)) {
      case SADDLES -> 0;
      case RETENTION -> 1;
      case SUPPORT -> 2;
      case BRACING -> 3;
      case INDIRECT_RETENTION -> 5;
      case REVIEW -> 6;
      default -> 4;
    };
  }

  private static Step step(Component c) {
    if (c instanceof Rest r && r.indirectRetainer()) {
      return Step.INDIRECT_RETENTION;
    }
    return switch (c.getClass().getSimpleName()) {
      case "Saddle", "RetentionMesh", "FinishLine", "TissueStop", "Backing" -> Step.SADDLES;
      case "Rest" -> Step.SUPPORT;
      case "Clasp" -> Step.RETENTION;
      case "GuidePlate", "GuidePlane", "ReciprocalArm", "Plating" -> Step.BRACING;
      case "Note" -> Step.REVIEW;
      default -> Step.CONNECTORS;
    };
  }

  private interface Worth {
    int of(Proposal p);
  }

  private Optional<Click> best(Arch arch, Step step, List<Tooth> teeth, Worth worth)
      throws Exception {
    return OnStage.run(
        () -> {
          Click best = null;
          for (Aim aim : aims(arch, teeth)) {
            for (ToolChoice c : tools.of(step)) {
              if (c.arch().isPresent() && c.arch().get() != arch) {
                continue;
              }
              List<Proposal> offers = c.tool().proposals(aim, w.table().assessment());
              for (int i = 0; i < offers.size(); i++) {
                int v = worth.of(offers.get(i));
                if (v > 0 && (best == null || v - i > best.worth() - best.turn())) {
                  best = new Click(step, c, aim, i, offers.get(i), v);
                }
              }
            }
          }
          return Optional.ofNullable(best);
        });
  }

  private List<Aim> aims(Arch arch, List<Tooth> teeth) {
    List<Aim> out = new ArrayList<>();
    var form = w.table().assessment().arch(arch).form();
    for (Tooth t : teeth) {
      PlacedTooth p = form.tooth(t);
      for (double b : ACROSS) {
        for (double m : ALONG) {
          Point at = p.at(m, b);
          Aim aim = Aim.at(form, at);
          if (aim.tooth().equals(Optional.of(t))) {
            out.add(aim);
          }
        }
      }
    }
    if (teeth.isEmpty()) {
      out.add(Aim.at(form, new Point(0, 25)));
    }
    return out;
  }

  private Optional<Aim> aim(Tooth t, double m, double b) throws Exception {
    return OnStage.run(
        () -> {
          var form = w.table().assessment().arch(t.arch()).form();
          return Optional.of(Aim.at(form, form.tooth(t).at(m, b)));
        });
  }

  private void press(Step step) throws Exception {
    if (OnStage.run(() -> w.table().stepProperty().get()) != step) {
      w.press("step-" + step.name());
      actions++;
    }
  }

  private final Map<Step, String> inHand = new EnumMap<>(Step.class);

  private void take(ToolChoice c) throws Exception {
    Step step = OnStage.run(() -> w.table().stepProperty().get());
    String first = tools.of(step).get(0).id();
    if (!inHand.getOrDefault(step, first).equals(c.id())) {
      w.press("tool-" + c.id().replace('.', '-'));
      inHand.put(step, c.id());
      actions++;
    }
  }

  private void click(Click c) throws Exception {
    press(c.step());
    take(c.tool());
    w.hoverAt(c.aim().arch(), c.aim().point());
    for (int i = 0; i < c.turn(); i++) {
      w.key(KeyCode.TAB);
      actions++;
    }
    Case before = w.table().current();
    w.clickAt(c.aim().arch(), c.aim().point());
    actions++;
    if (w.table().current().equals(before)) {
      left.add("the click on " + c.offer().name() + " does nothing");
      OnStage.run(
          () -> {
            w.table().apply(c.offer().name(), c.offer().next());
            return null;
          });
    }
  }

  private void delete(Arch arch, Component c) throws Exception {
    press(Step.REVIEW);
    take(tools.of(Step.REVIEW).get(0));
    if (!w.selectByClicking(arch, c.id())) {
      left.add("cannot be selected: " + c);
      OnStage.run(
          () -> {
            w.table().select(Subject.of(arch, c));
            return null;
          });
    }
    actions += 2;
    w.press("delete");
  }

  /** Chooses, one after another, the values that the wanted component has. */
  private boolean change(Arch arch, Component c, Component goal) throws Exception {
    press(Step.REVIEW);
    take(tools.of(Step.REVIEW).get(0));
    if (!w.selectByClicking(arch, c.id())) {
      left.add("cannot be selected: " + c);
      OnStage.run(
          () -> {
            w.table().select(Subject.of(arch, c));
            return null;
          });
      w.settle();
    }
    actions++;
    Component goalHere = goal.withId(c.id());
    if (c instanceof Note n && goal instanceof Note g) {
      OnStage.run(
          () -> {
            w.table()
                .apply(
                    "typed note",
                    w.table()
                        .current()
                        .with(arch, new saddlewright.design.DesignEdit.Change(goalHere)));
            return null;
          });
      actions += n.text().equals(g.text()) ? 1 : 2;
      return true;
    }
    for (int turn = 0; turn < 8; turn++) {
      Component now = w.table().current().design(arch).find(c.id()).orElseThrow();
      if (same(now, goal)) {
        return true;
      }
      List<Attribute> all = OnStage.run(() -> Attributes.of(now));
      List<Attribute> wanted = OnStage.run(() -> Attributes.of(goalHere));
      boolean done = false;
      for (int i = 0; i < all.size() && !done; i++) {
        int chosen = i < wanted.size() ? wanted.get(i).chosen() : -1;
        if (chosen >= 0 && !all.get(i).options().get(chosen).label().equals(label(all.get(i)))) {
          int index = i;
          String value = wanted.get(i).options().get(chosen).label();
          done =
              OnStage.run(
                  () -> {
                    ComboBox<?> box = w.find("attribute-" + index, ComboBox.class);
                    for (int k = 0; k < box.getItems().size(); k++) {
                      if (box.getItems().get(k).toString().equals(value)) {
                        box.getSelectionModel().select(k);
                        return true;
                      }
                    }
                    return false;
                  });
          w.settle();
          actions += 2;
        }
      }
      if (!done) {
        break;
      }
    }
    Component now = w.table().current().design(arch).find(c.id()).orElseThrow();
    if (!same(now, goal)) {
      left.add("cannot be made of " + now + ": " + goal);
      return false;
    }
    return true;
  }

  private static String label(Attribute a) {
    return a.chosen() < 0 ? "" : a.options().get(a.chosen()).label();
  }

  private List<Component> wanting(Arch arch) {
    return without(target.design(arch).components(), w.table().current().design(arch).components());
  }

  private List<Component> surplus(Arch arch) {
    return without(w.table().current().design(arch).components(), target.design(arch).components());
  }

  private static List<Component> without(List<Component> all, List<Component> others) {
    List<Component> open = new ArrayList<>(others);
    List<Component> out = new ArrayList<>();
    for (Component c : all) {
      Optional<Component> hit = open.stream().filter(o -> same(o, c)).findFirst();
      if (hit.isPresent()) {
        open.remove(hit.get());
      } else {
        out.add(c);
      }
    }
    return out;
  }

  private static boolean same(Component a, Component b) {
    return a.withId(ANY).equals(b.withId(ANY));
  }

  /** The same kind of thing at the same place, so that it can be made into the other. */
  private static boolean isNear(Component a, Component b) {
    return a.getClass() == b.getClass()
        && (a.teeth().equals(b.teeth())
            || a instanceof MajorConnector
            || !a.teeth().isEmpty()
                && !b.teeth().isEmpty()
                && b.teeth().containsAll(a.teeth())
                && step(a) == Step.SADDLES);
  }
}
