package saddlewright.desktop.sheet.handles;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.JoinedRest;
import saddlewright.design.MinorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Quantity;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Situation;

/** The handles of what stands on one tooth: they go from place to place of it. */
final class ToothHandles {
  /** Tips and ends of arms lie this far outside the crown, mm. */
  private static final double OUTSIDE = 0.7;

  private final Situation situation;
  private final Component component;
  private final PlacedTooth tooth;

  private ToothHandles(Situation situation, Component component, Tooth tooth) {
    this.situation = situation;
    this.component = component;
    this.tooth = situation.form().tooth(tooth);
  }

  static List<Handle> of(Situation s, Rest rest) {
    ToothHandles h = new ToothHandles(s, rest, rest.tooth());
    List<RestSite> sites =
        Stream.of(RestSite.values())
            .filter(x -> x.existsOn(rest.tooth()) || x == rest.site())
            .toList();
    List<Stop> stops = new ArrayList<>();
    for (RestSite x : sites) {
      stops.add(new Stop(h.tooth.seat(x), ToothNames.site(x), moved(s, rest, rest.withSite(x))));
    }
    Gauge[] gauges =
        rest.indirectRetainer()
            ? new Gauge[] {
              Gauge.of("indirect-retainers-lie-far-from-the-axis"),
              Gauge.of("indirect-retainers-lie-beyond-the-axis")
            }
            : new Gauge[] {Gauge.of("free-end-rests-lie-away-from-the-saddle")};
    return h.steps("site", stops, sites.indexOf(rest.site()), false, gauges);
  }

  /** The rest with the strut that it alone needs, where it goes. */
  private static DesignEdit moved(Situation s, Rest was, Rest to) {
    DesignEdit change = new DesignEdit.Change(to);
    if (was.equals(to)) {
      return change;
    }
    ArchDesign without = s.design().without(was.id());
    MinorConnector.Place left =
        was.site().end().map(MinorConnector::embrasure).orElse(MinorConnector.Place.LINGUAL_FACE);
    Optional<MinorConnector> strut =
        s.design().stream(MinorConnector.class)
            .filter(m -> m.tooth() == was.tooth() && m.place() == left)
            .findFirst();
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(change);
    ArchDesign bare = strut.map(m -> without.without(m.id())).orElse(without);
    Optional<MinorConnector> needed = JoinedRest.strut(s.chart(), bare, to);
    if (strut.isPresent() && needed.isPresent()) {
      edits.add(new DesignEdit.Change(needed.get().withId(strut.get().id())));
    } else if (strut.isPresent()) {
      edits.add(new DesignEdit.Remove(strut.get().id()));
    } else {
      needed.ifPresent(m -> edits.add(new DesignEdit.Place(m)));
    }
    return edits.size() == 1 ? change : new DesignEdit.Several(edits);
  }

  static List<Handle> of(Situation s, Clasp clasp) {
    ToothHandles h = new ToothHandles(s, clasp, clasp.tooth());
    Optional<Laid> laid = s.layout().find(clasp.id());
    List<Zone> zones = h.zones(clasp);
    List<Stop> tips = new ArrayList<>();
    for (Zone z : zones) {
      Point at =
          z == clasp.tip() && laid.flatMap(Laid::tip).isPresent()
              ? laid.get().tip().get()
              : h.tooth.rimOut(PlacedTooth.degrees(z), OUTSIDE);
      tips.add(
          new Stop(
              at,
              h.zoneWords(z),
              new DesignEdit.Change(z == clasp.tip() ? clasp : ReshapedClasp.tipped(clasp, z))));
    }
    List<Handle> out = new ArrayList<>();
    boolean above = clasp.form().isOcclusallyApproaching();
    out.addAll(
        h.steps(
            "tip",
            tips,
            zones.indexOf(clasp.tip()),
            zones.size() == Zone.values().length,
            Gauge.of("undercuts-suit-the-material", Measure.UNDERCUT),
            Gauge.of("tips-end-in-undercuts"),
            arm(above)));
    List<Stop> origins = new ArrayList<>();
    for (End end : End.values()) {
      origins.add(
          new Stop(
              h.originOf(clasp, laid, end),
              Words.of("handle.from-end", ToothNames.end(end)),
              new DesignEdit.Change(
                  new Clasp(
                      clasp.id(),
                      clasp.tooth(),
                      clasp.form(),
                      clasp.tip(),
                      end,
                      clasp.material()))));
    }
    out.addAll(
        h.steps(
            "origin",
            origins,
            clasp.origin().ordinal(),
            false,
            Gauge.of("arms-start-away-from-their-undercut"),
            arm(above)));
    return out;
  }

  private static Gauge arm(boolean above) {
    return above
        ? Gauge.of("cast-arms-are-long-enough", Quantity.CAST_ARM_LENGTH, Measure.ARM_LENGTH)
        : Gauge.of(
            "bar-arms-clear-the-gingival-margin",
            Quantity.BAR_ARM_MARGIN,
            Measure.MARGIN_CLEARANCE);
  }

  /** The zones, round the crown, that an arm of this form can reach. */
  private List<Zone> zones(Clasp clasp) {
    List<Zone> round =
        List.of(
            Zone.MESIOBUCCAL,
            Zone.MID_BUCCAL,
            Zone.DISTOBUCCAL,
            Zone.DISTOLINGUAL,
            Zone.MID_LINGUAL,
            Zone.MESIOLINGUAL);
    return round.stream()
        .filter(
            z ->
                z == clasp.tip()
                    || (clasp.form() == ClaspForm.RING
                        ? z.end().isPresent()
                        : clasp.form().isOcclusallyApproaching() || z.face() == clasp.tip().face()))
        .toList();
  }

