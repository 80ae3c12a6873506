package saddlewright.desktop.prescription;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;
import saddlewright.prescription.FormSection;
import saddlewright.prescription.Level;

/** Whether the patient is asked for: only where the rules ask for it, or where one wants it so. */
final class PatientShown {
  private static final List<FormField> FIELDS =
      FormField.ALL.stream().filter(f -> f.section() == FormSection.PATIENT).toList();

  private final Worktable table;
  private final BooleanProperty wanted = new SimpleBooleanProperty(false);

  PatientShown(Worktable table) {
    this.table = table;
  }

  BooleanProperty wantedProperty() {
    return wanted;
  }

  void setWanted(boolean on) {
    wanted.set(on);
  }

  /** Whether the rules ask for it, or something is known that must not be hidden. */
  boolean isNeeded() {
    PrescriptionDetails p = table.current().prescription();
    return table.patientProperty().get().isPresent()
        || FIELDS.stream().anyMatch(f -> f.level(p) == Level.MUST || f.level(p) == Level.SHOULD);
  }

  boolean isShown() {
    return table.current().prescription().kind() == DocumentKind.PRESCRIPTION
        && (wanted.get() || isNeeded());
  }
}
