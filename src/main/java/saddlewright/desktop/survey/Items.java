package saddlewright.desktop.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.PublishedRange;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.desktop.Words;

/** All that is charted and surveyed tooth by tooth. */
public final class Items {
  public static final NumberItem TILT_DEGREES =
      NumberItem.of(
              "tooth-tilt-degrees",
              "tilt",
              Unit.DEGREES,
              0,
              90,
              (c, t) -> c.tooth(t).tiltDegrees(),
              (c, t, v) -> c.with(t, c.tooth(t).withTilt(c.tooth(t).tilt(), v)))
          .asked(ArchChart::stands, "survey.not-standing");

  public static final TiltItem TILT = new TiltItem();

  public static final NumberItem ROTATION =
      NumberItem.of(
          "tooth-rotation",
          "rotation",
          Unit.DEGREES,
          -180,
          180,
          (c, t) -> c.tooth(t).rotationDegrees(),
          (c, t, v) -> c.with(t, c.tooth(t).withRotation(v)));

  public static final NumberItem BONE =
      NumberItem.of(
          "tooth-bone",
          "bone-support",
          Unit.PER_CENT,
          0,
          100,
          (c, t) -> c.tooth(t).boneSupportPercent(),
          (c, t, v) -> c.with(t, c.tooth(t).withBoneSupport(v)));

  public static final NumberItem CROWN_ROOT =
      NumberItem.of(
          "tooth-crown-root",
          "crown-root",
          Unit.TO_ONE,
          0.1,
          10,
          (c, t) -> c.tooth(t).crownRoot(),
          (c, t, v) -> c.with(t, c.tooth(t).withCrownRoot(v)));

  public static final NumberItem CROWN_HEIGHT =
      NumberItem.of(
          "tooth-height",
          "crown-height",
          Unit.MILLIMETRES,
          0,
          20,
          (c, t) -> c.tooth(t).crownHeight(),
          (c, t, v) -> {
            ToothFindings f = c.tooth(t);
            return c.with(t, f.withCrown(v, f.mesiodistal(), f.buccolingual()));
          });

  public static final NumberItem WIDTH =
      NumberItem.of(
          "tooth-width",
          "crown-width",
          Unit.MILLIMETRES,
          2,
          16,
          (c, t) -> c.tooth(t).mesiodistal(),
          (c, t, v) -> {
            ToothFindings f = c.tooth(t);
            return c.with(t, f.withCrown(f.crownHeight(), v, f.buccolingual()));
          });

  public static final NumberItem DEPTH =
      NumberItem.of(
          "tooth-depth",
          "crown-depth",
          Unit.MILLIMETRES,
          2,
          16,
          (c, t) -> c.tooth(t).buccolingual(),
          (c, t, v) -> {
            ToothFindings f = c.tooth(t);
            return c.with(t, f.withCrown(f.crownHeight(), f.mesiodistal(), v));
          });

  public static final NumberItem SADDLE_SPACE =
      NumberItem.of(
              "tooth-saddle-space",
              "saddle-space",
              Unit.MILLIMETRES,
              0,
              30,
              (c, t) -> c.tooth(t).saddleSpace(),
              (c, t, v) -> c.with(t, c.tooth(t).withSaddleSpace(v)))
          .asked(ArchChart::isLost, "survey.only-of-gaps");

  public static final NumberItem LINGUAL_DEPTH =
      NumberItem.of(
              "soft-lingual",
              "lingual-depth",
              Unit.MILLIMETRES,
              0,
              30,
              (c, t) -> Optional.ofNullable(c.softTissues().lingualDepth().get(t)),
              (c, t, v) -> c.with(c.softTissues().withLingualDepth(t, v)))
          .asked((c, t) -> t.arch() == Arch.LOWER, "survey.only-lower");

  public static final NumberItem BUCCAL_DEPTH =
      NumberItem.of(
              "soft-buccal",
              "buccal-depth",
              Unit.MILLIMETRES,
              0,
              30,
              (c, t) -> Optional.ofNullable(c.softTissues().buccalDepth().get(t)),
              (c, t, v) -> c.with(c.softTissues().withBuccalDepth(t, v)))
          .asked((c, t) -> true, "");

  public static final NumberItem TISSUE_UNDERCUT =
      NumberItem.of(
              "soft-undercut",
              "tissue-undercut",
              Unit.MILLIMETRES,
              0,
              15,
              (c, t) -> Optional.ofNullable(c.softTissues().tissueUndercut().get(t)),
              (c, t, v) -> c.with(c.softTissues().withTissueUndercut(t, v)))
          .asked((c, t) -> true, "");

