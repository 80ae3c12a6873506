package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import saddlewright.casefile.CaseFileException.Kind;

/**
 * What a file says of itself in its first two members: of what sort it is, and of which version.
 *
 * @param noun what such a file is called, such as "case"
 * @param format what it says in "format"
 * @param migrations what brings an older version up to date
 * @param stranger the sort of trouble when it is JSON of something else
 */
record FileHeader(String noun, String format, Migrations migrations, Kind stranger) {

  /** The object of the file in the current version; anything else is refused. */
  ObjectNode check(JsonNode node) {
    if (!(node instanceof ObjectNode object) || !format.equals(object.path("format").textValue())) {
      throw Refusal.ofFile(
          stranger,
          "is JSON but not a "
              + noun
              + ": it does not say \"format\": \""
              + format
              + "\". Open a file that was saved as a "
              + noun
              + ".");
    }
    JsonNode version = object.path("formatVersion");
    if (!version.isIntegralNumber() || version.bigIntegerValue().signum() <= 0) {
      throw Refusal.ofFile(
          stranger,
          "does not say which version of the format it has. Write \"formatVersion\": "
              + migrations.current()
              + " if you made it by hand.");
    }
    if (!version.canConvertToInt() || version.intValue() > migrations.current()) {
      throw Refusal.ofFile(
          Kind.NEWER_VERSION,
          "was saved by a newer version of the program (format "
              + version.asText()
              + "; this one reads up to "
              + migrations.current()
              + "). Update the program to open it.");
    }
    return migrations.bringUpToDate(object, version.intValue());
  }
}
