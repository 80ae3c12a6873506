package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Assessment;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.tools.Aim;
import saddlewright.desktop.tools.BothSides;
import saddlewright.desktop.tools.Proposal;
import saddlewright.desktop.tools.Refusal;
import saddlewright.desktop.tools.Tool;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;

/** What the tool in hand would do where one points, and which of it is meant. */
final class Offers {
  /**
   * What a click would do.
   *
   * @param proposal what it would do
   * @param more what else is to be said of it
   */
  record Offer(Proposal proposal, String more) {}

  private final Worktable table;
  private final ToolBox tools;
  private int alternative;

  Offers(Worktable table, ToolBox tools) {
    this.table = table;
    this.tools = tools;
  }

  Optional<Tool> tool() {
    return tools.inHandProperty().get().map(ToolChoice::tool);
  }

  /** Goes back to what is usual. */
  void begin() {
    alternative = 0;
  }

  /** Goes on to the next of the alternatives; false when there is only one. */
  boolean turn(Aim aim, int by) {
    int n = proposals(aim).size();
    if (n < 2) {
      return false;
    }
    alternative = Math.floorMod(alternative % n + by, n);
    return true;
  }

  private List<Proposal> proposals(Aim aim) {
    return tool().map(t -> t.proposals(aim, table.assessment())).orElse(List.of());
  }

  /** What a click there would do. */
  Optional<Offer> at(Aim aim, boolean bothSides) {
    List<Proposal> all = proposals(aim);
    if (all.isEmpty()) {
      return Optional.empty();
    }
    List<String> more = new ArrayList<>();
    tool().flatMap(t -> t.remark(aim, table.assessment())).ifPresent(more::add);
    Proposal chosen = all.get(alternative % all.size());
    if (bothSides) {
      chosen =
          doubled(chosen, aim, m -> tool().orElseThrow().proposals(m, table.assessment()), more);
    }
    if (all.size() > 1) {
      more.add(Words.of("ghost.alternatives", alternative % all.size() + 1, all.size()));
    }
    return Optional.of(new Offer(chosen, String.join("\n", more)));
  }

  /** What dragging from one place to another would do. */
  Optional<Offer> stretched(Aim from, Aim to, boolean bothSides) {
    Optional<Tool> tool = tool();
    Assessment now = table.assessment();
    List<Proposal> all = tool.map(t -> t.stretched(from, to, now)).orElse(List.of());
    if (all.isEmpty()) {
      return Optional.empty();
    }
    List<String> more = new ArrayList<>();
    Proposal chosen = all.get(0);
    if (bothSides) {
      ArchForm form = now.arch(from.arch()).form();
      chosen =
          doubled(
              chosen, from, m -> tool.get().stretched(m, BothSides.mirrored(to, form), now), more);
    }
    return Optional.of(new Offer(chosen, String.join("\n", more)));
  }

  private Proposal doubled(
      Proposal here, Aim aim, Function<Aim, List<Proposal>> there, List<String> more) {
    Assessment now = table.assessment();
    Aim mirrored = BothSides.mirrored(aim, now.arch(aim.arch()).form());
    BothSides both =
        BothSides.of(
            here,
            there.apply(mirrored),
            () -> tool().flatMap(t -> t.refusal(mirrored, now)),
            now.subject());
    both.but().ifPresent(more::add);
    return both.proposal();
  }

  /** Why a click there would place nothing. */
  Optional<Refusal> refusal(Aim aim) {
    return tool().flatMap(t -> t.refusal(aim, table.assessment()));
  }
}
