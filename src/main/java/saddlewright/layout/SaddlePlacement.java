package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.design.Saddle;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.layout.SaddleReach.Stop;

/**
 * Lays out saddles: buccal flange, lingual extension, ends against the abutments or over the pads.
 *
 * <p>Centreline of the result is the part of the ridge crest that it covers.
 */
final class SaddlePlacement {
  /** A full flange ends this short of the depth of the sulcus, mm (common practice: 1–2). */
  private static final double SHORT_OF_SULCUS = 1.2;

  /** A gum-fitted saddle ends this far buccal of the crest, mm (from memory). */
  private static final double GUM_FIT = 1.2;

  /** A lower saddle reaches this far beyond the inner border of the ridge, mm (from memory). */
  private static final double LOWER_LINGUAL = 6;

  /** The palatal finish line lies this far beyond the necks of the artificial teeth, mm. */
  private static final double UPPER_LINGUAL = 2.6;

  /** Where the tongue meets metal, the acrylic ends this far beyond the necks, mm. */
  private static final double METAL_FINISH_LINGUAL = 0.6;

  /** A flange is no deeper than this share of its length, or it would be a spur (from memory). */
  private static final double FLANGE_SHARE = 0.36;

  /** Room left between a saddle and the crown of a tooth, mm. */
  private static final double OFF_CROWN = 0.12;

  /** How far the outline is carried under the neighbouring crown before that is cut out, mm. */
  private static final double UNDER_CROWN = 1.6;

  /** Length over which flanges widen from the abutment, mm; less in a short saddle. */
  private static final double FLARE = 7;

  /** Length of the rounded free end, mm. */
  private static final double FREE_END = 8;

  /** Radius of outer corners, mm. */
  private static final double ROUNDING = 0.9;

  private static final double STEP = 0.4;

  /** Exponent of the rounded end: 2 is an ellipse, more is blunter. */
  private static final double BLUNT = 2.5;

  private static final int END_POINTS = 16;

  private final Ground ground;
  private final RidgeFrame ridge;

  SaddlePlacement(Ground ground) {
    this.ground = ground;
    this.ridge = ground.ridge();
  }

  Laid lay(Saddle saddle) {
    SaddleReach reach = SaddleReach.of(ground, saddle.span());
    Region body = cleared(outline(saddle, reach).toRegion());
    Substance substance =
        saddle.base() == Saddle.Base.METAL ? Substance.CAST_METAL : Substance.ACRYLIC;
    return Laid.of(saddle, substance, body)
        .withCentreline(ridge.crest().between(reach.from(), reach.to()))
        .with(Measure.LENGTH, reach.length())
        .with(Measure.AREA_MM2, body.area());
  }

  /** Distance in mm from the crest to the lingual border of a saddle, away from its ends. */
  static double lingualBorder(Ground ground, Saddle saddle, double arc) {
    double beyond =
        saddle.lingualFinish() == Saddle.Finish.METAL
            ? METAL_FINISH_LINGUAL
            : ground.form().arch() == Arch.LOWER ? LOWER_LINGUAL : UPPER_LINGUAL;
    return ground.ridge().lingualMargin(arc) + beyond;
  }

  private double buccalBorder(Saddle saddle, double arc) {
    double full = Math.max(GUM_FIT, ridge.sulcus(arc) - SHORT_OF_SULCUS);
    return switch (saddle.flange()) {
      case FULL -> full;
      case PART -> Math.min(full, (ridge.buccalMargin(arc) + full) / 2);
      case GUM_FITTED -> GUM_FIT;
    };
  }

