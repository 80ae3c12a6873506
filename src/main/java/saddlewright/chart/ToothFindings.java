package saddlewright.chart;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
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
 * @param crownHeight clinical crown height in millimetres
 * @param mesiodistal measured crown width in millimetres, in place of the published mean
 * @param buccolingual measured crown depth in millimetres, in place of the published mean
 * @param condition caries, restoration or soundness
 * @param undercuts surveyed undercuts by zone
 * @param clearances room for a rest in closure, by site, in millimetres
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
    Optional<Double> crownHeight,
    Optional<Double> mesiodistal,
    Optional<Double> buccolingual,
    Optional<Condition> condition,
    Map<Zone, Undercut> undercuts,
    Map<RestSite, Double> clearances,
    boolean visible) {

  public static final ToothFindings STANDING = of(ToothStatus.STANDING, GapDecision.REPLACED);

  public ToothFindings {
    tiltDegrees.ifPresent(v -> Measure.refuseOutside("tilt", v, 0, 90));
    rotationDegrees.ifPresent(v -> Measure.refuseOutside("rotation", v, -180, 180));
    mobility.ifPresent(v -> Measure.refuseOutside("mobility grade", v, 0, 3));
    boneSupportPercent.ifPresent(v -> Measure.refuseOutside("bone support", v, 0, 100));
    crownHeight.ifPresent(v -> Measure.refuseOutside("crown height", v, 0, 20));
    mesiodistal.ifPresent(v -> Measure.refuseOutside("mesiodistal width", v, 2, 16));
    buccolingual.ifPresent(v -> Measure.refuseOutside("buccolingual depth", v, 2, 16));
    clearances.forEach((k, v) -> Measure.refuseOutside("clearance", v, 0, 15));
    undercuts = ordered(undercuts, Zone.class);
    clearances = ordered(clearances, RestSite.class);
  }

  public static ToothFindings of(ToothStatus status, GapDecision gap) {
    return new ToothFindings(
        status,
        gap,
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Map.of(),
        false);
  }

  public ToothFindings withStatus(ToothStatus s) {
    return new ToothFindings(
        s,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withGap(GapDecision g) {
    return new ToothFindings(
        status,
        g,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withAbutment(boolean a) {
    return new ToothFindings(
        status,
        gap,
        a,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withTilt(Optional<Tilt> t, Optional<Double> degrees) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        t,
        degrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withRotation(Optional<Double> degrees) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        degrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withMobility(Optional<Integer> grade) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        grade,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withBoneSupport(Optional<Double> percent) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        percent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        visible);
  }

  /** The same findings with measured crown sizes in millimetres. */
  public ToothFindings withCrown(
      Optional<Double> height, Optional<Double> width, Optional<Double> depth) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        height,
        width,
        depth,
        condition,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withCondition(Optional<Condition> c) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        c,
        undercuts,
        clearances,
        visible);
  }

  public ToothFindings withUndercut(Zone zone, Optional<Undercut> undercut) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        with(undercuts, zone, undercut, Zone.class),
        clearances,
        visible);
  }

  public ToothFindings withClearance(RestSite site, Optional<Double> mm) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        with(clearances, site, mm, RestSite.class),
        visible);
  }

  public ToothFindings withVisible(boolean v) {
    return new ToothFindings(
        status,
        gap,
        abutment,
        tilt,
        tiltDegrees,
        rotationDegrees,
        mobility,
        boneSupportPercent,
        crownHeight,
        mesiodistal,
        buccolingual,
        condition,
        undercuts,
        clearances,
        v);
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
}