  private static final Map<Zone, NumberItem> UNDERCUTS = new EnumMap<>(Zone.class);
  private static final Map<Zone, NumberItem> HEIGHTS = new EnumMap<>(Zone.class);
  private static final Map<RestSite, NumberItem> ROOM = new EnumMap<>(RestSite.class);

  static {
    for (Zone z : Zone.values()) {
      UNDERCUTS.put(z, undercutItem(z));
      HEIGHTS.put(z, heightItem(z));
    }
    for (RestSite s : RestSite.values()) {
      ROOM.put(s, roomItem(s));
    }
  }

  /**
   * Items that belong together.
   *
   * @param id stable name, under which its title stands
   */
  public record Group(String id, List<Item> items) {
    public Group {
      items = List.copyOf(items);
    }

    public String title() {
      return Words.of("survey.group." + id);
    }
  }

  private Items() {}

  /** The depth of the undercut in a zone. */
  public static NumberItem undercut(Zone zone) {
    return UNDERCUTS.get(zone);
  }

  /** How far above the gingival margin the undercut in a zone lies. */
  public static NumberItem undercutHeight(Zone zone) {
    return HEIGHTS.get(zone);
  }

  /** The room for a rest at a site. */
  public static NumberItem room(RestSite site) {
    return ROOM.get(site);
  }

  /** All items that an arch has, in the order of the survey. */
  public static List<Group> of(Arch arch) {
    List<Item> soft = new ArrayList<>();
    soft.add(SADDLE_SPACE);
    if (arch == Arch.LOWER) {
      soft.add(LINGUAL_DEPTH);
    }
    soft.addAll(List.of(BUCCAL_DEPTH, TISSUE_UNDERCUT, frenum()));
    return List.of(
        new Group("chart", List.of(status(), gap())),
        new Group(
            "abutment",
            List.of(condition(), mobility(), BONE, CROWN_ROOT, doubtful(), TILT, ROTATION)),
        new Group("crown", List.of(CROWN_HEIGHT, WIDTH, DEPTH, visible())),
        new Group("undercuts", List.copyOf(UNDERCUTS.values())),
        new Group("undercut-heights", List.copyOf(HEIGHTS.values())),
        new Group("room", List.copyOf(ROOM.values())),
        new Group("soft", soft));
  }

  private static NumberItem undercutItem(Zone zone) {
    return NumberItem.of(
            "undercut-" + zone,
            "undercut",
            Unit.MILLIMETRES,
            0,
            5,
            (c, t) -> Optional.ofNullable(c.tooth(t).undercuts().get(zone)).map(Undercut::depth),
            (c, t, v) -> {
              ToothFindings f = c.tooth(t);
              Optional<Double> height =
                  Optional.ofNullable(f.undercuts().get(zone)).flatMap(Undercut::height);
              return c.with(t, f.withUndercut(zone, v.map(d -> new Undercut(d, height))));
            })
        .named(
            a -> Words.capital(zoneOf(a, zone)),
            t -> Words.of("survey.undercut.name", ToothNames.zone(t, zone)));
  }

  private static NumberItem heightItem(Zone zone) {
    return NumberItem.of(
            "undercut-height-" + zone,
            "undercut-height",
            Unit.MILLIMETRES,
            0,
            15,
            (c, t) ->
                Optional.ofNullable(c.tooth(t).undercuts().get(zone)).flatMap(Undercut::height),
            (c, t, v) -> {
              ToothFindings f = c.tooth(t);
              Undercut old = f.undercuts().get(zone);
              return old == null
                  ? c
                  : c.with(t, f.withUndercut(zone, Optional.of(new Undercut(old.depth(), v))));
            })
        .named(
            a -> Words.capital(zoneOf(a, zone)),
            t -> Words.of("survey.undercut-height.name", ToothNames.zone(t, zone)))
        .asked(
            (c, t) -> c.stands(t) && c.tooth(t).undercuts().containsKey(zone),
            "survey.no-undercut-yet");
  }

