package saddlewright.desktop.welcome;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.design.ArchDesign;
import saddlewright.design.Backing;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Note;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.drawing.Palette;
import saddlewright.layout.Layout;

/** The order of work as pictures: one design as it grows from step to step. */
public final class OrderPicture extends FlowPane {
  private static final double WIDTH = 128;

  /** The steps at which something is added to the drawing. */
  private static final List<Step> STEPS =
      List.of(
          Step.SADDLES,
          Step.SUPPORT,
          Step.RETENTION,
          Step.BRACING,
          Step.CONNECTORS,
          Step.INDIRECT_RETENTION);

  private final Map<Step, ImageView> views = new EnumMap<>(Step.class);

  public OrderPicture() {
    super(14, 12);
    setId("order-picture");
    add(Step.SURVEY, Words.of("welcome.chart-and-survey"));
    STEPS.forEach(s -> add(s, Words.of("welcome.step", s.ordinal() + 1, Words.of(s))));
  }

  private void add(Step step, String name) {
    ImageView view = new ImageView();
    views.put(step, view);
    StackPane frame = new StackPane(view);
    frame.getStyleClass().add("order-frame");
    frame.setMinSize(WIDTH + 2, WIDTH * 0.94);
    frame.setMaxSize(WIDTH + 2, WIDTH * 0.94);
    Label words = new Label(name);
    words.setWrapText(true);
    words.setMinHeight(Region.USE_PREF_SIZE);
    words.setMaxWidth(WIDTH + 2);
    VBox tile = new VBox(4, frame, words);
    tile.setAlignment(Pos.TOP_LEFT);
    getChildren().add(tile);
  }

  /** Has the lower design of a case drawn as it grows. */
  public void draw(Case c, Palette palette, Illustrations illustrations) {
    views.forEach(
        (step, view) ->
            illustrations.show(
                () -> Layout.of(ArchForm.of(c.lowerChart()), upTo(step, c.lowerDesign())),
                WIDTH,
                palette,
                view));
  }

  /** The design as it stands after a step. */
  static ArchDesign upTo(Step step, ArchDesign whole) {
    ArchDesign out = whole;
    for (Component c : whole.components()) {
      if (of(c).compareTo(step) > 0) {
        out = out.without(c.id());
      }
    }
    return out;
  }

  /** The step at which a component is placed; of struts, when they are seen in full. */
  private static Step of(Component c) {
    if (c instanceof Saddle
        || c instanceof RetentionMesh
        || c instanceof FinishLine
        || c instanceof TissueStop
        || c instanceof Backing) {
      return Step.SADDLES;
    }
    if (c instanceof Rest rest && !rest.indirectRetainer()) {
      return Step.SUPPORT;
    }
    if (c instanceof Clasp) {
      return Step.RETENTION;
    }
    if (c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof GuidePlane
        || c instanceof Plating) {
      return Step.BRACING;
    }
    return c instanceof Rest || c instanceof Note ? Step.INDIRECT_RETENTION : Step.CONNECTORS;
  }
}
