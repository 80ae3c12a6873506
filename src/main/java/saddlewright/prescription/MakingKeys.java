package saddlewright.prescription;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.design.UnknownComponent;

/** Which rows of the table {@code making-sizes} hold for a component. */
final class MakingKeys implements ComponentVisitor<List<String>> {
  static final MakingKeys OF = new MakingKeys();

  private MakingKeys() {}

  @Override
  public List<String> saddle(Saddle saddle) {
    return List.of();
  }

  @Override
  public List<String> rest(Rest rest) {
    if (rest.site() == RestSite.CINGULUM) {
      return List.of("cingulum-rest");
    }
    return List.of(rest.site().isIncisal() ? "incisal-rest" : "occlusal-rest");
  }

  @Override
  public List<String> clasp(Clasp clasp) {
    if (clasp.form().isGingivallyApproaching()) {
      return List.of("bar-arm");
    }
    return switch (clasp.material()) {
      case WROUGHT_GOLD, WROUGHT_STAINLESS_STEEL, WROUGHT_COBALT_CHROMIUM -> List.of("wrought-arm");
      case CAST_COBALT_CHROMIUM, CAST_TITANIUM, CAST_GOLD -> List.of("cast-arm");
      case POLYMER -> List.of();
    };
  }

  @Override
  public List<String> reciprocalArm(ReciprocalArm arm) {
    return List.of();
  }

  @Override
  public List<String> guidePlate(GuidePlate plate) {
    return List.of("guide-plate");
  }

  @Override
  public List<String> guidePlane(GuidePlane plane) {
    return List.of();
  }

  @Override
  public List<String> plating(Plating plating) {
    return List.of("plate");
  }

  @Override
  public List<String> minorConnector(MinorConnector connector) {
    return List.of("minor-connector");
  }

  @Override
  public List<String> majorConnector(MajorConnector connector) {
    return switch (connector.form()) {
      case PALATAL_STRAP, PALATAL_RING, PALATAL_PLATE, HORSESHOE, PALATAL_BAR, LINGUAL_PLATE ->
          List.of("plate");
      case LINGUAL_BAR, LABIAL_BAR -> List.of("lingual-bar");
      case SUBLINGUAL_BAR -> List.of("sublingual-bar");
      case DENTAL_BAR -> List.of("dental-bar");
      case CONTINUOUS_BAR -> List.of("lingual-bar", "continuous-bar");
    };
  }

  @Override
  public List<String> retentionMesh(RetentionMesh mesh) {
    return List.of("lattice");
  }

  @Override
  public List<String> finishLine(FinishLine line) {
    return List.of("finish-line");
  }

  @Override
  public List<String> tissueStop(TissueStop stop) {
    return List.of();
  }

  @Override
  public List<String> backing(Backing backing) {
    return List.of();
  }

  @Override
  public List<String> postDam(PostDam dam) {
    return List.of("beading");
  }

  @Override
  public List<String> relief(Relief relief) {
    return List.of();
  }

  @Override
  public List<String> note(Note note) {
    return List.of();
  }

  @Override
  public List<String> unknown(UnknownComponent unknown) {
    return List.of();
  }
}