  private static NumberItem roomItem(RestSite site) {
    return NumberItem.of(
            "clearance-" + site,
            "clearance",
            Unit.MILLIMETRES,
            0,
            15,
            (c, t) -> Optional.ofNullable(c.tooth(t).clearances().get(site)),
            (c, t, v) -> c.with(t, c.tooth(t).withClearance(site, v)))
        .named(
            a -> Words.capital(ToothNames.site(site)),
            t -> Words.of("survey.clearance.name", ToothNames.site(site)))
        .asked((c, t) -> c.stands(t) && site.existsOn(t), "survey.no-site");
  }

  /** The zone as it is called at a back tooth of the arch. */
  private static String zoneOf(Arch arch, Zone zone) {
    return ToothNames.zone(Tooth.at(arch, 2), zone);
  }

  private static Item status() {
    return new ChoiceItem<>(
        "tooth-status",
        List.of(ToothStatus.values()),
        Items::brief,
        (c, t) -> Optional.of(c.tooth(t).status()),
        (c, t, s) -> c.with(t, c.tooth(t).withStatus(s.orElse(ToothStatus.STANDING))),
        (c, t) -> true);
  }

  private static Item gap() {
    return new ChoiceItem<>(
        "tooth-gap",
        List.of(GapDecision.values()),
        Items::brief,
        (c, t) -> Optional.of(c.tooth(t).gap()),
        (c, t, g) -> c.with(t, c.tooth(t).withGap(g.orElse(GapDecision.REPLACED))),
        (c, t) -> c.tooth(t).status() != ToothStatus.STANDING);
  }

  private static Item condition() {
    return new ChoiceItem<>(
        "tooth-condition",
        List.of(Condition.values()),
        Items::brief,
        (c, t) -> c.tooth(t).condition(),
        (c, t, v) -> c.with(t, c.tooth(t).withCondition(v)),
        ArchChart::stands);
  }

  private static Item mobility() {
    return new ChoiceItem<>(
        "tooth-mobility",
        List.of(0, 1, 2, 3),
        g -> Integer.toString(g),
        (c, t) -> c.tooth(t).mobility(),
        (c, t, v) -> c.with(t, c.tooth(t).withMobility(v)),
        ArchChart::stands);
  }

  private static Item doubtful() {
    return yes("tooth-doubtful", ToothFindings::doubtful, (f, on) -> f.withDoubtful(on));
  }

  private static Item visible() {
    return yes("tooth-visible", ToothFindings::visible, (f, on) -> f.withVisible(on));
  }

  private static Item yes(
      String id,
      java.util.function.Predicate<ToothFindings> is,
      java.util.function.BiFunction<ToothFindings, Boolean, ToothFindings> with) {
    return new ChoiceItem<>(
        id,
        List.of(true, false),
        yesOrNo(),
        (c, t) -> is.test(c.tooth(t)) ? Optional.of(true) : Optional.empty(),
        (c, t, v) -> c.with(t, with.apply(c.tooth(t), v.orElse(false))),
        ArchChart::stands);
  }

  private static Item frenum() {
    return new ChoiceItem<>(
        "soft-frenum",
        List.of(true, false),
        yesOrNo(),
        (c, t) -> c.softTissues().frena().contains(t) ? Optional.of(true) : Optional.empty(),
        (c, t, v) -> c.with(withFrenum(c.softTissues(), t, v.orElse(false))),
        (c, t) -> true);
  }

  /** The soft tissues with a frenum beside the tooth, or without. */
  public static SoftTissues withFrenum(SoftTissues s, Tooth tooth, boolean there) {
    Set<Tooth> out = EnumSet.noneOf(Tooth.class);
    out.addAll(s.frena());
    if (there) {
      out.add(tooth);
    } else {
      out.remove(tooth);
    }
    return s.withFrena(out);
  }

  private static Function<Boolean, String> yesOrNo() {
    return b -> Words.of(b ? "survey.yes" : "survey.no");
  }

  /** The shortest plain word for a constant. */
  private static String brief(Enum<?> constant) {
    return Words.of("survey.brief." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** The item of this id, of whichever arch. */
  public static Optional<Item> find(String id) {
    return Arrays.stream(Arch.values())
        .flatMap(a -> of(a).stream())
        .flatMap(g -> g.items().stream())
        .filter(i -> i.id().equals(id))
        .findFirst();
  }

  /** What is odd about where the hard palate ends, mm from the incisal midpoint. */
  public static Optional<String> palateLimitCaution(double mm) {
    return PublishedRange.of("palate-limit", Tooth.T11)
        .flatMap(r -> Likelihood.caution(Words.of("soft.palate-limit"), mm, Unit.MILLIMETRES, r));
  }
}
