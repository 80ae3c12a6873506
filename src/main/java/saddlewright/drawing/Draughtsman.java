package saddlewright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.archform.ArchForm;
import saddlewright.dentition.Arch;
import saddlewright.design.UnknownComponent;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * One who draws arches again and again, and keeps the marks of what lies where it lay.
 *
 * <p>What is drawn is the same as if it were drawn for the first time; that marks are the very same
 * lets a window find out quickly what has changed.
 */
public final class Draughtsman {
  private final Map<Arch, Kept> kept = new EnumMap<>(Arch.class);

  /** The drawing of an arch with its denture, in the frame of the arch. */
  public Drawing draw(Layout layout, DrawingOptions options) {
    Kept last = kept.computeIfAbsent(layout.form().arch(), a -> new Kept());
    List<Mark> marks = new ArrayList<>(last.ground(layout.form(), options));
    marks.addAll(last.framework(FrameworkDrawer.parts(layout)));
    marks.addAll(last.components(layout));
    return new Drawing(marks, layout.form().box());
  }

  /** What was drawn last of one arch. */
  private static final class Kept {
    private Optional<ArchForm> form = Optional.empty();
    private DrawingOptions options = DrawingOptions.DEFAULT;
    private List<Mark> ground = List.of();
    private List<Laid> cast = List.of();
    private List<Mark> framework = List.of();
    private Map<Laid, List<Mark>> components = new IdentityHashMap<>();

    /** Everything that lies under the denture. */
    List<Mark> ground(ArchForm now, DrawingOptions how) {
      if (form.filter(f -> f == now).isEmpty() || !options.equals(how)) {
        List<Mark> out = new ArrayList<>(AnatomyDrawer.marks(now, how));
        out.addAll(TeethDrawer.marks(now, how));
        ground = List.copyOf(out);
        form = Optional.of(now);
        options = how;
      }
      return ground;
    }

    List<Mark> framework(List<Laid> now) {
      if (!isSame(cast, now)) {
        framework = FrameworkDrawer.marks(now);
        cast = now;
      }
      return framework;
    }

    private static boolean isSame(List<Laid> a, List<Laid> b) {
      if (a.size() != b.size()) {
        return false;
      }
      for (int i = 0; i < a.size(); i++) {
        if (a.get(i) != b.get(i)) {
          return false;
        }
      }
      return true;
    }

    List<Mark> components(Layout layout) {
      Map<Laid, List<Mark>> next = new IdentityHashMap<>();
      List<Mark> out = new ArrayList<>();
      for (Laid laid : layout.all()) {
        List<Mark> marks = components.get(laid);
        if (marks == null || laid.component() instanceof UnknownComponent) {
          // Unknown components are listed one below the other, so that each looks at the others.
          marks = laid.component().accept(new ComponentDrawer(laid, layout));
        }
        next.put(laid, marks);
        out.addAll(marks);
      }
      components = next;
      return out;
    }
  }
}