  private Outline outline(Saddle saddle, SaddleReach reach) {
    double from = reach.first() == Stop.ABUTMENT ? reach.from() - UNDER_CROWN : reach.from();
    double to = reach.last() == Stop.ABUTMENT ? reach.to() + UNDER_CROWN : reach.to();
    int n = Math.max(8, (int) Math.ceil((to - from) / STEP));
    double deepest = FLANGE_SHARE * reach.length();
    double[] inner = new double[n + 1];
    double[] outer = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      double arc = from + (to - from) * i / n;
      inner[i] = lingualBorder(ground, saddle, arc);
      outer[i] = Math.min(buccalBorder(saddle, arc), ridge.buccalMargin(arc) + deepest);
    }
    // Scallops of the necks are no business of a flange: take them out before the ends are shaped.
    inner = Fairing.mean(Fairing.mean(inner, 9), 7);
    outer = Fairing.mean(Fairing.below(outer, 6), 4);
    double flare = Math.max(2, Math.min(FLARE, 1 + 0.28 * reach.length()));
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    for (double arc : arcs(reach, from, to)) {
      double u = (arc - from) / (to - from) * n;
      int i = Math.min(n - 1, (int) u);
      double a = share(reach.first(), arc - reach.from(), arc - from, flare);
      double b = share(reach.last(), reach.to() - arc, to - arc, flare);
      double in = inner[i] + (inner[i + 1] - inner[i]) * (u - i);
      double out = outer[i] + (outer[i + 1] - outer[i]) * (u - i);
      right.add(ridge.at(arc, width(in, a, b, arc, true)));
      left.add(ridge.at(arc, -width(out, a, b, arc, false)));
    }
    Collections.reverse(left);
    right.addAll(left);
    return Outline.of(right);
  }

  /** Positions along the crest at which the outline is found, close together at rounded ends. */
  private static List<Double> arcs(SaddleReach reach, double from, double to) {
    List<Double> out = new ArrayList<>();
    double a = reach.first() == Stop.ABUTMENT || reach.first() == Stop.SADDLE ? 0 : FREE_END;
    double b = reach.last() == Stop.ABUTMENT || reach.last() == Stop.SADDLE ? 0 : FREE_END;
    double room = (to - from) / 2;
    a = Math.min(a, room);
    b = Math.min(b, room);
    for (int k = 0; a > 0 && k < END_POINTS; k++) {
      out.add(from + a * (1 - Math.cos(Math.PI / 2 * k / END_POINTS)));
    }
    int n = Math.max(2, (int) Math.ceil((to - b - from - a) / STEP));
    for (int i = 0; i <= n; i++) {
      out.add(from + a + (to - b - from - a) * i / n);
    }
    for (int k = END_POINTS - 1; b > 0 && k >= 0; k--) {
      out.add(to - b * (1 - Math.cos(Math.PI / 2 * k / END_POINTS)));
    }
    return out;
  }

  /** Share of the full width near an end; negative where a neighbour's neck sets the width. */
  private static double share(Stop stop, double inside, double run, double flare) {
    return switch (stop) {
      case ABUTMENT -> shoulder(inside / flare) - 1;
      case PAD -> Math.max(0.01, round(run / FREE_END));
      case RIDGE -> Math.max(0.01, round(run / 3));
      case SADDLE -> 1;
    };
  }

  private static double shoulder(double u) {
    return Math.sin(Math.PI / 2 * Math.max(0, Math.min(1, u)));
  }

  private static double round(double u) {
    double v = 1 - Math.max(0, Math.min(1, u));
    return Math.pow(Math.max(0, 1 - Math.pow(v, BLUNT)), 1 / BLUNT);
  }

  private double width(double full, double first, double last, double arc, boolean inner) {
    double w = full;
    for (double share : new double[] {first, last}) {
      if (share > 0) {
        w *= share;
      } else if (share < 0) {
        double neck = 0.85 * (inner ? ridge.lingualMargin(arc) : ridge.buccalMargin(arc));
        w = Math.min(w, neck + (Math.max(neck, full) - neck) * (1 + share));
      }
    }
    return w;
  }

  private Region cleared(Region body) {
    Region out = body;
    for (PlacedTooth t : ground.form().teeth()) {
      if (ground.chart().stands(t.tooth()) && t.outline().box().overlaps(body.box())) {
        out = out.minus(t.region().grown(OFF_CROWN));
      }
    }
    // What is left of slivers beyond a crown is no part of a saddle.
    List<Region> big = new ArrayList<>();
    for (Region piece : out.pieces()) {
      if (big.isEmpty() || piece.area() > 8) {
        big.add(piece);
      }
    }
    Region kept = big.isEmpty() ? body : big.size() == 1 ? big.get(0) : Region.union(big);
    return kept.rounded(ROUNDING).simplified(0.02);
  }
}
