package saddlewright.rules.indirect;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/** The saddles of a denture that would turn away from their ridge without indirect retention. */
final class IndirectNeed {
  private IndirectNeed() {}

  /** Free-end saddles (Class I and II), and a long saddle of Class IV. */
  static List<Saddle> saddles(Situation s) {
    return switch (s.classification().kennedy()) {
      case I, II ->
          AreaSupport.all(s).stream()
              .filter(AreaSupport::isFreeEnd)
              .map(AreaSupport::saddle)
              .toList();
      case IV ->
          s.design().stream(Saddle.class)
              .filter(x -> x.span().size() >= s.profile().limit(Quantity.LONG_SPAN))
              .toList();
      case III, NONE, EDENTULOUS -> List.of();
    };
  }

  /** The lever arms about the axis that the school looks at. */
  static Optional<IndirectRetention> facts(Situation s, Saddle saddle) {
    return about(s.profile().axis(), s, saddle);
  }

  /** The lever arms about the axis that other schools look at. */
  static Optional<IndirectRetention> otherFacts(Situation s, Saddle saddle) {
    return about(s.profile().axis().other(), s, saddle);
  }

  private static Optional<IndirectRetention> about(Profile.Axis axis, Situation s, Saddle saddle) {
    return axis == Profile.Axis.CLASP
        ? IndirectRetention.aboutClasps(s.layout(), saddle)
        : IndirectRetention.aboutRests(s.layout(), saddle);
  }

  static List<Rest> declared(Situation s) {
    return s.design().stream(Rest.class).filter(Rest::indirectRetainer).toList();
  }
}
