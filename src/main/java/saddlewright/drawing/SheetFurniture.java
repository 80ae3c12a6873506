package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

/** What a sheet bears besides the arches: names of the sides and the scale bar. */
final class SheetFurniture {
  private static final double BAR_MM = 20;

  private SheetFurniture() {}

  /** Patient's right and left, and the name of the arch, at a height on the sheet. */
  static List<Mark> sides(Arch arch, double middle, double half, double y) {
    List<Mark> out = new ArrayList<>();
    out.add(words("R", new Point(middle - half, y), 3.2, Mark.Align.START, true));
    out.add(words("L", new Point(middle + half, y), 3.2, Mark.Align.END, true));
    String name = arch == Arch.UPPER ? "Upper" : "Lower";
    double nameY = arch == Arch.UPPER ? y - 4.5 : y + 4.5;
    out.add(words(name, new Point(middle - half, nameY), 2.6, Mark.Align.START, false));
    return out;
  }

  /** A bar of 20 mm with end ticks, its left end at the point. */
  static List<Mark> scaleBar(Point at) {
    double x = at.x();
    double y = at.y();
    List<Path> lines =
        List.of(
            Path.of(new Point(x, y), new Point(x + BAR_MM, y)),
            Path.of(new Point(x, y - 1), new Point(x, y + 1)),
            Path.of(new Point(x + BAR_MM / 2, y - 0.6), new Point(x + BAR_MM / 2, y + 0.6)),
            Path.of(new Point(x + BAR_MM, y - 1), new Point(x + BAR_MM, y + 1)));
    List<Mark> out = new ArrayList<>();
    out.add(
        new Mark.Stroke(Layer.LABELS, Ink.LABEL, Optional.empty(), lines, false, 0.25, List.of()));
    out.add(words("20 mm", new Point(x + BAR_MM + 1.5, y), 2.4, Mark.Align.START, false));
    return out;
  }

  static Mark words(String text, Point at, double size, Mark.Align align, boolean bold) {
    return new Mark.Label(Layer.LABELS, Ink.LABEL, Optional.empty(), text, at, size, align, bold);
  }
}
