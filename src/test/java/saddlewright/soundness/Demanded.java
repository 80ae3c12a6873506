package saddlewright.soundness;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Situation;

/**
 * Whether the trade demands a component where it stands: if it does not, taking it away is no
 * fault. Decided from the sources alone and never from what the rule book finds.
 */
final class Demanded {
  private static final int LEAST_RESTS = 3;
  private static final Set<ConnectorForm> COVERING =
      Set.of(ConnectorForm.LINGUAL_PLATE, ConnectorForm.DENTAL_BAR, ConnectorForm.CONTINUOUS_BAR);

  private final Situation sound;
  private final ArchDesign design;

  Demanded(Situation sound) {
    this.sound = sound;
    this.design = sound.design();
  }

  /** Why the rest may go; empty when a source asks for it. */
  Optional<String> spare(Rest rest) {
    List<Rest> left = design.all(Rest.class).stream().filter(r -> r != rest).toList();
    List<Rest> onTooth = left.stream().filter(r -> r.tooth() == rest.tooth()).toList();
    boolean clasped = clasps(rest.tooth()).findAny().isPresent();
    boolean ringed = clasps(rest.tooth()).anyMatch(c -> c.form() == ClaspForm.RING);
    boolean demanded =
        clasped && onTooth.isEmpty()
            || ringed
            || rest.form() == Rest.Form.EMBRASURE
            || carriesSaddle(rest)
            || left.size() < LEAST_RESTS
            || left.stream().noneMatch(r -> r.tooth().side() == rest.tooth().side())
            || rest.indirectRetainer() && needsRetainer(rest, left)
            || carriesPlate(rest, left);
    return demanded
        ? Optional.empty()
        : Optional.of(
            "rest: three or more stay on both sides, every saddle and clasp keeps its own, and"
                + " another indirect retainer stays (no source asks for more)");
  }

  private java.util.stream.Stream<Clasp> clasps(Tooth tooth) {
    return design.stream(Clasp.class).filter(c -> c.tooth() == tooth);
  }

