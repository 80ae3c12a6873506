package saddlewright.rules.abutments;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Mucosa gives ten times as much as a root; a ridge recorded at rest lets the saddle sink. */
public final class FreeEndRidgesAreRecordedUnderLoad implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-ridges-are-recorded-under-load",
          "For lower free-end saddles the sheet says how the ridge is recorded under load: altered"
              + " cast or functional reline.",
          Severity.CONSIDER,
          Source.read(
              "Chronopoulos, Contemp Dent 2003;23:97-105; Yeung et al., Clin Cosmet Investig Dent"
                  + " 2020;12:493-503 (evidence mixed)"));

  private static final String WORDS = "Lower free-end ridges: altered cast impression";

  /** Where on a lower sheet nothing else lies: behind the tongue side of the arch. */
  private static final double BEHIND = 52;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Subject> saddles =
        AreaSupport.all(s).stream()
            .filter(AreaSupport::isFreeEnd)
            .map(a -> Subject.of(s.arch(), a.saddle()))
            .toList();
    if (s.arch() != Arch.LOWER || saddles.isEmpty()) {
      return;
    }
    Optional<Note> note = s.design().stream(Note.class).filter(n -> tells(n.text())).findFirst();
    if (note.isPresent()) {
      on.upheld("says how the ridge is recorded under load", Subject.of(s.arch(), note.get()));
      return;
    }
    on.finding("lower free-end ridge", saddles)
        .fact("the sheet does not say how it is recorded under load")
        .measured("no note", "altered cast or functional reline noted")
        .remedy(
            "Note an altered cast impression",
            new DesignEdit.Place(
                new Note(
                    s.design().freshId("note"),
                    WORDS,
                    0,
                    BEHIND,
                    Optional.empty(),
                    Optional.empty())))
        .done();
  }

  private static boolean tells(String text) {
    String t = text.toLowerCase(Locale.ROOT);
    return t.contains("altered cast")
        || t.contains("reline")
        || t.contains("functional impression")
        || t.contains("under load");
  }
}
