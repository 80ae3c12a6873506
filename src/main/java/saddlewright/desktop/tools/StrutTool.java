package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.MinorConnector;
import saddlewright.design.Unit;
import saddlewright.desktop.Words;
import saddlewright.rules.Situation;

/** Places a minor connector in the embrasure, or up the face, pointed at. */
record StrutTool() implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    if (aim.tooth().isEmpty() || !arch.chart().stands(aim.tooth().get())) {
      return List.of();
    }
    Tooth tooth = aim.tooth().get();
    MinorConnector.Place place =
        aim.zone().end().map(MinorConnector::embrasure).orElse(MinorConnector.Place.LINGUAL_FACE);
    return Unit.in(arch.design())
        .plus(new MinorConnector(ComponentId.of("minor-1"), tooth, place))
        .edit()
        .map(
            e ->
                new Proposal(
                    Words.of("edit.strut", tooth, Words.of(place)),
                    aim.arch(),
                    now.subject().with(aim.arch(), e)))
        .map(List::of)
        .orElse(List.of());
  }

  @Override
  public Sites sites() {
    return Sites.ENDS_AND_LINGUAL;
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    return Reasons.lost(aim, arch.chart())
        .or(
            () ->
                Reasons.there(
                    arch,
                    c ->
                        c instanceof MinorConnector
                            && c.teeth().equals(aim.tooth().map(List::of).orElse(List.of()))));
  }
}
