package saddlewright.rules.hygiene;

import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Between two teeth a strut fills room that is there; on the face of one it makes a bulge. */
public final class MinorConnectorsStandInEmbrasures implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "minor-connectors-stand-in-embrasures",
          "The minor connector of a back tooth runs in an embrasure, not up the middle"
              + " of its lingual face.",
          Severity.SHOULD,
          Source.read(
              "teaching notes on minor connectors; " + Literature.RADFORD + " for the other view"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (MinorConnector m : s.design().all(MinorConnector.class)) {
      if (m.tooth().isAnterior()) {
        continue;
      }
      if (m.place() == MinorConnector.Place.LINGUAL_FACE) {
        MinorConnector better =
            new MinorConnector(m.id(), m.tooth(), MinorConnector.embrasure(end(s, m.tooth())));
        on.finding(Naming.of(m), Subject.of(s.arch(), m))
            .fact("runs up the middle of the lingual face")
            .measured("on the face", "in an embrasure")
            .remedy("Move it to the embrasure", new DesignEdit.Change(better))
            .done();
      } else {
        on.upheld("runs in the embrasure, out of the tongue's way", Subject.of(s.arch(), m));
      }
    }
  }

  /** The end at which the tooth bears its rest; mesial without one. */
  private static End end(Situation s, Tooth tooth) {
    return s.design().stream(Rest.class)
        .filter(r -> r.tooth() == tooth)
        .flatMap(r -> r.site().end().stream())
        .findFirst()
        .orElse(End.MESIAL);
  }
}
