package saddlewright.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;

/** Bundles of cases that nobody would draw, against HL7 FHIR R4 (4.0.1), by HL7's validator. */
class AnyCaseConformityTest {
  @Provide
  Arbitrary<Case> cases() {
    return ArbitraryCases.cases();
  }

  @Property(tries = 15, shrinking = ShrinkingMode.OFF)
  void the_bundle_of_any_case_obeys_r4(@ForAll("cases") Case c) {
    assertThat(R4.objections(FhirBundle.toBytes(Assessment.of(c), FilledIn.DAY)))
        // The validator doubts years far off; such a case says so, and the bundle repeats it.
        .filteredOn(o -> !o.contains("outside the range of reasonable years"))
        .isEmpty();
  }
}
