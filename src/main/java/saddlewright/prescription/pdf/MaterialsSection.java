package saddlewright.prescription.pdf;

import java.io.IOException;
import saddlewright.casefile.order.Item;

/**
 * What the denture is made of, its colours, how it meets the other jaw, and what else is wished.
 */
final class MaterialsSection implements Section {
  private static final double FIRST_GROUPS = 230;

  private final FormFields form;

  MaterialsSection(Printout printout) {
    this.form = new FormFields(printout);
  }

  @Override
  public void write(Flow flow) throws IOException {
    Fields materials =
        Fields.ofSection(
            "Materials",
            form.of(
                Item.FRAMEWORK_ALLOY,
                Item.NICKEL_FREE,
                Item.ALLOY_COMPOSITION,
                Item.BASE_POLYMER,
                Item.TOOTH_MATERIAL,
                Item.OTHER_MATERIALS,
                Item.ALLERGIES));
    Fields shades =
        Fields.ofSection(
            "Shades and mould",
            form.of(Item.TOOTH_SHADE, Item.SHADE_GUIDE, Item.TOOTH_MOULD, Item.GINGIVAL_SHADE));
    Fields occlusion =
        Fields.ofSection(
            "Occlusion",
            form.of(
                Item.OCCLUSAL_SCHEME,
                Item.VERTICAL_DIMENSION,
                Item.OCCLUSAL_CONTACTS,
                Item.ARTICULATOR));
    Fields borders =
        Fields.ofSection(
            "Relief, borders and marking",
            form.of(Item.RELIEF_AND_BLOCKOUT, Item.IDENTIFICATION_MARK));
    Fields wishes =
        Fields.ofSection(
            "Instructions",
            form.of(Item.SPECIAL_INSTRUCTIONS, Item.AESTHETICS, Item.SPEECH_AND_GAG, Item.QUERIES));
    if (materials.isEmpty()
        && shades.isEmpty()
        && occlusion.isEmpty()
        && borders.isEmpty()
        && wishes.isEmpty()) {
      return;
    }
    // The heading does not stay behind when its first two groups go over.
    flow.need(FIRST_GROUPS);
    flow.heading("Materials, shades and occlusion");
    Fields.beside(flow, materials, shades.and(borders));
    Fields.beside(flow, occlusion, wishes);
  }
}
