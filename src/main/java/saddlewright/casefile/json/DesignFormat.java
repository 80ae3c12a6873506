package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.UnknownComponent;

/** The design of an arch in the file: its components, in the order in which they were placed. */
final class DesignFormat {
  private DesignFormat() {}

  /** The place of a component, named by its id so that it stays true when others come and go. */
  static Place placeOf(Place design, String id) {
    return design.item("components", id, "component \"" + id + "\"");
  }

  static ArchDesign read(MembersIn design, Arch arch) {
    List<Component> components = new ArrayList<>();
    Set<ComponentId> seen = new HashSet<>();
    List<JsonNode> items = design.list("components");
    for (int i = 0; i < items.size(); i++) {
      Component component = read(design, items.get(i), i, arch);
      if (!seen.add(component.id())) {
        throw Refusal.at(
            design.place(),
            "two components share the id \"" + component.id() + "\"",
            "Give one of them another id.");
      }
      components.add(component);
    }
    return new ArchDesign(arch, components);
  }

  private static Component read(MembersIn design, JsonNode item, int index, Arch arch) {
    Place byNumber =
        design.place().item("components", String.valueOf(index), "component no. " + (index + 1));
    ComponentId id = MembersIn.peek(item, byNumber, m -> ComponentId.of(m.requiredText("id")));
    Place at = placeOf(design.place(), id.value());
    String kind = MembersIn.peek(item, at, m -> m.requiredText("kind"));
    Optional<ComponentReader> reader = ComponentReader.of(kind);
    if (reader.isEmpty()) {
      NonNumbers.refuseIn(item, at);
      return new UnknownComponent(id, kind, JsonText.compact(item));
    }
    return design.item(
        item,
        at,
        m -> {
          m.requiredText("id");
          m.requiredText("kind");
          return reader.get().read(m, id, arch);
        });
  }

  static void write(ArchDesign design, MembersOut out) {
    ComponentWriter writer = new ComponentWriter(out);
    out.list("components", list -> design.components().forEach(c -> list.accept(c.accept(writer))));
  }
}
