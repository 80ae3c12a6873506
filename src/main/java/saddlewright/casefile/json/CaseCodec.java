package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.rules.Profile;

/** A case as the text of its file, and back; the format is {@code docs/case-schema.json}. */
public final class CaseCodec {
  /** What a case file says of itself in its member "format". */
  public static final String FORMAT = "saddlewright-case";

  /** The format version that is written. */
  public static final int FORMAT_VERSION = Migrations.OF_CASES.current();

  /** The largest file that is read or written, in bytes; a full case has some ten thousand. */
  public static final int MAX_BYTES = 20_000_000;

  private static final FileHeader HEADER =
      new FileHeader("case", FORMAT, Migrations.OF_CASES, Kind.NOT_A_CASE);

  private CaseCodec() {}

  /** The case as JSON: readable, in a fixed order, ending with a line feed. */
  public static String toJson(Case c) {
    return JsonText.pretty(tree(c));
  }

  static ObjectNode tree(Case c) {
    KeptMembers kept = new KeptMembers(c.extras());
    return MembersOut.write(Place.TOP, kept, top -> write(c, top));
  }

  /** The bytes of {@link #toJson} in UTF-8. */
  public static byte[] toBytes(Case c) {
    return toJson(c).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The case that the JSON holds.
   *
   * @param name name of the file, for the sentences
   * @throws CaseFileException when it is not JSON, not a case, of a newer version, or impossible
   */
  public static Case fromJson(String json, String name) throws CaseFileException {
    return fromBytes(json.getBytes(StandardCharsets.UTF_8), name);
  }

  /** The same for the bytes of a file, which must be UTF-8. */
  public static Case fromBytes(byte[] bytes, String name) throws CaseFileException {
    try {
      if (bytes.length > MAX_BYTES) {
        throw tooLarge();
      }
      return read(HEADER.check(JsonText.parse(bytes)));
    } catch (Refusal e) {
      throw e.in(name);
    }
  }

  static Refusal tooLarge() {
    return Refusal.ofFile(
        Kind.TOO_LARGE,
        "is larger than "
            + MAX_BYTES / 1_000_000
            + " MB, which no case is. Check that this is the right file.");
  }

  private static Case read(ObjectNode object) {
    Map<String, String> extras = new TreeMap<>();
    Case known = MembersIn.read(object, Place.TOP, extras, CaseCodec::read);
    return known.withExtras(extras);
  }

  private static Case read(MembersIn top) {
    top.requiredText("format");
    top.whole("formatVersion");
    Case blank = Case.blank(top.requiredText("reference"));
    ArchParts upper = arch(top, Arch.UPPER);
    ArchParts lower = arch(top, Arch.LOWER);
    return new Case(
        blank.reference(),
        top.textOrEmpty("title"),
        top.textOrEmpty("story"),
        upper.chart(),
        lower.chart(),
        upper.design(),
        lower.design(),
        ProfileFormat.readPinned(top).orElse(Profile.UK_TEACHING),
        WaiverFormat.read(top),
        top.object("prescription", PrescriptionFormat::read).orElse(PrescriptionDetails.EMPTY),
        Map.of());
  }

  private record ArchParts(ArchChart chart, ArchDesign design) {}

  private static ArchParts arch(MembersIn top, Arch arch) {
    return top.object(
            arch.code(),
            m ->
                new ArchParts(
                    ChartFormat.read(m, arch),
                    m.object("design", d -> DesignFormat.read(d, arch))
                        .orElse(ArchDesign.empty(arch))))
        .orElse(new ArchParts(ArchChart.full(arch), ArchDesign.empty(arch)));
  }

  private static void write(Case c, MembersOut top) {
    top.text("format", FORMAT);
    top.whole("formatVersion", FORMAT_VERSION);
    top.text("reference", c.reference());
    top.text("title", c.title());
    top.textUnlessEmpty("story", c.story());
    ProfileFormat.writePinned(c.profile(), top);
    for (Arch arch : Arch.values()) {
      top.object(
          arch.code(),
          m -> {
            ChartFormat.write(c.chart(arch), m);
            m.object("design", d -> DesignFormat.write(c.design(arch), d));
          });
    }
    top.object("prescription", m -> PrescriptionFormat.write(c.prescription(), m));
    WaiverFormat.write(c.waivers(), top);
  }
}
