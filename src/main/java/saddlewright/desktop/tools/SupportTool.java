package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.ComponentId;
import saddlewright.design.JoinedRest;
import saddlewright.design.Rest;
import saddlewright.design.Unit;
import saddlewright.desktop.Words;
import saddlewright.rules.Situation;

/**
 * Places a rest at the site pointed at, with the strut that joins it.
 *
 * @param form extent of the rest
 * @param indirectRetainer whether it is meant against rotation
 */
record SupportTool(Rest.Form form, boolean indirectRetainer) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    if (!aim.inside() || aim.restSite().isEmpty()) {
      return List.of();
    }
    Tooth tooth = aim.tooth().orElseThrow();
    if (!arch.chart().stands(tooth) || !suits(tooth, arch)) {
      return List.of();
    }
    List<RestSite> sites = new ArrayList<>();
    sites.add(aim.restSite().get());
    for (RestSite s : RestSite.values()) {
      if (s.existsOn(tooth) && !sites.contains(s)) {
        sites.add(s);
      }
    }
    List<Proposal> out = new ArrayList<>();
    for (RestSite site : sites) {
      boolean taken =
          arch.design().stream(Rest.class).anyMatch(r -> r.tooth() == tooth && r.site() == site);
      if (taken) {
        if (site == sites.get(0)) {
          // A click on a rest that is there selects it; it must not place one elsewhere.
          return List.of();
        }
        continue;
      }
      Rest rest =
          new Rest(
              ComponentId.of("rest-1"),
              tooth,
              site,
              form,
              site == RestSite.CINGULUM && tooth.fdi() > 30
                  ? Rest.Seat.COMPOSITE
                  : Rest.Seat.PREPARED_ENAMEL,
              indirectRetainer);
      Unit unit = JoinedRest.of(arch.chart(), arch.design(), rest);
      String what =
          Words.of(indirectRetainer ? "edit.indirect" : "edit.rest", ToothNames.site(site), tooth);
      unit.edit()
          .ifPresent(
              e -> out.add(new Proposal(what, aim.arch(), now.subject().with(aim.arch(), e))));
    }
    return out;
  }

  /** Whether a rest of this form can be on the tooth at all. */
  private boolean suits(Tooth tooth, Situation arch) {
    return switch (form) {
      case STANDARD -> true;
      case EXTENDED, DOUBLE -> !tooth.isAnterior();
      case EMBRASURE ->
          !tooth.isAnterior()
              && Stream.of(End.values())
                  .flatMap(e -> tooth.neighbour(e).stream())
                  .anyMatch(n -> !n.isAnterior() && arch.chart().stands(n));
    };
  }

  @Override
  public Sites sites() {
    return Sites.SEATS;
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    if (!aim.inside()) {
      return Optional.empty();
    }
    Tooth tooth = aim.tooth().orElseThrow();
    Optional<Refusal> lost = Reasons.lost(aim, arch.chart());
    if (lost.isPresent()) {
      return lost;
    }
    if (!suits(tooth, arch)) {
      return Optional.of(
          Refusal.of(
              tooth.isAnterior()
                  ? Words.of("refusal.no-occlusal", tooth, Words.of(form).toLowerCase(Locale.ROOT))
                  : Words.of("refusal.no-embrasure", tooth)));
    }
    return Reasons.there(
        arch,
        c ->
            c instanceof Rest r
                && r.tooth() == tooth
                && aim.restSite().filter(x -> x == r.site()).isPresent());
  }

  /** What is said beside a proposal of a site that is not the one pointed at. */
  @Override
  public Optional<String> remark(Aim aim, Assessment now) {
    return aim.tooth()
        .filter(t -> !t.isAnterior() && aim.isAtCingulum())
        .map(t -> Words.of("refusal.no-cingulum", t, ToothNames.sort(t)));
  }
}