  /** The only rest that carries an end of a saddle (every source on support). */
  private boolean carriesSaddle(Rest rest) {
    for (AreaSupport a : AreaSupport.all(sound)) {
      for (EndSupport e : a.ends()) {
        if (e.abutment() == rest.tooth()) {
          int facing = e.facingRests().size();
          int all = facing + e.otherRests().size();
          if (all == 1 || a.isBounded() && facing == 1 && e.facingRests().contains(rest)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** One indirect retainer at least; in Class I one on each side (Ankara textbook). */
  private boolean needsRetainer(Rest rest, List<Rest> left) {
    List<Rest> others = left.stream().filter(Rest::indirectRetainer).toList();
    boolean classOne = sound.classification().kennedy() == KennedyClass.I;
    boolean otherSideHasOne =
        others.stream().anyMatch(r -> r.tooth().side() != rest.tooth().side());
    boolean thisSideKeepsOne =
        others.stream().anyMatch(r -> r.tooth().side() == rest.tooth().side());
    return others.isEmpty() || classOne && otherSideHasOne && !thisSideKeepsOne;
  }

  private boolean carriesPlate(Rest rest, List<Rest> left) {
    boolean plate = design.stream(MajorConnector.class).anyMatch(m -> COVERING.contains(m.form()));
    return plate
        && left.stream()
            .noneMatch(
                r ->
                    r.tooth().side() == rest.tooth().side()
                        && (r.tooth().isCanine() || r.tooth().isPremolar()));
  }

  /** Why the clasp may go; empty when a source asks for it. */
  Optional<String> spare(Clasp clasp) {
    boolean lastTooth =
        AreaSupport.all(sound).stream()
            .filter(AreaSupport::isFreeEnd)
            .anyMatch(a -> a.ends().get(0).abutment() == clasp.tooth());
    boolean demanded = leavesTooFew(clasp) || lastTooth || clasp.form() == ClaspForm.EMBRASURE;
    return demanded
        ? Optional.empty()
        : Optional.of(
            "clasp: British teaching asks for two, one on each side and one on every last tooth of"
                + " a free end, and they stay (Br Dent J 2001;190, from memory)");
  }

  /** Whether fewer than two clasps, or none on one side, would stay. */
  boolean leavesTooFew(Clasp clasp) {
    List<Clasp> left = design.all(Clasp.class).stream().filter(c -> c != clasp).toList();
    Set<Side> sides = left.stream().map(c -> c.tooth().side()).collect(Collectors.toSet());
    return left.size() < 2 || sides.size() < 2;
  }

  /** Why the arm may go; empty when it is all that opposes a clasp. */
  Optional<String> spare(ReciprocalArm arm) {
    boolean opposes = clasps(arm.tooth()).anyMatch(c -> c.tip().face() != arm.face());
    if (!opposes) {
      return Optional.of("reciprocal arm: there is no clasp on the tooth for it to oppose");
    }
    return arm.face() == Face.LINGUAL && isPlated(arm.tooth(), Optional.empty())
        ? Optional.of("reciprocal arm: a plate covers the same face and opposes the clasp as well")
        : Optional.empty();
  }

  /** Whether the plating is all that opposes a clasp on one of its teeth. */
  boolean reciprocates(Plating plating) {
    return plating.span().teeth().stream()
        .anyMatch(
            t ->
                clasps(t).anyMatch(c -> c.tip().face() == Face.BUCCAL)
                    && !isPlated(t, Optional.of(plating))
                    && design.stream(ReciprocalArm.class).noneMatch(a -> a.tooth() == t)
                    && !isHeldBetweenPlateAndStrut(t));
  }

  private boolean isHeldBetweenPlateAndStrut(Tooth t) {
    return design.stream(GuidePlate.class).anyMatch(p -> p.tooth() == t)
        && design.stream(MinorConnector.class).anyMatch(m -> m.tooth() == t);
  }

  boolean isPlated(Tooth tooth, Optional<Component> butFor) {
    return design.components().stream()
        .filter(c -> butFor.isEmpty() || c != butFor.get())
        .anyMatch(
            c ->
                c instanceof Plating p && p.span().contains(tooth)
                    || c instanceof MajorConnector m
                        && COVERING.contains(m.form())
                        && m.span().contains(tooth));
  }

  /** Why the strut may go; empty when it alone joins a rest to the connector. */
  Optional<String> spare(MinorConnector strut) {
    if (isPlated(strut.tooth(), Optional.empty())) {
      return Optional.of("minor connector: a plate covers the tooth and joins its rest");
    }
    Optional<Tooth> beside = end(strut).flatMap(strut.tooth()::neighbour);
    boolean joins =
        design.stream(Rest.class)
            .anyMatch(
                r ->
                    r.tooth() == strut.tooth() && !isBesideSaddle(r)
                        || beside.equals(Optional.of(r.tooth())));
    if (!joins) {
      return Optional.of(
          "minor connector: no rest needs it there, for its rest hangs on the saddle beside it");
    }
    boolean doubled =
        beside.isPresent()
            && design.stream(MinorConnector.class)
                .anyMatch(
                    m ->
                        m.tooth() == beside.get()
                            && end(m).equals(Optional.of(beside.get().endTowards(strut.tooth()))));
    return doubled
        ? Optional.of("minor connector: its neighbour runs through the same embrasure")
        : Optional.empty();
  }

  /** A rest beside a saddle is cast in one with the metal of the saddle. */
  private boolean isBesideSaddle(Rest rest) {
    return AreaSupport.all(sound).stream()
        .flatMap(a -> a.ends().stream())
        .anyMatch(e -> e.facingRests().contains(rest));
  }

  static Optional<End> end(MinorConnector strut) {
    return switch (strut.place()) {
      case MESIAL_EMBRASURE -> Optional.of(End.MESIAL);
      case DISTAL_EMBRASURE -> Optional.of(End.DISTAL);
      case LINGUAL_FACE -> Optional.empty();
    };
  }

  /** Why the rest may stand at the other end as well; empty when it may not. */
  Optional<String> spareEnd(Rest rest) {
    if (rest.form() == Rest.Form.DOUBLE) {
      return Optional.of("rest: it runs through the whole fissure and has no wrong end");
    }
    boolean lastTooth =
        AreaSupport.all(sound).stream()
            .filter(AreaSupport::isFreeEnd)
            .anyMatch(a -> a.ends().get(0).abutment() == rest.tooth());
    if (lastTooth && rest.site().end().equals(Optional.of(End.DISTAL))) {
      return Optional.of("rest: to move it forward on the last tooth of a free end is a cure");
    }
    if (lastTooth && clasps(rest.tooth()).allMatch(c -> c.material().isWrought())) {
      return Optional.of(
          "rest: on the last tooth of a free end a distal rest with a wrought arm is accepted"
              + " (Oklahoma question 78)");
    }
    if (isPlated(rest.tooth(), Optional.empty())
        && !rest.indirectRetainer()
        && AreaSupport.all(sound).stream()
            .flatMap(a -> a.ends().stream())
            .noneMatch(e -> e.abutment() == rest.tooth())) {
      return Optional.of(
          "rest: a plate joins it at either end of a tooth that stands beside no saddle");
    }
    boolean facesAway =
        AreaSupport.all(sound).stream()
            .filter(AreaSupport::isBounded)
            .flatMap(a -> a.ends().stream())
            .anyMatch(e -> e.facingRests().isEmpty() && e.otherRests().contains(rest));
    if (facesAway) {
      return Optional.of("rest: to turn it towards the bounded saddle is a cure");
    }
    boolean other =
        design.stream(Rest.class)
            .anyMatch(r -> r != rest && r.tooth() == rest.tooth() && r.site().isOcclusal());
    return other
        ? Optional.of("rest: the other end of the tooth has a rest already")
        : Optional.empty();
  }
}
