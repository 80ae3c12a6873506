package saddlewright.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The published code lists say what the code says. Run with -Dsaddlewright.write-expected=true to
 * write them anew.
 */
class LocalCodesTest {
  private static final Path RESOURCES = Path.of("docs", "fhir-codes.json");
  private static final Path PAGE = Path.of("docs", "interchange.md");
  private static final String EX_TOOTH = "http://terminology.hl7.org/CodeSystem/ex-tooth";
  private static final String LISTS = "## Code lists\n";

  @Test
  void the_published_resources_are_up_to_date() throws IOException {
    if (Boolean.getBoolean("saddlewright.write-expected")) {
      Files.write(RESOURCES, Layout.bytes(resources()));
    }
    assertThat(Files.readString(RESOURCES))
        .isEqualTo(new String(Layout.bytes(resources()), StandardCharsets.UTF_8));
  }

  @Test
  void the_page_lists_every_code() throws IOException {
    String page = Files.readString(PAGE);
    String written = page.substring(0, page.indexOf(LISTS)) + lists();
    if (Boolean.getBoolean("saddlewright.write-expected")) {
      Files.writeString(PAGE, written);
      page = written;
    }
    assertThat(page).isEqualTo(written);
  }

  private static ObjectNode resources() {
    ObjectNode bundle = DataTypes.object();
    bundle.put("resourceType", "Bundle");
    bundle.put("id", "saddlewright-codes");
    bundle.put("type", "collection");
    ArrayNode entry = bundle.putArray("entry");
    for (CodeList list : LocalCodes.ALL) {
      add(entry, list.url(), codeSystem(list));
    }
    String map = CodeList.ROOT + "ConceptMap/tooth-to-ex-tooth";
    add(entry, map, toothMap(map));
    return bundle;
  }

  private static void add(ArrayNode entry, String url, ObjectNode resource) {
    entry.addObject().put("fullUrl", url).set("resource", resource);
  }

  private static ObjectNode published(
      String type, String id, String url, String title, String description) {
    ObjectNode node = DataTypes.object();
    node.put("resourceType", type);
    node.put("id", id);
    node.set("text", DataTypes.narrative(List.of(title + ".", description)));
    node.put("url", url);
    node.put("version", "1");
    node.put("name", nameOf(id));
    node.put("title", title);
    node.put("status", "active");
    node.put("experimental", false);
    node.put("publisher", "Saddlewright");
    return node.put("description", description);
  }

  /** A name for programs, such as ToothState. */
  private static String nameOf(String id) {
    return Arrays.stream(id.split("-"))
        .map(p -> Character.toUpperCase(p.charAt(0)) + p.substring(1))
        .collect(Collectors.joining());
  }

  private static ObjectNode codeSystem(CodeList list) {
    ObjectNode node =
        published("CodeSystem", list.word(), list.url(), list.title(), list.description());
    node.put("caseSensitive", true);
    node.put("content", "complete");
    node.put("count", list.codes().size());
    ArrayNode concepts = node.putArray("concept");
    for (Code c : list.codes()) {
      ObjectNode one = concepts.addObject().put("code", c.word()).put("display", c.display());
      if (!c.definition().isEmpty()) {
        one.put("definition", c.definition());
      }
    }
    return node;
  }

  private static ObjectNode toothMap(String url) {
    ObjectNode node =
        published(
            "ConceptMap",
            "tooth-to-ex-tooth",
            url,
            "Permanent teeth as in HL7's example of tooth codes",
            "HL7 publishes tooth codes as an example, for claims. They are written as ISO 3950"
                + " writes them.");
    ObjectNode group =
        node.putArray("group")
            .addObject()
            .put("source", LocalCodes.TOOTH.url())
            .put("target", EX_TOOTH);
    ArrayNode elements = group.putArray("element");
    for (Code c : LocalCodes.TOOTH.codes()) {
      elements
          .addObject()
          .put("code", c.word())
          .putArray("target")
          .addObject()
          .put("code", c.word())
          .put("equivalence", "equivalent");
    }
    return node;
  }

  private static String lists() {
    StringBuilder out = new StringBuilder(LISTS);
    for (CodeList list : LocalCodes.ALL) {
      out.append("\n### ").append(list.title()).append("\n\n");
      out.append('`').append(list.url()).append("`. ").append(list.description()).append("\n\n");
      out.append("| code | display | |\n|---|---|---|\n");
      for (Code c : list.codes()) {
        out.append("| `").append(c.word()).append("` | ").append(c.display());
        out.append(" | ").append(c.definition()).append(" |\n");
      }
    }
    return out.toString();
  }
}
