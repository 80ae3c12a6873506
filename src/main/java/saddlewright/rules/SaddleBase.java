package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.CompleteSaddle;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;

/** The edits that give a saddle a base of acrylic, or of metal, with what goes with it. */
public final class SaddleBase {
  private SaddleBase() {}

  /** Acrylic on open metalwork; a mesh and finish line are added where none lie there. */
  public static DesignEdit acrylic(Situation s, Saddle saddle) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(saddle.withBase(Saddle.Base.ACRYLIC_ON_MESH)));
    if (SaddleMetalwork.of(s, saddle).meshes().isEmpty()) {
      CompleteSaddle.over(s.design(), saddle.span(), List.of()).edit().ifPresent(edits::add);
    }
    return new DesignEdit.Several(edits);
  }

  /** Metal all through: its mesh goes. */
  public static DesignEdit metal(Situation s, Saddle saddle) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(saddle.withBase(Saddle.Base.METAL)));
    SaddleMetalwork.of(s, saddle).meshes().forEach(m -> edits.add(new DesignEdit.Remove(m.id())));
    return new DesignEdit.Several(edits);
  }
}
