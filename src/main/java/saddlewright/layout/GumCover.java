package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Saddle;
import saddlewright.geometry.Box;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/**
 * How much of the lingual gingival margin of every standing tooth lies under the denture.
 *
 * <p>The margin of a tooth is taken from line angle to line angle. Parts that lie on the crown
 * above it (rests, arms, a dental bar) cover nothing.
 */
public final class GumCover {
  /** A margin counts as covered when more than this share of it lies under the denture. */
  private static final double COVERED = 0.5;

  private static final double STEP = 0.75;

  private final Map<Tooth, Double> lengths;
  private final Map<Tooth, Double> shares;
  private final Map<Tooth, Map<ComponentId, Double>> parts;

  private GumCover(
      Map<Tooth, Double> lengths,
      Map<Tooth, Double> shares,
      Map<Tooth, Map<ComponentId, Double>> parts) {
    this.lengths = lengths;
    this.shares = shares;
    this.parts = parts;
  }

  static GumCover of(ArchForm form, List<Laid> all) {
    List<Laid> covers = new ArrayList<>();
    for (Laid l : all) {
      if (covers(l) && !l.body().isEmpty()) {
        covers.add(l);
      }
    }
    Map<Tooth, Double> lengths = new EnumMap<>(Tooth.class);
    Map<Tooth, Double> shares = new EnumMap<>(Tooth.class);
    Map<Tooth, Map<ComponentId, Double>> parts = new EnumMap<>(Tooth.class);
    for (PlacedTooth t : form.teeth()) {
      if (form.chart().stands(t.tooth())) {
        Path margin = form.lingualMargin(t.tooth());
        List<Point> points = margin.sampled(STEP);
        lengths.put(t.tooth(), margin.length());
        Map<ComponentId, Double> by = new HashMap<>();
        shares.put(t.tooth(), share(points, covers, by));
        parts.put(t.tooth(), by);
      }
    }
    return new GumCover(lengths, shares, parts);
  }

  private static boolean covers(Laid l) {
    return l.component() instanceof Saddle
        || l.component() instanceof Plating
        || l.component() instanceof MinorConnector
        || l.component() instanceof GuidePlate
        || l.component() instanceof MajorConnector m && m.form() != ConnectorForm.DENTAL_BAR;
  }

  private static double share(
      List<Point> points, List<Laid> covers, Map<ComponentId, Double> parts) {
    Box box = Box.around(points);
    boolean[] under = new boolean[points.size()];
    for (Laid l : covers) {
      if (!l.body().box().overlaps(box)) {
        continue;
      }
      int held = 0;
      for (int i = 0; i < under.length; i++) {
        if (isUnder(points.get(i), l)) {
          under[i] = true;
          held++;
        }
      }
      if (held > 0) {
        parts.put(l.component().id(), (double) held / under.length);
      }
    }
    int sum = 0;
    for (boolean u : under) {
      sum += u ? 1 : 0;
    }
    return (double) sum / under.length;
  }

  private static boolean isUnder(Point p, Laid l) {
    boolean second =
        l.component() instanceof MajorConnector m && m.form() == ConnectorForm.CONTINUOUS_BAR;
    if (second && l.centreline().isPresent()) {
      // Its upper limb lies on the teeth, over the margins as seen from above.
      return l.centreline().get().distanceTo(p) <= l.measure(Measure.HEIGHT).orElse(0) / 2;
    }
    return l.body().contains(p);
  }

  /** Covered share of the margin of a standing tooth, 0 to 1; 0 where none stands. */
  public double share(Tooth tooth) {
    return shares.getOrDefault(tooth, 0.0);
  }

  /** The share of that margin which one component covers. */
  public double share(Tooth tooth, ComponentId by) {
    return parts.getOrDefault(tooth, Map.of()).getOrDefault(by, 0.0);
  }

  /** Whether more than half of the margin of the tooth is covered. */
  public boolean isCovered(Tooth tooth) {
    return share(tooth) > COVERED;
  }

  /** Whether one component alone covers more than half of the margin of the tooth. */
  public boolean isCovered(Tooth tooth, ComponentId by) {
    return share(tooth, by) > COVERED;
  }

  /** The teeth whose margins are covered, in arch order. */
  public List<Tooth> covered() {
    return shares.keySet().stream()
        .filter(this::isCovered)
        .sorted((a, b) -> Integer.compare(a.place(), b.place()))
        .toList();
  }

  /** The standing teeth in arch order. */
  public List<Tooth> teeth() {
    List<Tooth> out = new ArrayList<>(shares.keySet());
    out.sort((a, b) -> Integer.compare(a.place(), b.place()));
    return Collections.unmodifiableList(out);
  }

  /** Covered length by whole length of all these margins, 0 to 1; 0 where no tooth stands. */
  public double share() {
    double whole = 0;
    double under = 0;
    for (Map.Entry<Tooth, Double> e : lengths.entrySet()) {
      whole += e.getValue();
      under += e.getValue() * share(e.getKey());
    }
    return whole == 0 ? 0 : under / whole;
  }

  /** Length in mm of a margin, as measured here. */
  public double length(Tooth tooth) {
    return lengths.getOrDefault(tooth, 0.0);
  }
}
