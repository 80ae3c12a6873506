package saddlewright.chart;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;

/**
 * What was charted for one tooth.
 *
 * @param status whether it stands
 * @param gap what becomes of its place; read only when the tooth does not stand
 * @param abutment said to serve as an abutment (matters for a standing third molar)
 * @param tilt the way it leans, if it does
 * @param tiltDegrees by how much, in degrees
 * @param rotationDegrees turn about its long axis, in degrees, mesial towards lingual positive
 * @param mobility Miller grade 0 to 3
 * @param boneSupportPercent bone left around the root, per cent
 * @param crownRoot length of the clinical crown over that of the root in bone: 0.5 is a crown half
 *     as long as its root
 * @param crownHeight clinical crown height in millimetres
 * @param mesiodistal measured crown width in millimetres, in place of the published mean
 * @param buccolingual measured crown depth in millimetres, in place of the published mean
 * @param condition caries, restoration or soundness
 * @param doubtful may be lost before the denture is: its prognosis is doubtful
 * @param undercuts surveyed undercuts by zone; one of depth 0 was looked for and not found
 * @param clearances room for a rest in closure, by site, in millimetres
 * @param saddleSpace height from the ridge to the opposing teeth in millimetres, at a lost tooth
 * @param visible lies in the aesthetic zone
 */
