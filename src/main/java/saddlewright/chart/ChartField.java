package saddlewright.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;

/**
 * A place of the chart where a value may still be wanting.
 *
 * @param kind what is charted there
 * @param arch the arch
 * @param teeth the teeth beside which it is charted, in the order of the arch; empty for a value of
 *     the arch as a whole
 * @param zone the zone of an undercut
 * @param site the site of a rest
 * @param side the side of a ridge
 */
public record ChartField(
    Kind kind,
    Arch arch,
    List<Tooth> teeth,
    Optional<Zone> zone,
    Optional<RestSite> site,
    Optional<Side> side) {

  /** What is charted. */
  public enum Kind {
    LINGUAL_DEPTH("lingual sulcus depth"),
    BUCCAL_DEPTH("buccal sulcus depth"),
    TISSUE_UNDERCUT("tissue undercut"),
    UNDERCUT("undercut"),
    UNDERCUT_HEIGHT("height of the undercut"),
    CLEARANCE("room for a rest"),
    MOBILITY("mobility"),
    BONE_SUPPORT("bone support"),
    CROWN_ROOT("crown to root ratio"),
    CROWN_HEIGHT("crown height"),
    CONDITION("condition"),
    TILT_DEGREES("degrees of tilt"),
    SADDLE_SPACE("space for the saddle"),
    RIDGE("state of the ridge"),
    PALATE_FORM("form of the palate"),
    PALATE_LIMIT("distance to the soft palate");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public ChartField {
    teeth = teeth.stream().distinct().sorted(java.util.Comparator.comparing(Tooth::place)).toList();
  }

  private static ChartField at(Kind kind, List<Tooth> teeth) {
    return new ChartField(
        kind, teeth.get(0).arch(), teeth, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static ChartField ofArch(Kind kind, Arch arch, Optional<Side> side) {
    return new ChartField(kind, arch, List.of(), Optional.empty(), Optional.empty(), side);
  }

  public static ChartField lingualDepth(List<Tooth> teeth) {
    return at(Kind.LINGUAL_DEPTH, teeth);
  }

  public static ChartField buccalDepth(List<Tooth> teeth) {
    return at(Kind.BUCCAL_DEPTH, teeth);
  }

  public static ChartField tissueUndercut(List<Tooth> teeth) {
    return at(Kind.TISSUE_UNDERCUT, teeth);
  }

  public static ChartField undercut(Tooth tooth, Zone zone) {
    return new ChartField(
        Kind.UNDERCUT,
        tooth.arch(),
        List.of(tooth),
        Optional.of(zone),
        Optional.empty(),
        Optional.empty());
  }

  public static ChartField undercutHeight(Tooth tooth, Zone zone) {
    return new ChartField(
        Kind.UNDERCUT_HEIGHT,
        tooth.arch(),
        List.of(tooth),
        Optional.of(zone),
        Optional.empty(),
        Optional.empty());
  }

  public static ChartField clearance(Tooth tooth, RestSite site) {
    return new ChartField(
        Kind.CLEARANCE,
        tooth.arch(),
        List.of(tooth),
        Optional.empty(),
        Optional.of(site),
        Optional.empty());
  }

  public static ChartField mobility(List<Tooth> teeth) {
    return at(Kind.MOBILITY, teeth);
  }

  public static ChartField boneSupport(List<Tooth> teeth) {
    return at(Kind.BONE_SUPPORT, teeth);
  }

  public static ChartField crownRoot(List<Tooth> teeth) {
    return at(Kind.CROWN_ROOT, teeth);
  }

  public static ChartField crownHeight(List<Tooth> teeth) {
    return at(Kind.CROWN_HEIGHT, teeth);
  }

  public static ChartField condition(List<Tooth> teeth) {
    return at(Kind.CONDITION, teeth);
  }

  public static ChartField tiltDegrees(Tooth tooth) {
    return at(Kind.TILT_DEGREES, List.of(tooth));
  }

  public static ChartField saddleSpace(List<Tooth> teeth) {
    return at(Kind.SADDLE_SPACE, teeth);
  }

  public static ChartField ridge(Arch arch, Side side) {
    return ofArch(Kind.RIDGE, arch, Optional.of(side));
  }

  public static ChartField palateForm() {
    return ofArch(Kind.PALATE_FORM, Arch.UPPER, Optional.empty());
  }

  public static ChartField palateLimit() {
    return ofArch(Kind.PALATE_LIMIT, Arch.UPPER, Optional.empty());
  }

  /** Such as "lingual sulcus depth at 33–43" or "room for a rest, mesial occlusal of 46". */
  public String words() {
    if (zone.isPresent()) {
      return kind.words() + ", " + ToothNames.zone(teeth.get(0), zone.get()) + " of " + where();
    }
    if (site.isPresent()) {
      return kind.words() + ", " + ToothNames.site(site.get()) + " of " + where();
    }
    if (side.isPresent()) {
      return kind.words() + ", " + arch.code() + " " + side.get().code();
    }
    return teeth.isEmpty() ? kind.words() : kind.words() + " at " + where();
  }

  /** The teeth, neighbours drawn together: "43–33, 35". */
  private String where() {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < teeth.size(); ) {
      int j = i;
      while (j + 1 < teeth.size() && teeth.get(j + 1).place() == teeth.get(j).place() + 1) {
        j++;
      }
      runs.add(
          j == i
              ? teeth.get(i).toString()
              : teeth.get(i) + (j == i + 1 ? ", " : "–") + teeth.get(j));
      i = j + 1;
    }
    return runs.stream().collect(Collectors.joining(", "));
  }

  /** Identity of the field, such as "lower/lingual-depth/43+42+41". */
  public String key() {
    StringBuilder out = new StringBuilder(arch.code());
    out.append('/').append(word(kind));
    if (!teeth.isEmpty()) {
      out.append('/').append(teeth.stream().map(Tooth::toString).collect(Collectors.joining("+")));
    }
    zone.ifPresent(z -> out.append('/').append(word(z)));
    site.ifPresent(s -> out.append('/').append(word(s)));
    side.ifPresent(s -> out.append('/').append(s.code()));
    return out.toString();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
