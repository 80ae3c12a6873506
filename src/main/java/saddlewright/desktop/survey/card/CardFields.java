package saddlewright.desktop.survey.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.Surveyed;

/** The numbers of a tooth beside its pictures, in step with them. */
final class CardFields extends VBox {
  private final Surveyed card;
  // Held here alone, so that fields that are shown no more are forgotten.
  private final InvalidationListener onChart = o -> update();
  private final Tooth tooth;
  private final List<ValueField> fields = new ArrayList<>();

  CardFields(Surveyed card, Tooth tooth) {
    this.card = card;
    this.tooth = tooth;
    getStyleClass().add("card-fields");
    heading("chart");
    find("tooth-status", tooth);
    find("tooth-gap", tooth);
    add(Items.SADDLE_SPACE, tooth);
    heading("undercuts");
    for (Zone z : Zone.values()) {
      add(Items.undercut(z), Words.capital(ToothNames.zone(tooth, z)));
      add(Items.undercutHeight(z), Words.of("tooth.undercut-height"));
    }
    heading("room");
    for (RestSite s : RestSite.values()) {
      if (s.existsOn(tooth)) {
        add(Items.room(s), Words.capital(ToothNames.site(s)));
      }
    }
    heading("crown");
    for (Item i :
        List.of(Items.TILT, Items.ROTATION, Items.CROWN_HEIGHT, Items.WIDTH, Items.DEPTH)) {
      add(i, tooth);
    }
    heading("abutment");
    find("tooth-condition", tooth);
    find("tooth-mobility", tooth);
    add(Items.BONE, tooth);
    add(Items.CROWN_ROOT, tooth);
    heading("soft");
    add(Items.LINGUAL_DEPTH, tooth);
    add(Items.BUCCAL_DEPTH, tooth);
    add(Items.TISSUE_UNDERCUT, tooth);
    card.chartProperty().addListener(new WeakInvalidationListener(onChart));
    update();
  }

  private void heading(String group) {
    Label l = new Label(Words.of("survey.group." + group));
    l.getStyleClass().add("form-heading");
    getChildren().add(l);
  }

  private void find(String id, Tooth tooth) {
    Items.find(id).ifPresent(i -> add(i, tooth));
  }

  private void add(Item item, Tooth tooth) {
    add(item, item.title(tooth.arch()));
  }

  private void add(Item item, String title) {
    ValueField f = new ValueField(card, tooth, item, title);
    fields.add(f);
    getChildren().add(f);
  }

  private void update() {
    if (card.tooth() != tooth) {
      return;
    }
    fields.forEach(f -> f.show(card.chart()));
    headings();
  }

  /** A heading with nothing under it is not shown. */
  private void headings() {
    Optional<Label> last = Optional.empty();
    boolean any = false;
    for (javafx.scene.Node n : getChildren()) {
      if (n instanceof Label l) {
        hide(last, any);
        last = Optional.of(l);
        any = false;
      } else {
        any |= n.isManaged();
      }
    }
    hide(last, any);
  }

  private static void hide(Optional<Label> heading, boolean any) {
    heading.ifPresent(
        l -> {
          l.setVisible(any);
          l.setManaged(any);
        });
  }

  /** Begins to write the number of a knob. */
  Optional<ValueField> field(Knob knob) {
    return fields.stream().filter(f -> f.item().id().equals(knob.touch().item().id())).findFirst();
  }
}
