package saddlewright.prescription.pdf.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.prescription.Mouths;
import saddlewright.prescription.pdf.PrescriptionPdf;
import saddlewright.prescription.pdf.PrintedPage;

/** A prescription is opened as the case that it was made from, or refused in words. */
class CaseDocumentTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Case CASE = Mouths.lowerMissing(36, 37).withIdentity("R-7", "Łódź, 山田", "");

  @TempDir Path folder;

  private static byte[] print(Case c) {
    return PrescriptionPdf.toBytes(Assessment.of(c), DAY);
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private static CaseFileException refusal(byte[] pdf) {
    return catchThrowableOfType(CaseFileException.class, () -> CaseDocument.fromPdf(pdf, "p.pdf"));
  }

  @Property(tries = 30, shrinking = ShrinkingMode.OFF)
  void any_case_comes_back_from_its_document(@ForAll("cases") Case c) throws Exception {
    assertThat(CaseDocument.fromPdf(print(c), "p.pdf")).isEqualTo(c);
  }

  /** Of any kind but coursework that is handed in sealed. */
  @Provide
  Arbitrary<Case> cases() {
    return ArbitraryCases.cases()
        .map(c -> c.with(c.prescription().with(c.prescription().coursework().withSealed(false))));
  }

  @Test
  void the_case_file_stands_in_the_document_byte_for_byte_as_its_source() throws Exception {
    try (PDDocument d = PrintedPage.read(print(CASE))) {
      var named = d.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      assertThat(named).containsOnlyKeys("case.json");
      var file = named.get("case.json");
      assertThat(file.getFilename()).isEqualTo("case.json");
      assertThat(file.getCOSObject().getNameAsString("AFRelationship")).isEqualTo("Source");
      assertThat(file.getEmbeddedFile().getSubtype()).isEqualTo("application/json");
      assertThat(file.getEmbeddedFile().toByteArray()).isEqualTo(CaseCodec.toBytes(CASE));
    }
  }

  @Test
  void case_file_and_prescription_are_told_apart_by_content_not_by_name() throws Exception {
    assertThat(CaseDocument.load(file("a.json", print(CASE)))).isEqualTo(CASE);
    Case tricky = CASE.withIdentity("%PDF-1.7", "%PDF-1.7", "");
    assertThat(CaseDocument.load(file("b.pdf", CaseCodec.toBytes(tricky)))).isEqualTo(tricky);
    byte[] marked = ("\uFEFF" + CaseCodec.toJson(tricky)).getBytes(StandardCharsets.UTF_8);
    assertThat(CaseDocument.isPdf(file("c.json", marked))).isFalse();
  }

  /** Programs write files anew: uncompressed, with another table, or with changes at the end. */
  @Test
  void a_document_that_another_program_saved_anew_still_gives_its_case() throws Exception {
    byte[] plain;
    try (PDDocument d = PrintedPage.read(print(CASE))) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      d.save(out, CompressParameters.NO_COMPRESSION);
      plain = out.toByteArray();
    }
    assertThat(new String(plain, StandardCharsets.ISO_8859_1)).contains("trailer");
    assertThat(CaseDocument.fromPdf(plain, "p.pdf")).isEqualTo(CASE);
    for (byte[] before : new byte[][] {plain, print(CASE)}) {
      try (PDDocument d = PrintedPage.read(before)) {
        d.getDocumentInformation().setAuthor("A reader");
        d.getDocumentInformation().getCOSObject().setNeedToBeUpdated(true);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        d.saveIncremental(out);
        assertThat(out.size()).isGreaterThan(before.length);
        assertThat(CaseDocument.fromPdf(out.toByteArray(), "p.pdf")).isEqualTo(CASE);
      }
    }
  }

  @Test
  void a_changed_attachment_wins_over_the_one_that_it_replaces() throws Exception {
    Case other = CASE.withIdentity("R-8", "", "");
    try (PDDocument d = PrintedPage.read(print(CASE))) {
      var file = d.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().get("case.json");
      try (var out = file.getEmbeddedFile().createOutputStream(COSName.FLATE_DECODE)) {
        out.write(CaseCodec.toBytes(other));
      }
      file.getEmbeddedFile().getCOSObject().setNeedToBeUpdated(true);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      d.saveIncremental(out);
      assertThat(CaseDocument.fromPdf(out.toByteArray(), "p.pdf")).isEqualTo(other);
    }
  }

  @Test
  void a_document_without_a_case_is_refused_with_what_to_do() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument d = new PDDocument()) {
      d.addPage(new PDPage());
      d.save(out);
    }
    CaseFileException e = refusal(out.toByteArray());
    assertThat(e.kind()).isEqualTo(Kind.NOT_A_CASE);
    assertThat(e.sentences())
        .isEqualTo(
            "p.pdf is a PDF without a case in it. Only a prescription as Saddlewright wrote it can"
                + " be opened, not one printed or scanned anew. Open the case file (.json)"
                + " instead.");
  }

  @Test
  void a_locked_document_is_refused_with_what_to_do() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument d = PrintedPage.read(print(CASE))) {
      d.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
      d.save(out);
    }
    CaseFileException e = refusal(out.toByteArray());
    assertThat(e.kind()).isEqualTo(Kind.UNREADABLE);
    assertThat(e.sentences()).startsWith("p.pdf is locked with a password");
  }

  @Test
  void a_case_of_a_later_version_in_a_document_is_named_as_such() throws Exception {
    try (PDDocument d = PrintedPage.read(print(CASE))) {
      var file = d.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().get("case.json");
      String newer =
          CaseCodec.toJson(CASE).replaceFirst("\"formatVersion\": \\d+", "\"formatVersion\": 999");
      try (var out = file.getEmbeddedFile().createOutputStream(COSName.FLATE_DECODE)) {
        out.write(newer.getBytes(StandardCharsets.UTF_8));
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      d.save(out);
      CaseFileException e = refusal(out.toByteArray());
      assertThat(e.kind()).isEqualTo(Kind.NEWER_VERSION);
      assertThat(e.sentences()).startsWith("p.pdf ");
    }
  }

  @Test
  void a_document_cut_short_anywhere_is_read_or_refused_in_words() throws Exception {
    byte[] pdf = print(CASE);
    assertThat(refusal(Arrays.copyOf(pdf, pdf.length / 2)).sentences())
        .startsWith("p.pdf is damaged");
    for (int length = 8; length < pdf.length; length += 997) {
      readOrRefused(Arrays.copyOf(pdf, length));
    }
  }

  @Test
  void a_document_with_wrong_bytes_is_read_or_refused_in_words() throws Exception {
    byte[] pdf = print(CASE);
    Random random = new Random(20261125);
    for (int i = 0; i < 300; i++) {
      byte[] wrong = pdf.clone();
      for (int k = 0; k < 40; k++) {
        wrong[random.nextInt(wrong.length)] = (byte) random.nextInt(256);
      }
      readOrRefused(wrong);
    }
  }

  private static void readOrRefused(byte[] pdf) {
    try {
      CaseDocument.fromPdf(pdf, "p.pdf");
    } catch (CaseFileException e) {
      assertThat(e.sentences()).startsWith("p.pdf").endsWith(".");
    }
  }

  /**
   * A megabyte that unpacks to a gigabyte: as objects, as the case, and as a million small ones.
   */
  @Test
  void a_document_that_unpacks_without_end_is_refused_at_once() throws Exception {
    byte[] bomb = packed(1_000_000_000);
    assertThat(bomb.length).isLessThan(1_100_000);
    Map<String, byte[]> hostile =
        Map.of(
            "objects",
            document("1 0 obj<</Type/ObjStm/N 9/First 9/Filter/FlateDecode>>", bomb),
            "case",
            document(
                "1 0 obj<</AF[2 0 R]>>endobj 2 0 obj<</F(case.json)/EF<</F 3 0 R>>>>endobj"
                    + " 3 0 obj<</Filter/FlateDecode>>",
                bomb),
            "nested",
            ("%PDF-1.7 1 0 obj " + "[".repeat(5_000_000)).getBytes(StandardCharsets.US_ASCII),
            "many",
            ("%PDF-1.7 " + "1 0 obj (".repeat(1_000_000)).getBytes(StandardCharsets.US_ASCII),
            "comment",
            ("%PDF-1.7\n" + "1 %".repeat(3_000_000)).getBytes(StandardCharsets.US_ASCII),
            "numbers",
            ("%PDF-1.7 1 0 obj [" + "1 ".repeat(5_000_000)).getBytes(StandardCharsets.US_ASCII),
            "circle",
            "%PDF-1.7 1 0 obj 2 0 R endobj 2 0 obj 1 0 R endobj trailer<</Root 1 0 R>>"
                .getBytes(StandardCharsets.US_ASCII),
            "tree",
            ("%PDF-1.7 1 0 obj<</Names<</EmbeddedFiles 2 0 R>>>>endobj 2 0 obj<</Kids["
                    + "2 0 R ".repeat(150_000)
                    + "]>>endobj trailer<</Root 1 0 R>>")
                .getBytes(StandardCharsets.US_ASCII));
    hostile.forEach(
        (what, pdf) ->
            Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () ->
                    assertThat(refusal(pdf).sentences())
                        .as(what)
                        .startsWith("p.pdf")
                        .endsWith(" instead."),
                what));
    assertThat(refusal(hostile.get("case")).kind()).isEqualTo(Kind.TOO_LARGE);
  }

  private static byte[] document(String before, byte[] data) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(("%PDF-1.7\n" + before + "\nstream\n").getBytes(StandardCharsets.US_ASCII));
    out.write(data);
    out.write("\nendstream endobj trailer<</Root 1 0 R>>\n".getBytes(StandardCharsets.US_ASCII));
    return out.toByteArray();
  }

  private static byte[] packed(long zeros) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var deflated = new DeflaterOutputStream(out, new Deflater(9), 1 << 16)) {
      byte[] chunk = new byte[1 << 20];
      for (long left = zeros; left > 0; left -= chunk.length) {
        deflated.write(chunk, 0, (int) Math.min(left, chunk.length));
      }
    }
    return out.toByteArray();
  }

  @Test
  void what_is_missing_or_a_folder_is_said_as_of_a_case_file() {
    assertThat(
            catchThrowableOfType(
                    CaseFileException.class, () -> CaseDocument.load(folder.resolve("x.pdf")))
                .sentences())
        .startsWith("x.pdf does not exist.");
    assertThat(
            catchThrowableOfType(CaseFileException.class, () -> CaseDocument.load(folder)).kind())
        .isEqualTo(Kind.UNREADABLE);
  }

  @Test
  void the_largest_case_that_can_be_saved_comes_back_from_its_document() throws Exception {
    String story = "Nothing is said twice. ".repeat(800_000);
    Case large = CASE.withIdentity("R-9", "", story);
    CaseStore.save(large, folder.resolve("large.json"));
    byte[] pdf = print(large);
    assertThatCode(() -> CaseDocument.fromPdf(pdf, "p.pdf")).doesNotThrowAnyException();
  }
}
