package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentVisitor;
import saddlewright.design.ConnectorShape;
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

/**
 * Each component as an object of the file, its id and kind first. Members are written even where
 * they have the usual value, so that a file still means the same when the usual changes.
 */
final class ComponentWriter implements ComponentVisitor<JsonNode> {
  private final MembersOut design;

  ComponentWriter(MembersOut design) {
    this.design = design;
  }

  private JsonNode known(Component c, String kind, Consumer<MembersOut> rest) {
    return design.item(
        DesignFormat.placeOf(design.place(), c.id().value()),
        m -> {
          m.text("id", c.id().value());
          m.text("kind", kind);
          rest.accept(m);
        });
  }

  @Override
  public JsonNode saddle(Saddle saddle) {
    return known(
        saddle,
        "saddle",
        m -> {
          m.span(saddle.span());
          m.word("base", saddle.base());
          m.word("flange", saddle.flange());
          m.word("lingualFinish", saddle.lingualFinish());
        });
  }

  @Override
  public JsonNode rest(Rest rest) {
    return known(
        rest,
        "rest",
        m -> {
          m.tooth("tooth", rest.tooth());
          m.word("site", rest.site());
          m.word("form", rest.form());
          m.word("seat", rest.seat());
          m.flagIfSet("indirectRetainer", rest.indirectRetainer());
        });
  }

  @Override
  public JsonNode clasp(Clasp clasp) {
    return known(
        clasp,
        "clasp",
        m -> {
          m.tooth("tooth", clasp.tooth());
          m.word("form", clasp.form());
          m.word("tip", clasp.tip());
          m.word("origin", clasp.origin());
          m.word("material", clasp.material());
        });
  }

  @Override
  public JsonNode reciprocalArm(ReciprocalArm arm) {
    return known(
        arm,
        "reciprocal-arm",
        m -> {
          m.tooth("tooth", arm.tooth());
          m.word("face", arm.face());
          m.word("origin", arm.origin());
        });
  }

  @Override
  public JsonNode guidePlate(GuidePlate plate) {
    return known(
        plate,
        "guide-plate",
        m -> {
          m.tooth("tooth", plate.tooth());
          m.word("end", plate.end());
        });
  }

  @Override
  public JsonNode guidePlane(GuidePlane plane) {
    return known(
        plane,
        "guide-plane",
        m -> {
          m.tooth("tooth", plane.tooth());
          m.word("surface", plane.surface());
        });
  }

  @Override
  public JsonNode plating(Plating plating) {
    return known(plating, "plating", m -> m.span(plating.span()));
  }

  @Override
  public JsonNode minorConnector(MinorConnector connector) {
    return known(
        connector,
        "minor-connector",
        m -> {
          m.tooth("tooth", connector.tooth());
          m.word("place", connector.place());
        });
  }

  @Override
  public JsonNode majorConnector(MajorConnector connector) {
    return known(
        connector,
        "major-connector",
        m -> {
          m.word("form", connector.form());
          m.span(connector.span());
          m.object("shape", s -> write(connector.shape(), s));
        });
  }

  private static void write(ConnectorShape shape, MembersOut m) {
    m.number("clearance", shape.clearance());
    m.number("height", shape.height());
    m.number("anteriorBorder", shape.anteriorBorder());
    m.number("posteriorBorder", shape.posteriorBorder());
    m.number("openingFront", shape.openingFront());
    m.number("openingBack", shape.openingBack());
  }

  @Override
  public JsonNode retentionMesh(RetentionMesh mesh) {
    return known(
        mesh,
        "retention-mesh",
        m -> {
          m.span(mesh.span());
          m.word("form", mesh.form());
        });
  }

  @Override
  public JsonNode finishLine(FinishLine line) {
    return known(
        line,
        "finish-line",
        m -> {
          m.span(line.span());
          m.word("level", line.level());
        });
  }

  @Override
  public JsonNode tissueStop(TissueStop stop) {
    return known(stop, "tissue-stop", m -> m.tooth("tooth", stop.tooth()));
  }

  @Override
  public JsonNode backing(Backing backing) {
    return known(backing, "backing", m -> m.tooth("tooth", backing.tooth()));
  }

  @Override
  public JsonNode postDam(PostDam dam) {
    return known(dam, "post-dam", m -> m.word("extent", dam.extent()));
  }

  @Override
  public JsonNode relief(Relief relief) {
    return known(
        relief,
        "relief",
        m -> {
          m.word("area", relief.area());
          m.number("thickness", relief.thickness());
        });
  }

  @Override
  public JsonNode note(Note note) {
    return known(
        note,
        "note",
        m -> {
          m.text("text", note.text());
          m.number("x", note.x());
          m.number("y", note.y());
          m.number("pointsAtX", note.pointsAtX());
          m.number("pointsAtY", note.pointsAtY());
        });
  }

  @Override
  public JsonNode unknown(UnknownComponent unknown) {
    JsonNode source = JsonText.parseKept(unknown.source());
    ObjectNode out =
        source instanceof ObjectNode object
            ? object
            : JsonNodeFactory.instance.objectNode().put("id", "").put("kind", unknown.kind());
    // A copy of an unknown component has an id of its own; all else stays as it was.
    out.put("id", unknown.id().value());
    return out;
  }
}
