package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspUnit;
import saddlewright.desktop.Words;
import saddlewright.rules.Situation;

/**
 * Places a clasp whose tip lies in the zone pointed at.
 *
 * @param wanted the unit to place; empty proposes what suits the place best
 */
record RetentionTool(Optional<ClaspUnit> wanted) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    if (aim.tooth().isEmpty() || !arch.chart().stands(aim.tooth().get())) {
      return List.of();
    }
    Tooth tooth = aim.tooth().get();
    Zone zone = aim.zone();
    boolean taken =
        arch.design().stream(Clasp.class).anyMatch(c -> c.tooth() == tooth && c.tip() == zone);
    if (taken) {
      return List.of();
    }
    Set<ClaspUnit> units = new LinkedHashSet<>();
    wanted.ifPresent(units::add);
    units.addAll(ClaspUnit.reaching(arch.chart(), arch.design(), tooth, zone));
    List<Proposal> out = new ArrayList<>();
    for (ClaspUnit unit : units) {
      unit.on(arch.chart(), arch.design(), tooth, zone)
          .edit()
          .ifPresent(
              e ->
                  out.add(
                      new Proposal(
                          Words.of(
                              "edit.clasp", Words.of(unit), tooth, ToothNames.zone(tooth, zone)),
                          aim.arch(),
                          now.subject().with(aim.arch(), e))));
    }
    return out;
  }

  @Override
  public Sites sites() {
    return Sites.ZONES;
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    return Reasons.lost(aim, arch.chart())
        .or(
            () ->
                aim.tooth()
                    .flatMap(
                        t ->
                            Reasons.there(
                                    arch,
                                    c ->
                                        c instanceof Clasp k
                                            && k.tooth() == t
                                            && k.tip() == aim.zone())
                                .or(
                                    () ->
                                        Optional.of(
                                            Refusal.of(
                                                Words.of(
                                                    "refusal.no-clasp",
                                                    ToothNames.zone(t, aim.zone())))))));
  }

  /** That the form in hand does not reach the place, so that another is proposed. */
  @Override
  public Optional<String> remark(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    return wanted.flatMap(
        unit ->
            aim.tooth()
                .filter(t -> unit.on(arch.chart(), arch.design(), t, aim.zone()).parts().isEmpty())
                .map(
                    t ->
                        Words.of(
                            "ghost.other-form", Words.of(unit), ToothNames.zone(t, aim.zone()))));
  }
}
