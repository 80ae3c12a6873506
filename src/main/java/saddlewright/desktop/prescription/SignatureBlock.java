package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.json.Fingerprint;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.Signature;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Dates;
import saddlewright.prescription.FormField;

/**
 * The prescriber's signature: given in the file, or noted once the paper has been signed. It holds
 * for the design that was signed and for no other.
 */
final class SignatureBlock extends FieldBlock {
  private static final PseudoClass VOID = PseudoClass.getPseudoClass("void");

  private final Worktable table;
  private final Label standing = small("signature-standing");
  private final RowText name;
  private final RowText registration;
  private final DayField on;
  private final Label error = small("field-error");
  private final VBox form = new VBox(8);
  private final FlowPane signed = new FlowPane(8, 6);
  private final Button remove = new Button(Words.of("signature.remove"));
  private String typedName = "";
  private String typedRegistration = "";
  private Optional<LocalDate> day = Optional.of(LocalDate.now());
  private boolean again;

  SignatureBlock(Worktable table) {
    super(FormField.of("signature"));
    this.table = table;
    standing.setId("signature-standing");
    name =
        new RowText(
            "rx-signature",
            Words.of("signature.name"),
            16,
            s -> true,
            s -> typedName = s,
            this::draft);
    registration =
        new RowText(
            "rx-signature-registration",
            Words.of("signature.registration"),
            12,
            s -> true,
            s -> typedRegistration = s,
            this::draft);
    on = new DayField("rx-signature-on", Words.of("signature.on"), d -> day = d);
    Button electronic = new Button(Words.of("signature.electronic"));
    electronic.setId("signature-electronic");
    electronic.setOnAction(e -> sign(Signature.Manner.ELECTRONIC));
    Button byHand = new Button(Words.of("signature.by-hand"));
    byHand.setId("signature-by-hand");
    byHand.setOnAction(e -> sign(Signature.Manner.BY_HAND));
    FlowPane fields = new FlowPane();
    fields.getStyleClass().add("list-row");
    fields
        .getChildren()
        .addAll(
            new Captioned(Words.of("signature.name"), name, name),
            new Captioned(Words.of("signature.registration"), registration, registration),
            new Captioned(Words.of("signature.on"), on, on.focus()));
    form.getChildren().addAll(fields, new FlowPane(8, 6, electronic, byHand), error);
    remove.setId("signature-remove");
    remove.setOnAction(
        e -> {
          again = false;
          table.apply(
              Words.of("edit.unsign"),
              table.current().with(table.current().prescription().withSignature(Optional.empty())));
          name.requestFocus();
        });
    Button resign = new Button(Words.of("signature.again"));
    resign.setId("signature-again");
    resign.setOnAction(
        e -> {
          again = true;
          refresh();
          name.requestFocus();
        });
    signed.getChildren().addAll(resign, remove);
    controls(standing, signed, form);
    say("");
  }

  private void say(String sentence) {
    error.setText(sentence);
    error.setVisible(!sentence.isEmpty());
    error.setManaged(!sentence.isEmpty());
  }

  private String text(Item item) {
    return table.current().prescription().text(item);
  }

  /** Proposes the prescriber of the form until another name is typed. */
  private void draft() {
    name.show(typedName.isEmpty() ? text(Item.PRESCRIBER_NAME) : typedName);
    registration.show(
        typedRegistration.isEmpty() ? text(Item.PRESCRIBER_REGISTRATION) : typedRegistration);
    on.show(day);
  }

  private void sign(Signature.Manner manner) {
    String who = name.getText().strip();
    if (who.isEmpty()) {
      say(Words.of("signature.name-needed"));
      name.requestFocus();
      return;
    }
    if (day.isEmpty()) {
      say(Words.of("signature.day-needed"));
      on.focus().requestFocus();
      return;
    }
    say("");
    again = false;
    Signature s =
        new Signature(
            manner,
            who,
            registration.getText().strip(),
            day.get(),
            Fingerprint.ofDesign(table.current()));
    table.apply(
        Words.of("edit.sign"),
        table.current().with(table.current().prescription().withSignature(Optional.of(s))));
    remove.requestFocus();
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return form.isManaged() ? name : remove;
  }

  @Override
  boolean isBlank() {
    // The sentence that stands above the buttons says it already.
    return true;
  }

  @Override
  void refresh() {
    Optional<Signature> now = table.current().prescription().signature();
    boolean holds =
        table.completeness().lines().stream()
            .filter(l -> l.field().equals(field()))
            .allMatch(Completeness.Line::isFilled);
    boolean broken = now.isPresent() && !holds;
    standing.setText(now.map(s -> words(s, holds)).orElse(Words.of("signature.none")));
    standing.pseudoClassStateChanged(VOID, broken);
    boolean writing = now.isEmpty() || again;
    form.setVisible(writing);
    form.setManaged(writing);
    signed.setVisible(now.isPresent());
    signed.setManaged(now.isPresent());
    draft();
  }

  private static String words(Signature s, boolean holds) {
    String who =
        s.registration().isBlank()
            ? s.name()
            : Words.of("signature.who", s.name(), s.registration());
    String said = Words.of("signature.said." + s.manner(), who, Dates.withWeekday(s.on()));
    return holds ? said : Words.of("signature.void", said);
  }
}
