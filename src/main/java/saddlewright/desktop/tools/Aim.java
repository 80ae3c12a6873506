package saddlewright.desktop.tools;

import java.util.Optional;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.geometry.Point;

/**
 * What the pointer points at on an arch.
 *
 * @param arch the arch
 * @param point place in the frame of the arch, millimetres
 * @param near the crown or place that lies there
 * @param inside whether the point lies within its outline
 */
public record Aim(Arch arch, Point point, Optional<PlacedTooth> near, boolean inside) {
  /** A crown is pointed at from no farther off than this, mm. */
  private static final double REACH = 4.5;

  /** Half width, in degrees, of the middle zones of a face. */
  private static final double MIDDLE = 24;

  /** The aim at a point of an arch. */
  public static Aim at(ArchForm form, Point point) {
    PlacedTooth best = null;
    double distance = REACH;
    for (PlacedTooth t : form.teeth()) {
      if (t.isClosed() || t.centre().distanceTo(point) > 16) {
        continue;
      }
      double d = t.outline().contains(point) ? 0 : t.outline().toPath().distanceTo(point);
      if (d < distance) {
        best = t;
        distance = d;
      }
    }
    return new Aim(form.arch(), point, Optional.ofNullable(best), best != null && distance == 0);
  }

  public Optional<Tooth> tooth() {
    return near.map(PlacedTooth::tooth);
  }

  /** Direction from the crown's centre, degrees of its own frame. */
  public double degrees() {
    return near.map(t -> t.angleOf(point)).orElse(0.0);
  }

  public Face face() {
    return degrees() < 180 ? Face.BUCCAL : Face.LINGUAL;
  }

  public End end() {
    double d = degrees();
    return d < 90 || d > 270 ? End.MESIAL : End.DISTAL;
  }

  /** The zone of the crown towards the point. */
  public Zone zone() {
    double off = Math.abs(degrees() - (face() == Face.BUCCAL ? 90 : 270));
    return Zone.of(face(), off < MIDDLE ? Optional.empty() : Optional.of(end()));
  }

  /** Whether the point lies towards a mesial or distal surface rather than a face. */
  public boolean isProximal() {
    double d = degrees();
    return d < 38 || d > 322 || Math.abs(d - 180) < 38;
  }

  /** Whether the point lies where a front tooth has its cingulum. */
  boolean isAtCingulum() {
    return near.map(
            t -> {
              double m = t.centre().to(point).dot(t.mesial()) / t.halfWidth();
              double b = t.centre().to(point).dot(t.buccal()) / t.halfDepth();
              return inside && Math.abs(m) < 0.35 && b < -0.4;
            })
        .orElse(false);
  }

  /** The nearest rest site that the tooth has. */
  public Optional<RestSite> restSite() {
    return near.flatMap(
        t -> {
          RestSite best = null;
          for (RestSite s : RestSite.values()) {
            if (s.existsOn(t.tooth()) && (best == null || distance(t, s) < distance(t, best))) {
              best = s;
            }
          }
          return Optional.ofNullable(best);
        });
  }

  /** A cingulum seat is the usual one of a front tooth, so that it is meant from farther off. */
  private double distance(PlacedTooth t, RestSite site) {
    return t.seat(site).distanceTo(point) * (site == RestSite.CINGULUM ? 0.5 : 1);
  }
}
