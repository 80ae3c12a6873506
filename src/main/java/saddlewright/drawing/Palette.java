package saddlewright.drawing;

import java.util.EnumMap;
import java.util.Map;

/**
 * Colours of the ink roles for one purpose, as #rrggbb.
 *
 * <p>In the colours of paper and of the dark desk, lines keep at least 3:1 contrast with what they
 * stand on and words 4.5:1, and the parts are told apart by people who confuse red and green; every
 * role also has a line or hatch of its own.
 */
public final class Palette {
  public static final Palette PAPER = new Palette(paper());
  public static final Palette MONO = new Palette(mono());
  public static final Palette DARK = new Palette(dark());

  private final Map<Ink, String> colours;

  private Palette(Map<Ink, String> colours) {
    this.colours = colours;
  }

  /** The same with other colours, as #rrggbb, for some of the roles. */
  public Palette with(Map<Ink, String> others) {
    if (others.isEmpty()) {
      return this;
    }
    Map<Ink, String> next = new EnumMap<>(colours);
    next.putAll(others);
    return new Palette(next);
  }

  /** The colour of a role, as #rrggbb. */
  public String hex(Ink ink) {
    return colours.get(ink);
  }

  /** The colour of a role as 0xRRGGBB. */
  public int rgb(Ink ink) {
    return Integer.parseInt(hex(ink).substring(1), 16);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Palette p && p.colours.equals(colours);
  }

  @Override
  public int hashCode() {
    return colours.hashCode();
  }

  private static Map<Ink, String> paper() {
    Map<Ink, String> m = new EnumMap<>(Ink.class);
    m.put(Ink.PAPER, "#ffffff");
    m.put(Ink.ENAMEL, "#fcfaf1");
    m.put(Ink.ENAMEL_SHADE, "#ece5d2");
    m.put(Ink.TOOTH_LINE, "#3b4046");
    m.put(Ink.FISSURE, "#8a857a");
    m.put(Ink.FAINT, "#888d93");
    m.put(Ink.GINGIVA, "#b77a70");
    m.put(Ink.MUCOSA, "#faf1ee");
    m.put(Ink.ANATOMY, "#868c92");
    m.put(Ink.LABEL, "#23282d");
    m.put(Ink.METAL, "#dfe6eb");
    m.put(Ink.METAL_LINE, "#27323b");
    m.put(Ink.REST, "#bf5a0a");
    m.put(Ink.RETENTIVE, "#0a62b5");
    m.put(Ink.RECIPROCAL, "#008562");
    m.put(Ink.GUIDE, "#45248a");
    m.put(Ink.INDIRECT, "#b53a94");
    m.put(Ink.ACRYLIC, "#f8dfe3");
    m.put(Ink.ACRYLIC_LINE, "#7a2340");
    m.put(Ink.MESH, "#55616a");
    m.put(Ink.RELIEF, "#5e4d0c");
    m.put(Ink.UNDERCUT, "#0a62b5");
    m.put(Ink.EXTRACTION, "#a8261c");
    m.put(Ink.NOTE, "#3b4046");
    m.put(Ink.FINDING, "#a8261c");
    m.put(Ink.CAUTION, "#8a5a00");
    m.put(Ink.ADVICE, "#3d5a80");
    m.put(Ink.QUESTION, "#5f4b8b");
    m.put(Ink.NUMBER, "#23282d");
    return m;
  }

  private static Map<Ink, String> mono() {
    Map<Ink, String> m = new EnumMap<>(Ink.class);
    for (Ink ink : Ink.values()) {
      m.put(ink, "#000000");
    }
    m.put(Ink.PAPER, "#ffffff");
    m.put(Ink.ENAMEL, "#ffffff");
    m.put(Ink.ENAMEL_SHADE, "#eeeeee");
    m.put(Ink.FISSURE, "#777777");
    m.put(Ink.FAINT, "#777777");
    m.put(Ink.GINGIVA, "#777777");
    m.put(Ink.MUCOSA, "#ffffff");
    m.put(Ink.ANATOMY, "#888888");
    m.put(Ink.METAL, "#e6e6e6");
    m.put(Ink.ACRYLIC, "#f4f4f4");
    m.put(Ink.MESH, "#444444");
    return m;
  }

  private static Map<Ink, String> dark() {
    Map<Ink, String> m = new EnumMap<>(Ink.class);
    m.put(Ink.PAPER, "#20252a");
    m.put(Ink.ENAMEL, "#3f403b");
    m.put(Ink.ENAMEL_SHADE, "#33342f");
    m.put(Ink.TOOTH_LINE, "#cfcabb");
    m.put(Ink.FISSURE, "#928c7d");
    m.put(Ink.FAINT, "#858d95");
    m.put(Ink.GINGIVA, "#c98f85");
    m.put(Ink.MUCOSA, "#2b2b2e");
    m.put(Ink.ANATOMY, "#848d95");
    m.put(Ink.LABEL, "#e8ebee");
    m.put(Ink.METAL, "#5b6771");
    m.put(Ink.METAL_LINE, "#d7e0e7");
    m.put(Ink.REST, "#ee8a3c");
    m.put(Ink.RETENTIVE, "#70ccfa");
    m.put(Ink.RECIPROCAL, "#9aeccb");
    m.put(Ink.GUIDE, "#a282f2");
    m.put(Ink.INDIRECT, "#e765b4");
    m.put(Ink.ACRYLIC, "#573842");
    m.put(Ink.ACRYLIC_LINE, "#ec8a94");
    m.put(Ink.MESH, "#b3bec7");
    m.put(Ink.RELIEF, "#ecd95a");
    m.put(Ink.UNDERCUT, "#70ccfa");
    m.put(Ink.EXTRACTION, "#f0776c");
    m.put(Ink.NOTE, "#e8ebee");
    m.put(Ink.FINDING, "#f0776c");
    m.put(Ink.CAUTION, "#e0b45c");
    m.put(Ink.ADVICE, "#8fb4e0");
    m.put(Ink.QUESTION, "#b9a4e6");
    m.put(Ink.NUMBER, "#e8ebee");
    return m;
  }
}
