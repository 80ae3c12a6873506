package saddlewright.rules.upper;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.PostDam;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A raised bead along the border seals out food and hides the edge from the tongue. */
public final class UpperConnectorsAreBeaded implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-connectors-are-beaded",
          "The borders of an upper connector are beaded.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.UPPER) {
      return;
    }
    List<PostDam> dams = s.design().all(PostDam.class);
    Optional<PostDam> whole =
        dams.stream().filter(d -> d.extent() == PostDam.Extent.ALL_BORDERS).findFirst();
    for (LaidConnector c : LaidConnector.all(s)) {
      if (whole.isPresent()) {
        on.upheld("seals the borders against food", Subject.of(s.arch(), whole.get()));
      } else if (dams.isEmpty()) {
        on.finding(c.name(), c.subject())
            .fact("its borders are not beaded")
            .measured("no beading", "beading on all borders")
            .remedy(
                "Add beading on all borders",
                new DesignEdit.Place(
                    new PostDam(s.design().freshId("dam"), PostDam.Extent.ALL_BORDERS)))
            .done();
      } else {
        on.finding(c.name(), c.subject())
            .fact("only its rear border is beaded")
            .measured("beading on the rear border", "beading on all borders")
            .weighing(Severity.CONSIDER)
            .remedy(
                "Carry the beading round all borders",
                new DesignEdit.Change(new PostDam(dams.get(0).id(), PostDam.Extent.ALL_BORDERS)))
            .done();
      }
    }
  }
}
