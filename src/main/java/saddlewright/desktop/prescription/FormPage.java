package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.json.PatientStore;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.FormField;
import saddlewright.prescription.FormSection;
import saddlewright.prescription.Level;

/**
 * The form: every field of the table in its section. It is built once; what changes in the case
 * changes in place.
 */
final class FormPage extends ScrollPane {
  private static final double MOST = 760;
  private static final double ABOVE = 24;

  private final Worktable table;
  private final PatientShown patient;
  private final Map<String, FieldBlock> blocks = new LinkedHashMap<>();
  private final Map<FormSection, SectionCard> cards = new EnumMap<>(FormSection.class);
  private final VBox page = new VBox();
  private final Label where = FieldBlock.small("hint-line");
  private final MyDetailsBar mine;

  FormPage(Worktable table, MyDetails details) {
    this.table = table;
    this.patient = new PatientShown(table);
    this.mine = new MyDetailsBar(table, details);
    setId("prescription-form");
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    where.setId("patient-where");
    FieldMaker maker =
        new FieldMaker(
            table, patient, new LastDays(details.file().resolveSibling("stage-days.properties")));
    for (FormField f : FormField.ALL) {
      blocks.put(f.key(), maker.block(f));
    }
    Label how = FieldBlock.small("hint-line");
    how.setText(Words.of("prescription.how"));
    page.getChildren().add(how);
    for (FormSection s : FormSection.values()) {
      SectionCard card =
          new SectionCard(
              s, above(s), blocks.values().stream().filter(b -> b.field().section() == s).toList());
      cards.put(s, card);
      page.getChildren().add(card);
    }
    Label cautions = FieldBlock.small("caution");
    cautions.setText(Cautions.LINE);
    page.getChildren().add(cautions);
    page.getStyleClass().add("prescription-page");
    page.setMaxWidth(MOST);
    VBox desk = new VBox(page);
    desk.setAlignment(Pos.TOP_CENTER);
    desk.getStyleClass().add("prescription-desk");
    setContent(desk);
    patient.wantedProperty().addListener(o -> refresh());
  }

  private List<Node> above(FormSection s) {
    return switch (s) {
      case PEOPLE -> List.of(mine);
      case PATIENT -> List.of(where);
      default -> List.of();
    };
  }

  /** Takes over the case as it is now. */
  void refresh() {
    Completeness now = table.completeness();
    Map<String, Completeness.Line> lines = new LinkedHashMap<>();
    now.lines().forEach(l -> lines.put(l.field().key(), l));
    cards.values().forEach(card -> refresh(card, lines));
    mine.refresh();
    where.setText(whereKept());
  }

  private void refresh(SectionCard card, Map<String, Completeness.Line> lines) {
    boolean shown = card.section() != FormSection.PATIENT || patient.isShown();
    int asked = 0;
    int must = 0;
    int should = 0;
    for (FieldBlock b : card.blocks()) {
      Optional<Completeness.Line> line = Optional.ofNullable(lines.get(b.field().key()));
      place(b, line.isPresent());
      if (line.isPresent()) {
        asked++;
        b.update(line.get());
        boolean open = !line.get().isFilled();
        must += open && line.get().level() == Level.MUST ? 1 : 0;
        should += open && line.get().level() == Level.SHOULD ? 1 : 0;
      }
    }
    place(card, shown && asked > 0);
    card.show(must, should);
  }

  private static void place(Node n, boolean on) {
    n.setVisible(on);
    n.setManaged(on);
  }

  private String whereKept() {
    return table
        .fileProperty()
        .get()
        .map(f -> Words.of("patient.kept", PatientStore.beside(f).getFileName()))
        .orElse(Words.of("patient.unsaved"));
  }

  /** The sections that are shown. */
  List<SectionCard> sections() {
    List<SectionCard> out = new ArrayList<>();
    cards.values().stream().filter(Node::isManaged).forEach(out::add);
    return out;
  }

  /** Shows the beginning, and asks for the patient only where the rules do. */
  void begin() {
    setVvalue(0);
    patient.setWanted(false);
  }

  /** Brings up a field, and goes to its control. */
  void go(FormField field) {
    FieldBlock block = blocks.get(field.key());
    if (field.section() == FormSection.PATIENT) {
      patient.setWanted(true);
    }
    bring(block);
    block.focus().requestFocus();
    block.flash();
  }

  void go(SectionCard card) {
    bring(card.head());
    card.blocks().stream()
        .filter(Node::isManaged)
        .findFirst()
        .ifPresent(b -> b.focus().requestFocus());
  }

  private void bring(Node top) {
    applyCss();
    layout();
    Node content = getContent();
    Bounds b = content.sceneToLocal(top.localToScene(top.getBoundsInLocal()));
    double room = content.getLayoutBounds().getHeight() - getViewportBounds().getHeight();
    if (room > 0) {
      setVvalue(Math.max(0, Math.min(1, (b.getMinY() - ABOVE) / room)));
    }
  }

  /** The section that is being read: the last that begins above the upper third of the view. */
  Optional<FormSection> reading() {
    Node content = getContent();
    double room = content.getLayoutBounds().getHeight() - getViewportBounds().getHeight();
    double line = getVvalue() * Math.max(0, room) + getViewportBounds().getHeight() / 3;
    Optional<FormSection> out = Optional.empty();
    for (SectionCard c : sections()) {
      Bounds b = content.sceneToLocal(c.localToScene(c.getBoundsInLocal()));
      if (b.getMinY() <= line) {
        out = Optional.of(c.section());
      }
    }
    return out;
  }

  /** The field in which the focus is. */
  Optional<FormField> focused() {
    Node n = getScene() == null ? null : getScene().getFocusOwner();
    while (n != null) {
      if (n instanceof FieldBlock b && blocks.containsValue(b)) {
        return Optional.of(b.field());
      }
      n = n.getParent();
    }
    return Optional.empty();
  }
}
