package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;

/** A sample of each older format of the case file opens and loses nothing. */
class OlderFormatsTest {
  @Test
  void the_twelve_texts_of_version_1_stand_in_the_fields_that_come_nearest() throws Exception {
    Case c = CaseStore.load(Path.of("src/test/resources/case-files/version-1.json"));
    PrescriptionDetails p = c.prescription();
    assertThat(p.text(Item.PRESCRIBER_NAME)).isEqualTo("Dr A. Wainfleet, reg. no. TC-0417");
    assertThat(p.text(Item.PRACTICE)).startsWith("Harrowmere Teaching Clinic");
    assertThat(p.text(Item.LABORATORY_NAME)).startsWith("Tarn Laboratory");
    assertThat(p.text(Item.DATE_ISSUED)).isEqualTo("2026-11-02");
    assertThat(p.text(Item.DATE_REQUIRED)).isEqualTo("2026-11-23");
    assertThat(p.text(Item.FRAMEWORK_ALLOY)).isEqualTo("Cobalt-chromium, nickel-free");
    assertThat(p.text(Item.BASE_POLYMER)).isEqualTo("Heat-cured acrylic, pink V2");
    assertThat(p.text(Item.TOOTH_MATERIAL)).isEqualTo("Acrylic");
    assertThat(p.text(Item.TOOTH_SHADE)).isEqualTo("A3 (clinic guide)");
    assertThat(p.text(Item.ENCLOSED)).isEqualTo("Upper and lower master casts; wax wafer");
    assertThat(p.text(Item.DISINFECTED)).startsWith("Impressions: 10 min");
    assertThat(p.text(Item.SPECIAL_INSTRUCTIONS)).startsWith("Please telephone");
    assertThat(p.answers()).hasSize(12);
    assertThat(c.extras()).isEmpty();
    assertThat(CaseCodec.fromJson(CaseCodec.toJson(c), "again")).isEqualTo(c);
  }
}
