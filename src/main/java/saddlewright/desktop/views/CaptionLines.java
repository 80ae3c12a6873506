package saddlewright.desktop.views;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Words;
import saddlewright.prescription.growth.GrowthCaption;

/** What was decided at a stage of the design, and why, in lines that wrap. */
final class CaptionLines extends VBox {
  CaptionLines() {
    super(3);
    getStyleClass().add("caption-lines");
  }

  void show(GrowthCaption caption, Notation notation) {
    getChildren().clear();
    boolean reasoned = false;
    for (GrowthCaption.OfArch arch : caption.arches()) {
      String name = caption.arches().size() > 1 ? name(arch.arch()) + ": " : "";
      getChildren().add(line(name + arch.summary(), "caption-summary"));
      for (GrowthCaption.Decision d : arch.decisions()) {
        getChildren().add(line(d.what(), "caption-what"));
        if (!d.why().isEmpty()) {
          reasoned = true;
          getChildren().add(line(d.why(), "caption-why"));
        }
      }
    }
    if (notation != Notation.FDI && reasoned) {
      getChildren().add(line(Words.of("steps.fdi"), "caption-why"));
    }
  }

  private static String name(Arch arch) {
    return Words.of("steps.arch", Words.capital(arch.code()));
  }

  private static Node line(String text, String style) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
