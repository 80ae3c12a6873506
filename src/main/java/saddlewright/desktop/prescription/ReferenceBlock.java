package saddlewright.desktop.prescription;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseReference;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** The reference that stands for the patient, and the switch that lets the patient be named. */
final class ReferenceBlock extends FieldBlock {
  private final Worktable table;
  private final RowText reference;
  private final Button fresh = new Button(Words.of("reference.fresh"));
  private final CheckBox named = new CheckBox(Words.of("patient.record"));
  private final PatientShown patient;

  ReferenceBlock(Worktable table, PatientShown patient) {
    super(FormField.of("case-reference"));
    this.table = table;
    this.patient = patient;
    Typing typing = new Typing(table, Words.of("edit.field", field().title()));
    reference =
        new RowText(
            "rx-case-reference",
            field().title(),
            16,
            s -> true,
            s -> typing.writeCase(referred(s)),
            typing::end);
    fresh.setId("reference-fresh");
    fresh.setOnAction(
        e -> table.apply(Words.of("edit.field", field().title()), referred(CaseReference.fresh())));
    named.setId("patient-record");
    named.setWrapText(true);
    named.setOnAction(e -> patient.setWanted(named.isSelected()));
    controls(new FlowPane(8, 6, reference, fresh), named);
  }

  private Case referred(String reference) {
    Case c = table.current();
    return c.withIdentity(reference, c.title(), c.story());
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return reference;
  }

  @Override
  void refresh() {
    reference.show(table.current().reference());
    hint(Words.of("reference.hint"));
    boolean ordered = table.current().prescription().kind() == DocumentKind.PRESCRIPTION;
    named.setVisible(ordered);
    named.setManaged(ordered);
    named.setSelected(patient.isShown());
    named.setDisable(patient.isNeeded());
  }
}