public record ToothFindings(
    ToothStatus status,
    GapDecision gap,
    boolean abutment,
    Optional<Tilt> tilt,
    Optional<Double> tiltDegrees,
    Optional<Double> rotationDegrees,
    Optional<Integer> mobility,
    Optional<Double> boneSupportPercent,
    Optional<Double> crownRoot,
    Optional<Double> crownHeight,
    Optional<Double> mesiodistal,
    Optional<Double> buccolingual,
    Optional<Condition> condition,
    boolean doubtful,
    Map<Zone, Undercut> undercuts,
    Map<RestSite, Double> clearances,
    Optional<Double> saddleSpace,
    boolean visible) {

  public static final ToothFindings STANDING = of(ToothStatus.STANDING, GapDecision.REPLACED);

  public ToothFindings {
    tiltDegrees.ifPresent(v -> Measure.refuseOutside("tilt", v, 0, 90));
    rotationDegrees.ifPresent(v -> Measure.refuseOutside("rotation", v, -180, 180));
    mobility.ifPresent(v -> Measure.refuseOutside("mobility grade", v, 0, 3));
    boneSupportPercent.ifPresent(v -> Measure.refuseOutside("bone support", v, 0, 100));
    crownRoot.ifPresent(v -> Measure.refuseOutside("crown to root ratio", v, 0.1, 10));
    crownHeight.ifPresent(v -> Measure.refuseOutside("crown height", v, 0, 20));
    mesiodistal.ifPresent(v -> Measure.refuseOutside("mesiodistal width", v, 2, 16));
    buccolingual.ifPresent(v -> Measure.refuseOutside("buccolingual depth", v, 2, 16));
    clearances.forEach((k, v) -> Measure.refuseOutside("clearance", v, 0, 15));
    saddleSpace.ifPresent(v -> Measure.refuseOutside("space for the saddle", v, 0, 30));
    undercuts = ordered(undercuts, Zone.class);
    clearances = ordered(clearances, RestSite.class);
  }

  public static ToothFindings of(ToothStatus status, GapDecision gap) {
    Copy c = new Copy();
    c.status = status;
    c.gap = gap;
    return c.done();
  }

  public ToothFindings withStatus(ToothStatus s) {
    return copy(c -> c.status = s);
  }

  public ToothFindings withGap(GapDecision g) {
    return copy(c -> c.gap = g);
  }

  public ToothFindings withAbutment(boolean a) {
    return copy(c -> c.abutment = a);
  }

  public ToothFindings withTilt(Optional<Tilt> t, Optional<Double> degrees) {
    return copy(
        c -> {
          c.tilt = t;
          c.tiltDegrees = degrees;
        });
  }

  public ToothFindings withRotation(Optional<Double> degrees) {
    return copy(c -> c.rotationDegrees = degrees);
  }

  public ToothFindings withMobility(Optional<Integer> grade) {
    return copy(c -> c.mobility = grade);
  }

  public ToothFindings withBoneSupport(Optional<Double> percent) {
    return copy(c -> c.boneSupportPercent = percent);
  }

  public ToothFindings withCrownRoot(Optional<Double> ratio) {
    return copy(c -> c.crownRoot = ratio);
  }

  /** The same findings with measured crown sizes in millimetres. */
  public ToothFindings withCrown(
      Optional<Double> height, Optional<Double> width, Optional<Double> depth) {
    return copy(
        c -> {
          c.crownHeight = height;
          c.mesiodistal = width;
          c.buccolingual = depth;
        });
  }

  public ToothFindings withCondition(Optional<Condition> found) {
    return copy(c -> c.condition = found);
  }

  public ToothFindings withDoubtful(boolean d) {
    return copy(c -> c.doubtful = d);
  }

  public ToothFindings withUndercut(Zone zone, Optional<Undercut> undercut) {
    return copy(c -> c.undercuts = with(undercuts, zone, undercut, Zone.class));
  }

  public ToothFindings withClearance(RestSite site, Optional<Double> mm) {
    return copy(c -> c.clearances = with(clearances, site, mm, RestSite.class));
  }

  public ToothFindings withSaddleSpace(Optional<Double> mm) {
    return copy(c -> c.saddleSpace = mm);
  }

  public ToothFindings withVisible(boolean v) {
    return copy(c -> c.visible = v);
  }

  private ToothFindings copy(Consumer<Copy> change) {
    Copy c = new Copy(this);
    change.accept(c);
    return c.done();
  }

  private static <K extends Enum<K>, V> Map<K, V> ordered(Map<K, V> map, Class<K> keys) {
    Map<K, V> out = new EnumMap<>(keys);
    out.putAll(map);
    return Collections.unmodifiableMap(out);
  }

  private static <K extends Enum<K>, V> Map<K, V> with(
      Map<K, V> map, K key, Optional<V> value, Class<K> keys) {
    Map<K, V> out = new EnumMap<>(keys);
    out.putAll(map);
    value.ifPresentOrElse(v -> out.put(key, v), () -> out.remove(key));
    return out;
  }

  /** The findings on the table, one of which is about to change. */
  private static final class Copy {
    private ToothStatus status;
    private GapDecision gap;
    private boolean abutment;
    private Optional<Tilt> tilt = Optional.empty();
    private Optional<Double> tiltDegrees = Optional.empty();
    private Optional<Double> rotationDegrees = Optional.empty();
    private Optional<Integer> mobility = Optional.empty();
    private Optional<Double> boneSupportPercent = Optional.empty();
    private Optional<Double> crownRoot = Optional.empty();
    private Optional<Double> crownHeight = Optional.empty();
    private Optional<Double> mesiodistal = Optional.empty();
    private Optional<Double> buccolingual = Optional.empty();
    private Optional<Condition> condition = Optional.empty();
    private boolean doubtful;
    private Map<Zone, Undercut> undercuts = Map.of();
    private Map<RestSite, Double> clearances = Map.of();
    private Optional<Double> saddleSpace = Optional.empty();
    private boolean visible;

    Copy() {}

    Copy(ToothFindings f) {
      status = f.status;
      gap = f.gap;
      abutment = f.abutment;
      tilt = f.tilt;
      tiltDegrees = f.tiltDegrees;
      rotationDegrees = f.rotationDegrees;
      mobility = f.mobility;
      boneSupportPercent = f.boneSupportPercent;
      crownRoot = f.crownRoot;
      crownHeight = f.crownHeight;
      mesiodistal = f.mesiodistal;
      buccolingual = f.buccolingual;
      condition = f.condition;
      doubtful = f.doubtful;
      undercuts = f.undercuts;
      clearances = f.clearances;
      saddleSpace = f.saddleSpace;
      visible = f.visible;
    }

    ToothFindings done() {
      return new ToothFindings(
          status,
          gap,
          abutment,
          tilt,
          tiltDegrees,
          rotationDegrees,
          mobility,
          boneSupportPercent,
          crownRoot,
          crownHeight,
          mesiodistal,
          buccolingual,
          condition,
          doubtful,
          undercuts,
          clearances,
          saddleSpace,
          visible);
    }
  }
}
