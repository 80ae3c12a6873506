package saddlewright.prescription.pdf.reading;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.FileBytes;
import saddlewright.prescription.pdf.reading.Allowance.Spent;
import saddlewright.prescription.pdf.reading.PdfValue.Entries;

/**
 * A file that holds a case: the case file itself, or a prescription that was made from it and has
 * it inside.
 */
public final class CaseDocument {
  /** The name of the case file within every document. */
  public static final String ENCLOSED = "case.json";

  /** Larger than any prescription with the largest case. */
  private static final int MAX_BYTES = 48_000_000;

  private static final int MOST_VALUES = 600_000;
  private static final int LOOKS_AT_EACH_BYTE = 6;

  /** The largest case, and the small parts of the document that lead to it. */
  private static final long MOST_UNPACKED = CaseCodec.MAX_BYTES + 20_000_000L;

  /** A name tree holds a handful of files and is a level or two high. */
  private static final int DEEPEST_TREE = 12;

  private static final String MARK = "%PDF-";
  private static final int MARK_WITHIN = 1024;
  private static final String INSTEAD = " Open the case file (.json) instead.";

  private CaseDocument() {}

  /**
   * The case that a file holds.
   *
   * @throws CaseFileException when the file cannot be read or holds no lawful case
   */
  public static Case load(Path file) throws CaseFileException {
    if (!isPdf(file)) {
      return CaseStore.load(file);
    }
    byte[] bytes = FileBytes.of(file, "case", MAX_BYTES + 1);
    return fromPdf(bytes, AtomicFile.nameOf(file));
  }

  /** Whether a file is a PDF document, whatever its name: it says so at its beginning. */
  public static boolean isPdf(Path file) throws CaseFileException {
    String start = new String(FileBytes.of(file, "case", MARK_WITHIN), StandardCharsets.ISO_8859_1);
    // A case may have any words in it, these too; but it starts with a brace.
    return start.contains(MARK)
        && !start.replaceFirst("^\u00ef\u00bb\u00bf", "").strip().startsWith("{");
  }

  /**
   * The case in the bytes of a document.
   *
   * @param name name of the file, for the sentences
   * @throws CaseFileException when there is none in it, or none that can be opened
   */
  public static Case fromPdf(byte[] bytes, String name) throws CaseFileException {
    if (bytes.length > MAX_BYTES) {
      throw tooMuch(name);
    }
    try {
      PdfObjects objects =
          PdfObjects.in(
              bytes,
              new Allowance(
                  MOST_VALUES, (long) LOOKS_AT_EACH_BYTE * bytes.length + 10_000, MOST_UNPACKED));
      Entries trailer =
          objects
              .trailer()
              .orElseThrow(
                  () ->
                      new CaseFileException(
                          Kind.UNREADABLE,
                          name
                              + " is damaged: its end is missing or cannot be read. Ask for it"
                              + " anew, or open the case file (.json) instead."));
      if (trailer.get("Encrypt").isPresent()) {
        throw new CaseFileException(
            Kind.UNREADABLE,
            name
                + " is locked with a password or against changes, so the case in it cannot be"
                + " read. Save an open copy of it, or open the case file (.json) instead.");
      }
      Entries file =
          enclosed(objects, trailer)
              .orElseThrow(
                  () ->
                      new CaseFileException(
                          Kind.NOT_A_CASE,
                          name
                              + " is a PDF without a case in it. Only a prescription as Saddlewright"
                              + " wrote it can be opened, not one printed or scanned anew."
                              + INSTEAD));
      byte[] data =
          objects
              .data(file)
              .orElseThrow(
                  () ->
                      new CaseFileException(
                          Kind.UNREADABLE,
                          name
                              + " is damaged: the case in it cannot be unpacked. Ask for it anew,"
                              + " or open the case file (.json) instead."));
      return CaseCodec.fromBytes(data, name);
    } catch (Spent e) {
      throw tooMuch(name);
    }
  }

  private static CaseFileException tooMuch(String name) {
    return new CaseFileException(
        Kind.TOO_LARGE,
        name
            + " is larger, or unpacks to more, than any prescription with its case does. Check that"
            + " this is the right file."
            + INSTEAD);
  }

  /** The stream of the case file, found as the document's associated or attached file. */
  private static Optional<Entries> enclosed(PdfObjects objects, Entries trailer) throws Spent {
    Optional<Entries> root = objects.entries(trailer, "Root");
    if (root.isEmpty()) {
      return Optional.empty();
    }
    List<Entries> files = new ArrayList<>();
    root.get().get("AF").flatMap(objects::resolve).ifPresent(list -> listed(objects, list, files));
    objects
        .entries(root.get(), "Names")
        .flatMap(names -> objects.entries(names, "EmbeddedFiles"))
        .ifPresent(
            tree ->
                hung(objects, tree, 0, Collections.newSetFromMap(new IdentityHashMap<>()), files));
    return files.stream()
        .filter(f -> isNamed(objects, f, "UF") || isNamed(objects, f, "F"))
        .flatMap(f -> objects.entries(f, "EF").stream())
        .flatMap(kept -> objects.entries(kept, "F").or(() -> objects.entries(kept, "UF")).stream())
        .findFirst();
  }

  private static boolean isNamed(PdfObjects objects, Entries file, String key) {
    return file.get(key)
        .flatMap(objects::resolve)
        .filter(new PdfValue.Text(ENCLOSED)::equals)
        .isPresent();
  }

  private static void listed(PdfObjects objects, PdfValue list, List<Entries> out) {
    if (list instanceof PdfValue.Items items) {
      items.values().stream()
          .flatMap(v -> objects.resolve(v).stream())
          .flatMap(v -> PdfObjects.entries(v).stream())
          .forEach(out::add);
    }
  }

  /** Files that hang on a tree of names. */
  private static void hung(
      PdfObjects objects, Entries node, int depth, Set<Entries> seen, List<Entries> out) {
    if (depth > DEEPEST_TREE || !seen.add(node)) {
      return;
    }
    node.get("Names").flatMap(objects::resolve).ifPresent(list -> listed(objects, list, out));
    if (node.get("Kids").flatMap(objects::resolve).orElse(null) instanceof PdfValue.Items kids) {
      for (PdfValue kid : kids.values()) {
        objects
            .resolve(kid)
            .flatMap(PdfObjects::entries)
            .ifPresent(k -> hung(objects, k, depth + 1, seen, out));
      }
    }
  }
}
