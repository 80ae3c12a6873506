package saddlewright.dentition;

import java.util.EnumMap;
import java.util.Map;

/**
 * Published mean size of a tooth, in millimetres.
 *
 * @param height of the crown
 * @param rootLength of the root
 * @param width mesiodistal, at the contacts
 * @param depth buccolingual, at the greatest prominence
 * @param cervicalWidth mesiodistal, at the cervix
 * @param cervicalDepth buccolingual, at the cervix
 * @param evidence how far the numbers were checked
 * @param source where they stand
 */
public record CrownSize(
    double height,
    double rootLength,
    double width,
    double depth,
    double cervicalWidth,
    double cervicalDepth,
    String evidence,
    String source) {

  private static final String DATASET = "Wheeler/Ash&Nelson";
  private static final Map<Tooth, CrownSize> MEANS = read();

  /** The mean size of this tooth after Wheeler's table. */
  public static CrownSize mean(Tooth tooth) {
    return MEANS.get(tooth);
  }

  private static Map<Tooth, CrownSize> read() {
    Map<Tooth, CrownSize> out = new EnumMap<>(Tooth.class);
    for (Map<String, String> r : DataTable.rows("tooth-dimensions")) {
      if (r.get("dataset").equals(DATASET)) {
        out.put(
            Tooth.of(Integer.parseInt(r.get("fdi"))),
            new CrownSize(
                number(r, "crown_len_mm"),
                number(r, "root_len_mm"),
                number(r, "md_mm"),
                number(r, "bl_mm"),
                number(r, "md_cervix_mm"),
                number(r, "bl_cervix_mm"),
                r.get("evidence"),
                r.get("source")));
      }
    }
    return out;
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
