package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;

/** Which places of a tooth a tool tells apart. */
public enum Sites {
  TOOTH,
  SEATS,
  ZONES,
  FACES,
  ENDS,
  ENDS_AND_LINGUAL;

  /**
   * One of them.
   *
   * @param name in words; empty for the tooth as a whole
   * @param aim how it is pointed at
   */
  public record Site(String name, Aim aim) {}

  /** A point at this share of the way from the middle of a crown to its edge lies well inside. */
  private static final double INSIDE = 0.82;

  /** The places on a tooth, those towards its mesial end first; none where its space has closed. */
  public List<Site> on(ArchForm form, Tooth tooth) {
    PlacedTooth t = form.tooth(tooth);
    List<Site> out = new ArrayList<>();
    if (t.isClosed()) {
      return out;
    }
    switch (this) {
      case TOOTH -> {}
      case SEATS ->
          Stream.of(RestSite.values())
              .filter(s -> s.existsOn(tooth))
              .forEach(s -> out.add(site(ToothNames.site(s), form, t.seat(s))));
      case ZONES -> {
        for (Zone z : Zone.values()) {
          out.add(rim(ToothNames.zone(tooth, z), form, t, PlacedTooth.degrees(z)));
        }
      }
      case FACES -> {
        for (Face f : Face.values()) {
          out.add(rim(ToothNames.face(tooth, f), form, t, PlacedTooth.degrees(f)));
        }
      }
      case ENDS, ENDS_AND_LINGUAL -> {
        for (End e : End.values()) {
          out.add(rim(ToothNames.end(e), form, t, PlacedTooth.degrees(e)));
        }
        if (this == ENDS_AND_LINGUAL) {
          String face = ToothNames.face(tooth, Face.LINGUAL);
          out.add(rim(face, form, t, PlacedTooth.degrees(Face.LINGUAL)));
        }
      }
    }
    if (out.isEmpty()) {
      out.add(site("", form, t.centre()));
    }
    return out;
  }

  private static Site rim(String name, ArchForm form, PlacedTooth t, double degrees) {
    return site(name, form, t.centre().plus(t.centre().to(t.rim(degrees)).times(INSIDE)));
  }

  private static Site site(String name, ArchForm form, saddlewright.geometry.Point at) {
    return new Site(name, Aim.at(form, at));
  }
}
