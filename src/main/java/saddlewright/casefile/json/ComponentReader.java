package saddlewright.casefile.json;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
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

/** How the members of one kind of component become that component. */
@FunctionalInterface
interface ComponentReader {
  Component read(MembersIn members, ComponentId id, Arch arch);

  /** The reader of a kind; empty when this version does not know the kind. */
  static Optional<ComponentReader> of(String kind) {
    return Optional.ofNullable(Kinds.ALL.get(kind));
  }

  static Set<String> kinds() {
    return Kinds.ALL.keySet();
  }

  /** The kinds that this version knows, each with its reader. */
  final class Kinds {
    private static final Map<String, ComponentReader> ALL = new TreeMap<>();

    static {
      ALL.put("saddle", Kinds::saddle);
      ALL.put("rest", Kinds::rest);
      ALL.put("clasp", Kinds::clasp);
      ALL.put("reciprocal-arm", Kinds::reciprocalArm);
      ALL.put("guide-plate", Kinds::guidePlate);
      ALL.put("guide-plane", Kinds::guidePlane);
      ALL.put("plating", (m, id, arch) -> new Plating(id, m.span(arch)));
      ALL.put("minor-connector", Kinds::minorConnector);
      ALL.put("major-connector", Kinds::majorConnector);
      ALL.put("retention-mesh", Kinds::retentionMesh);
      ALL.put("finish-line", Kinds::finishLine);
      ALL.put("tissue-stop", (m, id, arch) -> new TissueStop(id, m.tooth("tooth", arch)));
      ALL.put("backing", (m, id, arch) -> new Backing(id, m.tooth("tooth", arch)));
      ALL.put("post-dam", Kinds::postDam);
      ALL.put("relief", Kinds::relief);
      ALL.put("note", Kinds::note);
    }

    private Kinds() {}

    private static Component saddle(MembersIn m, ComponentId id, Arch arch) {
      Saddle usual = Saddle.of(id, m.span(arch));
      return new Saddle(
          id,
          usual.span(),
          m.word("base", Saddle.Base.class).orElse(usual.base()),
          m.word("flange", Saddle.Flange.class).orElse(usual.flange()),
          m.word("lingualFinish", Saddle.Finish.class).orElse(usual.lingualFinish()));
    }

    private static Component rest(MembersIn m, ComponentId id, Arch arch) {
      Rest usual = Rest.of(id, m.tooth("tooth", arch), m.requiredWord("site", RestSite.class));
      return new Rest(
          id,
          usual.tooth(),
          usual.site(),
          m.word("form", Rest.Form.class).orElse(usual.form()),
          m.word("seat", Rest.Seat.class).orElse(usual.seat()),
          m.flag("indirectRetainer"));
    }

    private static Component clasp(MembersIn m, ComponentId id, Arch arch) {
      ClaspForm form = m.requiredWord("form", ClaspForm.class);
      return new Clasp(
          id,
          m.tooth("tooth", arch),
          form,
          m.requiredWord("tip", Zone.class),
          m.requiredWord("origin", End.class),
          m.word("material", ClaspMaterial.class).orElse(form.usualMaterial()));
    }

    private static Component reciprocalArm(MembersIn m, ComponentId id, Arch arch) {
      return new ReciprocalArm(
          id,
          m.tooth("tooth", arch),
          m.requiredWord("face", Face.class),
          m.requiredWord("origin", End.class));
    }

    private static Component guidePlate(MembersIn m, ComponentId id, Arch arch) {
      return new GuidePlate(id, m.tooth("tooth", arch), m.requiredWord("end", End.class));
    }

    private static Component guidePlane(MembersIn m, ComponentId id, Arch arch) {
      return new GuidePlane(
          id, m.tooth("tooth", arch), m.requiredWord("surface", GuidePlane.Surface.class));
    }

    private static Component minorConnector(MembersIn m, ComponentId id, Arch arch) {
      return new MinorConnector(
          id, m.tooth("tooth", arch), m.requiredWord("place", MinorConnector.Place.class));
    }

    private static Component majorConnector(MembersIn m, ComponentId id, Arch arch) {
      ConnectorForm form = m.requiredWord("form", ConnectorForm.class);
      if (form.arch() != arch) {
        throw Refusal.at(
            m.place().member("form"),
            "\"" + Word.of(form) + "\" belongs to the " + form.arch().code() + " arch",
            "Give a form of the " + arch.code() + " arch, or move the component to the other one.");
      }
      return new MajorConnector(
          id, form, m.span(arch), m.object("shape", Kinds::shape).orElse(ConnectorShape.DEFAULT));
    }

    private static ConnectorShape shape(MembersIn m) {
      return new ConnectorShape(
          m.number("clearance"),
          m.number("height"),
          m.number("anteriorBorder"),
          m.number("posteriorBorder"),
          m.number("openingFront"),
          m.number("openingBack"));
    }

    private static Component retentionMesh(MembersIn m, ComponentId id, Arch arch) {
      return new RetentionMesh(id, m.span(arch), m.requiredWord("form", RetentionMesh.Form.class));
    }

    private static Component finishLine(MembersIn m, ComponentId id, Arch arch) {
      return new FinishLine(id, m.span(arch), m.requiredWord("level", FinishLine.Level.class));
    }

    private static Component postDam(MembersIn m, ComponentId id, Arch arch) {
      return new PostDam(id, m.requiredWord("extent", PostDam.Extent.class));
    }

    private static Component relief(MembersIn m, ComponentId id, Arch arch) {
      return new Relief(
          id, m.requiredWord("area", Relief.Area.class), m.requiredNumber("thickness"));
    }

    private static Component note(MembersIn m, ComponentId id, Arch arch) {
      return new Note(
          id,
          m.requiredText("text"),
          m.requiredNumber("x"),
          m.requiredNumber("y"),
          m.number("pointsAtX"),
          m.number("pointsAtY"));
    }
  }
}
