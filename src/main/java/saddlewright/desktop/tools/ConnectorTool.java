package saddlewright.desktop.tools;

import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.desktop.Words;
import saddlewright.layout.ConnectorChoice;
import saddlewright.rules.Situation;

/**
 * Places a major connector with its usual extent, or gives the one that is there another form.
 *
 * @param form the form
 */
record ConnectorTool(ConnectorForm form) implements Tool {
  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    if (form.arch() != aim.arch()) {
      return List.of();
    }
    Situation arch = now.arch(aim.arch());
    ArchDesign design = arch.design();
    Optional<MajorConnector> there = design.majorConnector();
    if (there.isPresent() && there.get().form() == form) {
      return List.of();
    }
    ComponentId id = there.map(MajorConnector::id).orElse(ComponentId.of("connector-1"));
    MajorConnector next = ConnectorChoice.of(id, form, arch.chart(), design);
    DesignEdit edit = there.isPresent() ? new DesignEdit.Change(next) : new DesignEdit.Place(next);
    return List.of(
        new Proposal(
            Words.of("edit.place", Words.of(form), next.span()),
            aim.arch(),
            now.subject().with(aim.arch(), edit)));
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    return form.arch() == aim.arch()
        ? Reasons.there(
            now.arch(aim.arch()), c -> c instanceof MajorConnector m && m.form() == form)
        : Optional.of(Reasons.otherArch(Words.of(form), form.arch()));
  }
}
