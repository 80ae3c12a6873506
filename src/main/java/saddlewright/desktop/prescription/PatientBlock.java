package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javafx.scene.Node;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** One thing that tells who the patient is. It is no part of the case, nor of what undo knows. */
final class PatientBlock extends FieldBlock {
  private final Node focus;
  private final Runnable refresh;
  private final BooleanSupplier blank;

  private PatientBlock(
      FormField field, Node input, Node focus, Runnable refresh, BooleanSupplier blank) {
    super(field);
    this.focus = focus;
    this.refresh = refresh;
    this.blank = blank;
    controls(input);
  }

  static PatientBlock name(Worktable table) {
    return text(
        table,
        "patient-name",
        PatientIdentity::name,
        (p, s) -> new PatientIdentity(p.reference(), s, p.born(), p.record()));
  }

  static PatientBlock record(Worktable table) {
    return text(
        table,
        "patient-record",
        PatientIdentity::record,
        (p, s) -> new PatientIdentity(p.reference(), p.name(), p.born(), s));
  }

  static PatientBlock born(Worktable table) {
    FormField field = FormField.of("patient-born");
    DayField day =
        new DayField(
            "rx-patient-born",
            field.title(),
            d -> {
              PatientIdentity p = now(table);
              table.know(new PatientIdentity(p.reference(), p.name(), d, p.record()));
            });
    return new PatientBlock(
        field,
        day,
        day.focus(),
        () -> {
          Optional<LocalDate> born = now(table).born();
          day.show(born);
        },
        () -> now(table).born().isEmpty());
  }

  private static PatientBlock text(
      Worktable table,
      String key,
      Function<PatientIdentity, String> get,
      BiFunction<PatientIdentity, String, PatientIdentity> with) {
    FormField field = FormField.of(key);
    RowText text =
        new RowText(
            "rx-" + key,
            field.title(),
            20,
            s -> true,
            s -> table.know(with.apply(now(table), s)),
            () -> {});
    return new PatientBlock(
        field,
        text,
        text,
        () -> text.show(get.apply(now(table))),
        () -> get.apply(now(table)).isBlank());
  }

  private static PatientIdentity now(Worktable table) {
    return table
        .patientProperty()
        .get()
        .orElseGet(() -> PatientIdentity.none(table.current().reference()));
  }

  @Override
  Node focus() {
    return focus;
  }

  @Override
  boolean isBlank() {
    return blank.getAsBoolean();
  }

  @Override
  void refresh() {
    refresh.run();
  }
}
