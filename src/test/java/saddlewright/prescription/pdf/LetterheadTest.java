package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.DocumentKind;

class LetterheadTest {
  @TempDir private Path folder;

  private Path picture(int wide, int high, String format) throws IOException {
    int type = format.equals("png") ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    BufferedImage image = new BufferedImage(wide, high, type);
    for (int x = 0; x < wide; x++) {
      image.setRGB(x, x * high / wide, 0x80336699);
    }
    Path file = folder.resolve("head." + format);
    ImageIO.write(image, format, file.toFile());
    return file;
  }

  private static byte[] print(Case c, Letterhead l) {
    return PrescriptionPdf.toBytes(
        Assessment.of(c),
        PrintOptions.on(LocalDate.of(2026, 11, 2)).withLetterhead(Optional.of(l)));
  }

  private static long pictures(byte[] pdf) throws IOException {
    try (PDDocument d = PrintedPage.read(pdf)) {
      long n = 0;
      for (COSName name : d.getPage(0).getResources().getXObjectNames()) {
        n += d.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
      }
      return n;
    }
  }

  @Test
  void a_picture_stands_at_the_head_within_its_bounds_and_the_file_stays_small() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    for (String format : new String[] {"png", "jpg"}) {
      Letterhead l = Letterhead.of(picture(2000, 300, format));
      assertThat(l.width()).isLessThanOrEqualTo(Letterhead.WIDEST + 0.01);
      assertThat(l.height()).isLessThanOrEqualTo(Letterhead.HIGHEST + 0.01);
      byte[] pdf = print(c, l);
      assertThat(pictures(pdf)).isEqualTo(1);
      assertThat(pdf.length).isLessThan(250_000);
      assertThat(print(c, Letterhead.of(folder.resolve("head." + format)))).isEqualTo(pdf);
    }
  }

  @Test
  void coursework_names_no_practice() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    c = c.with(c.prescription().withKind(DocumentKind.COURSEWORK));
    assertThat(pictures(print(c, Letterhead.of(picture(200, 30, "png"))))).isZero();
  }

  @Test
  void what_cannot_be_printed_is_refused_in_a_sentence() throws Exception {
    refused(folder.resolve("gone.png"), "there is no such file");
    refused(Files.writeString(folder.resolve("words.png"), "not a picture"), "is not a picture");
    Path cut = picture(400, 60, "png");
    Files.write(cut, java.util.Arrays.copyOf(Files.readAllBytes(cut), 60));
    assertThatThrownBy(() -> Letterhead.of(cut)).isInstanceOf(CaseFileException.class);
    refused(Files.write(folder.resolve("big.png"), new byte[5_000_001]), "larger than 5 MB");
  }

  private static void refused(Path file, String why) {
    assertThatThrownBy(() -> Letterhead.of(file))
        .isInstanceOf(CaseFileException.class)
        .hasMessageContaining(file.getFileName().toString())
        .hasMessageContaining(why);
  }
}
