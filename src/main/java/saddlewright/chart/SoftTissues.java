package saddlewright.chart;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;

/**
 * What was charted of the soft tissues of one arch.
 *
 * @param lingualDepth gingival margin to raised floor of the mouth, by tooth, in millimetres
 *     (lower)
 * @param buccalDepth gingival margin to the depth of the functional buccal sulcus, by tooth, in mm
 * @param tissueUndercut depth of a buccal tissue undercut within 3 mm of the margin, by tooth, in
 *     mm
 * @param frena teeth beside whose buccal side a frenum inserts
 * @param highLingualFrenum a lingual frenum that comes near the margin (lower)
 * @param tori bony tori
 * @param palate form of the palate (upper)
 * @param ridges state of the edentulous ridge by side
 * @param palateLimit distance from the incisal midpoint to the hard and soft palate junction in mm
 *     (upper), when measured
 */
public record SoftTissues(
    Map<Tooth, Double> lingualDepth,
    Map<Tooth, Double> buccalDepth,
    Map<Tooth, Double> tissueUndercut,
    Set<Tooth> frena,
    boolean highLingualFrenum,
    Set<Torus> tori,
    Optional<PalateForm> palate,
    Map<Side, RidgeState> ridges,
    Optional<Double> palateLimit) {

  public static final SoftTissues UNCHARTED =
      new SoftTissues(
          Map.of(),
          Map.of(),
          Map.of(),
          Set.of(),
          false,
          Set.of(),
          Optional.empty(),
          Map.of(),
          Optional.empty());

  /** A bony torus. */
  public enum Torus {
    PALATAL,
    MANDIBULAR_RIGHT,
    MANDIBULAR_LEFT
  }

  /** Form of the palatal vault. */
  public enum PalateForm {
    SHALLOW,
    MEDIUM,
    HIGH
  }

  /** State of an edentulous ridge. */
  public enum RidgeState {
    WELL_FORMED,
    RESORBED,
    FLABBY,
    RECENTLY_HEALED
  }

  public SoftTissues {
    lingualDepth.forEach((k, v) -> Measure.refuseOutside("lingual sulcus depth", v, 0, 30));
    buccalDepth.forEach((k, v) -> Measure.refuseOutside("buccal sulcus depth", v, 0, 30));
    tissueUndercut.forEach((k, v) -> Measure.refuseOutside("tissue undercut", v, 0, 15));
    palateLimit.ifPresent(v -> Measure.refuseOutside("palate limit", v, 20, 80));
    lingualDepth = byTooth(lingualDepth);
    buccalDepth = byTooth(buccalDepth);
    tissueUndercut = byTooth(tissueUndercut);
    frena = frena.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(frena));
    tori = tori.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(tori));
    Map<Side, RidgeState> r = new EnumMap<>(Side.class);
    r.putAll(ridges);
    ridges = Collections.unmodifiableMap(r);
  }

  /** The teeth beside which anything is charted. */
  public Set<Tooth> teeth() {
    Set<Tooth> out = EnumSet.noneOf(Tooth.class);
    out.addAll(lingualDepth.keySet());
    out.addAll(buccalDepth.keySet());
    out.addAll(tissueUndercut.keySet());
    out.addAll(frena);
    return out;
  }

  public SoftTissues withLingualDepth(Tooth tooth, Optional<Double> mm) {
    return new SoftTissues(
        with(lingualDepth, tooth, mm),
        buccalDepth,
        tissueUndercut,
        frena,
        highLingualFrenum,
        tori,
        palate,
        ridges,
        palateLimit);
  }

  public SoftTissues withBuccalDepth(Tooth tooth, Optional<Double> mm) {
    return new SoftTissues(
        lingualDepth,
        with(buccalDepth, tooth, mm),
        tissueUndercut,
        frena,
        highLingualFrenum,
        tori,
        palate,
        ridges,
        palateLimit);
  }

  public SoftTissues withTissueUndercut(Tooth tooth, Optional<Double> mm) {
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        with(tissueUndercut, tooth, mm),
        frena,
        highLingualFrenum,
        tori,
        palate,
        ridges,
        palateLimit);
  }

  public SoftTissues withFrena(Set<Tooth> f) {
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        tissueUndercut,
        f,
        highLingualFrenum,
        tori,
        palate,
        ridges,
        palateLimit);
  }

  public SoftTissues withHighLingualFrenum(boolean high) {
    return new SoftTissues(
        lingualDepth, buccalDepth, tissueUndercut, frena, high, tori, palate, ridges, palateLimit);
  }

  public SoftTissues withTori(Set<Torus> t) {
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        tissueUndercut,
        frena,
        highLingualFrenum,
        t,
        palate,
        ridges,
        palateLimit);
  }

  public SoftTissues withPalate(Optional<PalateForm> p) {
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        tissueUndercut,
        frena,
        highLingualFrenum,
        tori,
        p,
        ridges,
        palateLimit);
  }

  public SoftTissues withRidge(Side side, Optional<RidgeState> state) {
    Map<Side, RidgeState> r = new EnumMap<>(Side.class);
    r.putAll(ridges);
    state.ifPresentOrElse(s -> r.put(side, s), () -> r.remove(side));
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        tissueUndercut,
        frena,
        highLingualFrenum,
        tori,
        palate,
        r,
        palateLimit);
  }

  public SoftTissues withPalateLimit(Optional<Double> mm) {
    return new SoftTissues(
        lingualDepth,
        buccalDepth,
        tissueUndercut,
        frena,
        highLingualFrenum,
        tori,
        palate,
        ridges,
        mm);
  }

  private static Map<Tooth, Double> byTooth(Map<Tooth, Double> map) {
    Map<Tooth, Double> out = new EnumMap<>(Tooth.class);
    out.putAll(map);
    return Collections.unmodifiableMap(out);
  }

  private static Map<Tooth, Double> with(Map<Tooth, Double> map, Tooth t, Optional<Double> mm) {
    Map<Tooth, Double> out = new EnumMap<>(Tooth.class);
    out.putAll(map);
    mm.ifPresentOrElse(v -> out.put(t, v), () -> out.remove(t));
    return out;
  }
}