  /** The zone with what the survey found there. */
  private String zoneWords(Zone z) {
    String name = ToothNames.zone(tooth.tooth(), z);
    var undercut = situation.chart().tooth(tooth.tooth()).undercuts().get(z);
    return undercut == null
        ? Words.of("handle.no-undercut", name)
        : Words.of("handle.undercut", name, Words.mm(undercut.depth()));
  }

  /** Where an arm begins, or would begin at the other end of its tooth. */
  private Point originOf(Clasp clasp, Optional<Laid> laid, End end) {
    Optional<Point> root = laid.flatMap(Laid::centreline).map(l -> l.start());
    if (root.isPresent()) {
      if (end == clasp.origin()) {
        return root.get();
      }
      double m = tooth.centre().to(root.get()).dot(tooth.mesial());
      return root.get().minus(tooth.mesial().times(2 * m));
    }
    return tooth.rimOut(PlacedTooth.degrees(end), OUTSIDE);
  }

  static List<Handle> of(Situation s, ReciprocalArm arm) {
    ToothHandles h = new ToothHandles(s, arm, arm.tooth());
    List<Stop> stops = new ArrayList<>();
    int now = 0;
    for (Zone z :
        List.of(Zone.MESIOBUCCAL, Zone.DISTOBUCCAL, Zone.DISTOLINGUAL, Zone.MESIOLINGUAL)) {
      End origin = z.end().orElseThrow().opposite();
      if (z.face() == arm.face() && origin == arm.origin()) {
        now = stops.size();
      }
      stops.add(
          new Stop(
              h.tooth.rimOut(PlacedTooth.degrees(z), OUTSIDE),
              ToothNames.zone(arm.tooth(), z),
              new DesignEdit.Change(new ReciprocalArm(arm.id(), arm.tooth(), z.face(), origin))));
    }
    return h.steps("arm-end", stops, now, true, Gauge.of("reciprocal-arms-face-a-tip"));
  }

  static List<Handle> of(Situation s, GuidePlate plate) {
    ToothHandles h = new ToothHandles(s, plate, plate.tooth());
    List<Stop> stops = new ArrayList<>();
    for (End end : End.values()) {
      stops.add(
          new Stop(
              h.tooth.rimOut(PlacedTooth.degrees(end), OUTSIDE),
              ToothNames.end(end),
              new DesignEdit.Change(new GuidePlate(plate.id(), plate.tooth(), end))));
    }
    return h.steps("surface", stops, plate.end().ordinal(), false);
  }

  static List<Handle> of(Situation s, GuidePlane plane) {
    ToothHandles h = new ToothHandles(s, plane, plane.tooth());
    List<GuidePlane.Surface> round =
        List.of(GuidePlane.Surface.MESIAL, GuidePlane.Surface.LINGUAL, GuidePlane.Surface.DISTAL);
    List<Stop> stops = new ArrayList<>();
    for (GuidePlane.Surface surface : round) {
      double degrees =
          switch (surface) {
            case MESIAL -> PlacedTooth.degrees(End.MESIAL);
            case DISTAL -> PlacedTooth.degrees(End.DISTAL);
            case LINGUAL -> PlacedTooth.degrees(Face.LINGUAL);
          };
      stops.add(
          new Stop(
              h.tooth.rim(degrees),
              low(Words.of(surface)),
              new DesignEdit.Change(new GuidePlane(plane.id(), plane.tooth(), surface))));
    }
    return h.steps("surface", stops, round.indexOf(plane.surface()), false);
  }

  static List<Handle> of(Situation s, MinorConnector strut) {
    ToothHandles h = new ToothHandles(s, strut, strut.tooth());
    List<MinorConnector.Place> round =
        List.of(
            MinorConnector.Place.MESIAL_EMBRASURE,
            MinorConnector.Place.LINGUAL_FACE,
            MinorConnector.Place.DISTAL_EMBRASURE);
    List<Stop> stops = new ArrayList<>();
    for (MinorConnector.Place place : round) {
      Point at =
          switch (place) {
            case MESIAL_EMBRASURE -> h.tooth.at(1, -1.05);
            case LINGUAL_FACE -> h.tooth.at(0, -1.25);
            case DISTAL_EMBRASURE -> h.tooth.at(-1, -1.05);
          };
      stops.add(
          new Stop(
              at,
              low(Words.of(place)),
              new DesignEdit.Change(new MinorConnector(strut.id(), strut.tooth(), place))));
    }
    return h.steps(
        "strut",
        stops,
        round.indexOf(strut.place()),
        false,
        Gauge.of("minor-connectors-stand-apart", Quantity.MINOR_SPACING, Measure.SPACING));
  }

  private static String low(String words) {
    return words.toLowerCase(Locale.ROOT);
  }

  private List<Handle> steps(String id, List<Stop> stops, int now, boolean round, Gauge... gauges) {
    if (stops.size() < 2) {
      return List.of();
    }
    return List.of(
        new Handle(
            id,
            Words.of("handle." + id),
            situation.arch(),
            component.id(),
            new Steps(stops, now, round),
            List.of(gauges)));
  }
}
