package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Rest;

/** The edits that give a tooth a rest which hangs together with the framework. */
public final class NewRest {
  private NewRest() {}

  /** Such as "Add a mesial rest on 45". */
  public static String label(Tooth tooth, RestSite site) {
    return "Add a " + Naming.of(Rest.of(ComponentId.of("new"), tooth, site));
  }

  /** A rest, with a minor connector unless a saddle or covering metal already joins that place. */
  public static DesignEdit edit(Situation s, Tooth tooth, RestSite site) {
    return edit(s, tooth, site, false);
  }

  /** The same; marked as an indirect retainer when asked. */
  public static DesignEdit edit(Situation s, Tooth tooth, RestSite site, boolean indirectRetainer) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(
        new DesignEdit.Place(
            new Rest(
                s.design().freshId("rest"),
                tooth,
                site,
                Rest.Form.STANDARD,
                seat(tooth, site),
                indirectRetainer)));
    strut(s, tooth, site).ifPresent(m -> edits.add(new DesignEdit.Place(m)));
    return edits.size() == 1 ? edits.get(0) : new DesignEdit.Several(edits);
  }

  /** The enamel of a lower canine is too thin for a seat: its ledge is built up. */
  private static Rest.Seat seat(Tooth tooth, RestSite site) {
    boolean thin = tooth.arch() == Arch.LOWER && tooth.isAnterior() && site == RestSite.CINGULUM;
    return thin ? Rest.Seat.COMPOSITE : Rest.Seat.PREPARED_ENAMEL;
  }

  /** The minor connector that such a rest needs, if any. */
  public static Optional<MinorConnector> strut(Situation s, Tooth tooth, RestSite site) {
    MinorConnector.Place place =
        site.end().map(MinorConnector::embrasure).orElse(MinorConnector.Place.LINGUAL_FACE);
    boolean joined =
        isCovered(s, tooth) || isBesideSaddle(s, tooth, site) || hasStrut(s, tooth, place);
    return joined
        ? Optional.empty()
        : Optional.of(new MinorConnector(s.design().freshId("minor"), tooth, place));
  }

  private static boolean isBesideSaddle(Situation s, Tooth tooth, RestSite site) {
    return site.end()
        .flatMap(tooth::neighbour)
        .filter(t -> !s.chart().stands(t))
        .flatMap(s.design()::saddleAt)
        .isPresent();
  }

  private static boolean isCovered(Situation s, Tooth tooth) {
    return s.design().stream(Plating.class).anyMatch(p -> p.span().contains(tooth))
        || s.design().stream(MajorConnector.class)
            .anyMatch(m -> m.form() == ConnectorForm.LINGUAL_PLATE && m.span().contains(tooth));
  }

  private static boolean hasStrut(Situation s, Tooth tooth, MinorConnector.Place place) {
    return s.design().stream(MinorConnector.class)
        .anyMatch(m -> m.tooth() == tooth && m.place() == place);
  }
}
